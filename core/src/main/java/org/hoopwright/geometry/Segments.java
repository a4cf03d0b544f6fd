package org.hoopwright.geometry;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/** Straight segments and the lines through them. */
public final class Segments {

  private Segments() {}

  /**
   * The point that two segments share. Whether there is one is decided without rounding; where it
   * is, to about the last bit of the coordinates.
   *
   * <p>Segments that touch share their touching point, which is then an end point of one of them,
   * returned as it is. Segments that lie on one line and overlap share more than one point: the one
   * nearest to {@code a} is returned. A segment whose ends are the same point counts as that point.
   *
   * @param a one end of the first segment
   * @param b the other end of the first segment
   * @param c one end of the second segment
   * @param d the other end of the second segment
   * @return the shared point, or empty if there is none
   */
  public static Optional<Point> intersection(Point a, Point b, Point c, Point d) {
    if (!boxesMeet(a, b, c, d)) {
      return Optional.empty();
    }
    int abc = Orientation.sign(a, b, c);
    int abd = Orientation.sign(a, b, d);
    if (abc * abd > 0) {
      return Optional.empty();
    }
    int cda = Orientation.sign(c, d, a);
    int cdb = Orientation.sign(c, d, b);
    if (cda * cdb > 0) {
      return Optional.empty();
    }
    if (abc == 0 && abd == 0 && cda == 0 && cdb == 0) {
      return onOneLine(a, b, c, d);
    }
    if (abc == 0) {
      return Optional.of(c);
    }
    if (abd == 0) {
      return Optional.of(d);
    }
    if (cda == 0) {
      return Optional.of(a);
    }
    if (cdb == 0) {
      return Optional.of(b);
    }
    double t = Math.min(1, Math.max(0, lineParameter(a, b, c, d)));
    return Optional.of(Point.interpolate(a, b, t));
  }

  /**
   * How far along a → b the infinite line through a and b meets the infinite line through c and d:
   * 0 at a, 1 at b, below 0 or above 1 outside the segment.
   *
   * <p>Lines that are exactly parallel, lines that are the same, and "lines" through two equal
   * points have no single meeting point: the result is {@link Double#NaN}, and a caller who cannot
   * rule them out asks {@link Double#isNaN(double)}. Almost parallel lines are worked out without
   * cancellation; the result is infinite only where the meeting point is beyond the largest double.
   *
   * @param a the point at fraction 0
   * @param b the point at fraction 1
   * @param c a point of the other line
   * @param d another point of the other line
   * @return the fraction, or NaN
   */
  public static double lineParameter(Point a, Point b, Point c, Point d) {
    double dx = d.x() - c.x();
    double dy = d.y() - c.y();
    double left = (b.x() - a.x()) * dy;
    double right = (b.y() - a.y()) * dx;
    double numeratorLeft = (c.x() - a.x()) * dy;
    double numeratorRight = (c.y() - a.y()) * dx;
    if (isSettled(left, right) && isSettled(numeratorLeft, numeratorRight)) {
      return (numeratorLeft - numeratorRight) / (left - right);
    }
    BigDecimal denominator = Orientation.exactCross(b, a, d, c);
    if (denominator.signum() == 0) {
      return Double.NaN;
    }
    BigDecimal numerator = Orientation.exactCross(c, a, d, c);
    return numerator.divide(denominator, MathContext.DECIMAL64).doubleValue() + 0.0;
  }

  /** Whether the difference has lost few digits to cancellation, overflow or underflow. */
  private static boolean isSettled(double left, double right) {
    double sum = Math.abs(left) + Math.abs(right);
    return sum < 0x1p900 && sum > 0x1p-900 && Math.abs(left - right) > 1e-6 * sum;
  }

  private static Optional<Point> onOneLine(Point a, Point b, Point c, Point d) {
    if (inBox(a, c, d)) {
      return Optional.of(a);
    }
    boolean hasC = inBox(c, a, b);
    boolean hasD = inBox(d, a, b);
    if (hasC && hasD) {
      return Optional.of(a.distanceTo(c) <= a.distanceTo(d) ? c : d);
    }
    return hasC ? Optional.of(c) : hasD ? Optional.of(d) : Optional.empty();
  }

  static boolean boxesMeet(Point a, Point b, Point c, Point d) {
    return Math.max(a.x(), b.x()) >= Math.min(c.x(), d.x())
        && Math.max(c.x(), d.x()) >= Math.min(a.x(), b.x())
        && Math.max(a.y(), b.y()) >= Math.min(c.y(), d.y())
        && Math.max(c.y(), d.y()) >= Math.min(a.y(), b.y());
  }

  /** Whether a point of the line through {@code from} and {@code to} lies between them. */
  private static boolean inBox(Point p, Point from, Point to) {
    return boxesMeet(p, p, from, to);
  }
}
