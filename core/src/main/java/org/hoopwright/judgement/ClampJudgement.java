package org.hoopwright.judgement;

import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.ClampRating;

/**
 * Whether a clamp holds what it must.
 *
 * @param clamp its name
 * @param peak the most that it bears, and after which step
 * @param span what it holds then
 * @param verdict what its rating for the string that it holds says at its worst step
 * @param worstStep the number of that step, the first of several
 * @param worstSpan what it holds then
 * @param rating its rating for that string
 */
public record ClampJudgement(
    String clamp,
    Peak peak,
    SpanId span,
    ClampRating.Verdict verdict,
    int worstStep,
    SpanId worstSpan,
    ClampRating rating) {}
