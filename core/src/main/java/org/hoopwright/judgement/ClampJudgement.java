package org.hoopwright.judgement;

import java.util.Optional;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.ClampRating;
import org.hoopwright.replay.Interval;

/**
 * Whether a clamp holds what it must.
 *
 * @param clamp its name
 * @param peak the most that it bears, and after which step
 * @param span what it holds then
 * @param verdict what its rating for the string that it holds says at its worst step
 * @param worstStep the number of that step: of those with the worst verdict the one with the most
 *     load, the first of several
 * @param worstSpan what it holds then
 * @param rating its rating for that string
 * @param together the clamp that shares the load with it at its worst step, the one behind the
 *     other; empty when it bears the load alone
 * @param worst what it bears at its worst step, or what both bear together
 */
public record ClampJudgement(
    String clamp,
    Peak peak,
    SpanId span,
    ClampRating.Verdict verdict,
    int worstStep,
    SpanId worstSpan,
    ClampRating rating,
    Optional<String> together,
    Interval worst) {}
