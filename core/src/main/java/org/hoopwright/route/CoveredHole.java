package org.hoopwright.route;

import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;

/**
 * A hole that is covered when a pass needs it.
 *
 * @param hole the hole
 * @param span the span whose pass needs it
 * @param by what covers it
 */
public record CoveredHole(HoleId hole, SpanId span, By by) {

  /** What covers a hole. */
  public enum By {
    /** A run laid earlier lies over its mouth. */
    RUN,
    /** An earlier pass lies in it. */
    PASS,
    /** The tail of a knot lies in it. */
    KNOT
  }
}
