package org.hoopwright.patterns;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.hoopwright.finding.HoopwrightFault;

/** Numbers as plain decimals, the same in every locale: never an exponent, never a minus zero. */
final class Decimals {

  private Decimals() {}

  /**
   * A length, coordinate or force with exactly one decimal, rounded to the nearest tenth, a half
   * away from zero.
   *
   * @throws HoopwrightFault when the number is not finite: such a number is never written
   */
  static String tenths(double value) {
    return rounded(value, 1, RoundingMode.HALF_UP);
  }

  /** A number rounded to six decimals, without zeros at its end. */
  static String precise(double value) {
    BigDecimal decimal = decimal(value).setScale(6, RoundingMode.HALF_UP);
    return decimal.signum() == 0 ? "0" : decimal.stripTrailingZeros().toPlainString();
  }

  /** A number rounded up, away from zero, to so many decimals: for what must not come out short. */
  static String up(double value, int decimals) {
    return rounded(value, decimals, RoundingMode.UP);
  }

  /** A number rounded to the nearest of so many decimals, a half away from zero. */
  static String near(double value, int decimals) {
    return rounded(value, decimals, RoundingMode.HALF_UP);
  }

  private static String rounded(double value, int decimals, RoundingMode mode) {
    return decimal(value).setScale(decimals, mode).toPlainString();
  }

  private static BigDecimal decimal(double value) {
    if (!Double.isFinite(value)) {
      throw new HoopwrightFault("A number of the plan is not finite: " + value + ".");
    }
    return new BigDecimal(value);
  }
}
