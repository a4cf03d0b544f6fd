package org.hoopwright.replay;

/**
 * A range of values: an estimate is never one bare number.
 *
 * @param low the least, not more than {@code high}
 * @param high the greatest
 */
public record Interval(double low, double high) {

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException when a bound is not finite or they are the wrong way round
   */
  public Interval {
    if (!(low <= high) || Double.isInfinite(low) || Double.isInfinite(high)) {
      throw new IllegalArgumentException(
          "The interval (" + low + " to " + high + ") must have finite bounds, the lower first.");
    }
  }

  /** The interval of one value. */
  public static Interval of(double value) {
    return new Interval(value, value);
  }

  /** The interval of the absolute values: it reaches down to 0 when this one holds 0. */
  public Interval magnitude() {
    if (low >= 0) {
      return this;
    }
    return new Interval(high <= 0 ? -high : 0.0, Math.max(-low, high));
  }

  /** The smallest interval that holds both. */
  public Interval hull(Interval other) {
    return new Interval(Math.min(low, other.low), Math.max(high, other.high));
  }
}
