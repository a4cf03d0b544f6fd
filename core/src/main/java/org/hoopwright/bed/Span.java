package org.hoopwright.bed;

import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Point;

/**
 * One string span inside the hoop.
 *
 * @param id its name
 * @param from its hole at the head (mains) or on the left (crosses)
 * @param to its hole at the throat (mains) or on the right (crosses)
 * @param fromPoint where {@code from} is, in mm
 * @param toPoint where {@code to} is, in mm
 */
public record Span(SpanId id, HoleId from, HoleId to, Point fromPoint, Point toPoint) {

  /** Straight length inside the hoop, in mm. */
  public double lengthMm() {
    return fromPoint.distanceTo(toPoint);
  }

  /**
   * The hole at the other end.
   *
   * @throws IllegalArgumentException when the hole is neither of this span's
   */
  public HoleId other(HoleId hole) {
    if (hole.equals(from)) {
      return to;
    }
    if (hole.equals(to)) {
      return from;
    }
    throw new IllegalArgumentException(
        "The hole (%s) must be one of the two of span %s: %s or %s.".formatted(hole, id, from, to));
  }

  /** Whether the span runs through this hole. */
  public boolean uses(HoleId hole) {
    return hole.equals(from) || hole.equals(to);
  }
}
