package org.hoopwright.geometry;

/**
 * A place in the plane of the face, in millimetres.
 *
 * <p>Negative zero is stored as zero, so that points that are the same place are equal.
 *
 * @param x distance from the long axis, positive to the right; finite
 * @param y distance from the origin along the long axis, positive to the head; finite
 */
public record Point(double x, double y) {

  /**
   * Makes a point.
   *
   * @param x distance from the long axis, positive to the right; finite
   * @param y distance from the origin along the long axis, positive to the head; finite
   * @throws IllegalArgumentException if a coordinate is not finite
   */
  public Point {
    x = checked("x", x);
    y = checked("y", y);
  }

  private static double checked(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(
          name + " is " + value + ", but a coordinate is a finite number; pass millimetres");
    }
    return value + 0.0; // turns -0.0 into 0.0 and leaves all else as it is
  }

  /**
   * The distance to another point.
   *
   * @param other any point
   * @return millimetres, not negative; infinite only where the distance is beyond the largest
   *     double
   */
  public double distanceTo(Point other) {
    return StrictMath.hypot(other.x - x, other.y - y);
  }

  /**
   * This point mirrored in the long axis.
   *
   * @return the point with x negated
   */
  public Point mirrored() {
    return new Point(-x, y);
  }

  /**
   * The point at a fraction of the way from one point to another. Fractions 0 and 1 give the two
   * points themselves, to the bit; fractions outside 0 to 1 give points beyond them.
   *
   * @param a the point at fraction 0
   * @param b the point at fraction 1
   * @param t the fraction; finite
   * @return the point on the line through both
   * @throws IllegalArgumentException if the fraction is not finite, or so large that the point is
   *     beyond the largest double
   */
  public static Point interpolate(Point a, Point b, double t) {
    if (!Double.isFinite(t)) {
      throw new IllegalArgumentException(
          "t is " + t + ", but a fraction is a finite number; pass 0 for the first point to 1");
    }
    return new Point(between(a.x, b.x, t), between(a.y, b.y, t));
  }

  private static double between(double from, double to, double t) {
    double step = to - from;
    if (!Double.isFinite(step)) { // coordinates near the largest double, of different signs
      return (1 - t) * from + t * to;
    }
    return t <= 0.5 ? from + t * step : to - (1 - t) * step;
  }
}
