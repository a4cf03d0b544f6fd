package org.hoopwright.geometry;

import java.math.BigDecimal;

/**
 * The turn of three points, decided exactly.
 *
 * <p>The plain determinant is trusted only when it is larger than its own rounding error, by the
 * bound of J. R. Shewchuk, "Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric
 * Predicates" (1997; from memory). All else is worked out without rounding.
 */
final class Orientation {

  /** (3 + 16u)u with u = 2^-53, the bound for the plain determinant. */
  private static final double ERROR_BOUND = (3 + 16 * 0x1p-53) * 0x1p-53;

  /** Below this a product may have lost bits to underflow, which the bound does not cover. */
  private static final double UNDERFLOW_GUARD = 0x1p-900;

  private Orientation() {}

  /**
   * On which side of the directed line a → b the point c lies.
   *
   * @return 1 to the left (the points turn anticlockwise), -1 to the right, 0 on the line
   */
  static int sign(Point a, Point b, Point c) {
    double acx = a.x() - c.x();
    double bcx = b.x() - c.x();
    double acy = a.y() - c.y();
    double bcy = b.y() - c.y();
    double left = acx * bcy;
    double right = acy * bcx;
    double det = left - right;
    double sum = Math.abs(left) + Math.abs(right);
    if (Math.abs(det) > ERROR_BOUND * sum && sum > UNDERFLOW_GUARD) {
      return det > 0 ? 1 : -1;
    }
    boolean exactSteps =
        isExact(a.x(), c.x(), acx)
            && isExact(b.x(), c.x(), bcx)
            && isExact(a.y(), c.y(), acy)
            && isExact(b.y(), c.y(), bcy);
    if (exactSteps && Double.isFinite(sum) && sum > UNDERFLOW_GUARD) {
      // Rounding keeps order, so different rounded products settle it; equal ones leave their
      // rounding errors, which a fused multiply-add gives without error.
      return left != right
          ? Double.compare(left, right)
          : Integer.signum(
              Double.compare(Math.fma(acx, bcy, -left) + 0.0, Math.fma(acy, bcx, -right) + 0.0));
    }
    return exactSign(a, b, c);
  }

  /** Whether {@code difference} is {@code p - q} without any rounding (two-difference tail). */
  private static boolean isExact(double p, double q, double difference) {
    double virtual = p - difference;
    double back = difference + virtual;
    return (p - back) + (virtual - q) == 0;
  }

  static int exactSign(Point a, Point b, Point c) {
    return exactCross(a, c, b, c).signum();
  }

  /** The exact cross product of {@code p - q} and {@code r - s}. */
  static BigDecimal exactCross(Point p, Point q, Point r, Point s) {
    BigDecimal left = difference(p.x(), q.x()).multiply(difference(r.y(), s.y()));
    BigDecimal right = difference(p.y(), q.y()).multiply(difference(r.x(), s.x()));
    return left.subtract(right);
  }

  private static BigDecimal difference(double p, double q) {
    return new BigDecimal(p).subtract(new BigDecimal(q));
  }
}
