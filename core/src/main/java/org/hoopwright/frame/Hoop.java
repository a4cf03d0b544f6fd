package org.hoopwright.frame;

import java.util.List;
import org.hoopwright.geometry.Point;

/**
 * The inside of the hoop, where strings touch it, as a layout states it and in the layout's unit of
 * length.
 */
public sealed interface Hoop {

  /**
   * A superellipse |2x/width|ⁿ + |2y/length|ⁿ = 1.
   *
   * @param length inside length along the long axis
   * @param width inside width
   * @param exponent n; 2 is an ellipse, more is squarer
   */
  record Superellipse(double length, double width, double exponent) implements Hoop {}

  /**
   * A closed list of points, joined by straight lines.
   *
   * @param points at least 8 points round the hoop, in either sense, the first not repeated at the
   *     end
   */
  record Points(List<Point> points) implements Hoop {
    /** Copies the list. */
    public Points {
      points = List.copyOf(points);
    }
  }
}
