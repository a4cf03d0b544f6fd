package org.hoopwright.geometry;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * The integral of a positive function from 0 up to any place in [0, 1], and back from the integral
 * to the place.
 *
 * <p>The interval is halved until one quadrature and two over the halves agree, so the panels crowd
 * where the function changes quickly or has a mild singularity at 0, and the relative error of the
 * total stays near 1e-12. Panels and their sums are kept; a question costs one quadrature (the way
 * back: a few).
 */
final class RunningIntegral {

  /** Panels agree when they differ by less than this part of the first estimate of the whole. */
  private static final double TOLERANCE = 1e-14;

  /** Deeper than this a panel is too narrow to matter, whatever the function does there. */
  private static final int MAX_DEPTH = 60;

  private static final int MAX_STEPS = 100;

  /**
   * Steps within this part of a panel are so short that Simpson's rule, whose error goes with the
   * fifth power of the step, is as good as the quadrature.
   */
  private static final double SHORT_STEP = 1e-3;

  private final DoubleUnaryOperator function;

  /** The panels' ends: 0, …, 1, rising. */
  private double[] ends = new double[32];

  /** The integral from 0 to each of the ends. */
  private double[] sums = new double[32];

  private int count; // panels

  RunningIntegral(DoubleUnaryOperator function) {
    this.function = function;
    double whole = GaussLegendre.integrate(function, 0, 1);
    split(0, 1, whole, whole * TOLERANCE, 0);
    ends = Arrays.copyOf(ends, count + 1);
    sums = Arrays.copyOf(sums, count + 1);
  }

  private void split(double lo, double hi, double whole, double tolerance, int depth) {
    double middle = 0.5 * (lo + hi);
    double left = GaussLegendre.integrate(function, lo, middle);
    double right = GaussLegendre.integrate(function, middle, hi);
    if (Math.abs(left + right - whole) <= tolerance || depth >= MAX_DEPTH) {
      append(middle, left);
      append(hi, right);
      return;
    }
    split(lo, middle, left, tolerance, depth + 1);
    split(middle, hi, right, tolerance, depth + 1);
  }

  private void append(double end, double value) {
    if (count + 1 == ends.length) {
      ends = Arrays.copyOf(ends, 2 * ends.length);
      sums = Arrays.copyOf(sums, 2 * sums.length);
    }
    ends[count + 1] = end;
    sums[count + 1] = sums[count] + value;
    count++;
  }

  /** The integral from 0 to 1. */
  double total() {
    return sums[count];
  }

  /** How many panels the interval was cut into. */
  int panels() {
    return count;
  }

  /** The integral from 0 to {@code place}, which is in [0, 1]. */
  double upTo(double place) {
    int found = Arrays.binarySearch(ends, place);
    if (found >= 0) {
      return sums[found];
    }
    return within(-found - 2, place);
  }

  private double within(int panel, double place) {
    double part = GaussLegendre.integrate(function, ends[panel], place);
    // A last bit of quadrature error must not break the order of the sums.
    return Math.min(sums[panel + 1], sums[panel] + part);
  }

  /** The place up to which the integral is {@code value}, which is in [0, total]. */
  double inverse(double value) {
    int found = Arrays.binarySearch(sums, value);
    if (found >= 0) {
      return ends[found];
    }
    int panel = -found - 2;
    double lo = ends[panel];
    double hi = ends[panel + 1];
    double place = guess(panel, value);
    double excess = within(panel, place) - value;
    double speed = function.applyAsDouble(place);
    for (int step = 0; step < MAX_STEPS; step++) {
      if (Math.abs(excess) <= 0x1p-51 * value) {
        return place;
      }
      if (excess > 0) {
        hi = place;
      } else {
        lo = place;
      }
      double next = place - excess / speed;
      if (!(next > lo && next < hi)) { // also where the step is not a number
        next = 0.5 * (lo + hi);
      }
      if (next == place || next <= lo || next >= hi) {
        return place;
      }
      double nextSpeed = function.applyAsDouble(next);
      boolean near = Math.abs(next - place) <= SHORT_STEP * (ends[panel + 1] - ends[panel]);
      excess = near ? excess + simpson(place, speed, next, nextSpeed) : within(panel, next) - value;
      place = next;
      speed = nextSpeed;
    }
    return place;
  }

  /** The integral between two near places by Simpson's rule. */
  private double simpson(double from, double first, double to, double last) {
    double middle = function.applyAsDouble(0.5 * (from + to));
    return (to - from) / 6 * (first + 4 * middle + last);
  }

  /**
   * The cubic that has the inverse's values and slopes at both ends of a panel; the straight line
   * where the function is 0 at an end.
   */
  private double guess(int panel, double value) {
    double lo = ends[panel];
    double width = ends[panel + 1] - lo;
    double rise = sums[panel + 1] - sums[panel];
    double t = (value - sums[panel]) / rise;
    double first = rise / (width * function.applyAsDouble(lo));
    double last = rise / (width * function.applyAsDouble(ends[panel + 1]));
    double bent = t * (first * (1 - t) * (1 - t) + t * (3 - 2 * t) - last * t * (1 - t));
    return bent > 0 && bent < 1 ? lo + width * bent : lo + width * t;
  }
}
