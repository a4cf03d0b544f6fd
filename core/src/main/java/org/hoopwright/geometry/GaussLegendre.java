package org.hoopwright.geometry;

import java.util.function.DoubleUnaryOperator;

/**
 * Gauss-Legendre quadrature with sixteen points (M. Abramowitz, I. A. Stegun, "Handbook of
 * Mathematical Functions", 25.4.29; from memory). Exact for polynomials up to degree 31.
 */
final class GaussLegendre {

  private static final int POINTS = 16;
  private static final int PAIRS = POINTS / 2;

  /** The positive nodes on [-1, 1]; the others mirror them. */
  private static final double[] NODES = new double[PAIRS];

  private static final double[] WEIGHTS = new double[PAIRS];

  static {
    for (int i = 0; i < PAIRS; i++) {
      // Newton's method from the usual first guess for the zeros of the Legendre polynomial.
      double z = StrictMath.cos(Math.PI * (i + 0.75) / (POINTS + 0.5));
      double slope = 0;
      for (int round = 0; round < 8; round++) {
        double value = 1;
        double before = 0;
        for (int k = 1; k <= POINTS; k++) {
          double next = ((2 * k - 1) * z * value - (k - 1) * before) / k;
          before = value;
          value = next;
        }
        slope = POINTS * (z * value - before) / (z * z - 1);
        z -= value / slope;
      }
      NODES[i] = z;
      WEIGHTS[i] = 2 / ((1 - z * z) * slope * slope);
    }
  }

  private GaussLegendre() {}

  /** The integral of a smooth function from {@code lo} to {@code hi}. */
  static double integrate(DoubleUnaryOperator f, double lo, double hi) {
    double middle = 0.5 * (lo + hi);
    double half = 0.5 * (hi - lo);
    double sum = 0;
    for (int i = 0; i < PAIRS; i++) {
      double step = half * NODES[i];
      sum += WEIGHTS[i] * (f.applyAsDouble(middle - step) + f.applyAsDouble(middle + step));
    }
    return half * sum;
  }
}
