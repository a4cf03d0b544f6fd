package org.hoopwright.replay;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import org.hoopwright.bed.SpanId;

/**
 * What strings, clamps and hoop are estimated to bear over a plan, in newtons. Estimates only: each
 * is an interval that follows from the ranges of the parameters.
 *
 * @param parameters the parameters with their ranges, by name, in the order in which they matter
 * @param spanTension what each span carries when the job is done
 * @param clampPeak the most that each clamp bears at any step, by the clamp's name
 * @param hoopPeak the most that squeezes the hoop at any step: {@code along} the long axis and
 *     {@code across} it, and the most by which left and right mains differ, {@code imbalance}
 */
public record Estimates(
    Map<String, Interval> parameters,
    Map<SpanId, Interval> spanTension,
    Map<String, Interval> clampPeak,
    Map<String, Interval> hoopPeak) {

  /** Copies the maps; the order of names is kept, spans are in their own order. */
  public Estimates {
    parameters = Collections.unmodifiableMap(new LinkedHashMap<>(parameters));
    spanTension = Collections.unmodifiableMap(new TreeMap<>(spanTension));
    clampPeak = Collections.unmodifiableMap(new TreeMap<>(clampPeak));
    hoopPeak = Collections.unmodifiableMap(new LinkedHashMap<>(hoopPeak));
  }
}
