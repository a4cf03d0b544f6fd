package org.hoopwright.replay;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import org.hoopwright.bed.SpanId;
import org.hoopwright.route.EndName;

/**
 * What is estimated to be borne after a step, in newtons; each value a range.
 *
 * @param step the step's number, from 1
 * @param spans what each laced span carries, in its own order; a pull's mean along it
 * @param clamps what each clamp that is on bears: the difference between its two sides, by name
 * @param together what a machine clamp and the starting clamp that backs it up bear between them,
 *     by the machine clamp's name; each may bear any part of it
 * @param knots what pulls at each knot that is tied
 * @param along what squeezes the hoop along its long axis
 * @param across what squeezes it across
 * @param rightMinusLeft by how much the right mains together pull more than the left ones; negative
 *     when the left ones pull more
 */
public record StepForces(
    int step,
    Map<SpanId, Interval> spans,
    Map<String, Interval> clamps,
    Map<String, Interval> together,
    Map<EndName, Interval> knots,
    Interval along,
    Interval across,
    Interval rightMinusLeft) {

  /** Copies the maps. */
  public StepForces {
    spans = Collections.unmodifiableMap(new TreeMap<>(spans));
    clamps = Collections.unmodifiableMap(new TreeMap<>(clamps));
    together = Collections.unmodifiableMap(new TreeMap<>(together));
    knots = Collections.unmodifiableMap(new LinkedHashMap<>(knots));
  }
}
