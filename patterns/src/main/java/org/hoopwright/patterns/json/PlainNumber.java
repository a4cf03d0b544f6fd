package org.hoopwright.patterns.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as JSON texts write them here: plain decimals, as short as they can be. */
public final class PlainNumber {

  /** Plain decimals longer than this are written with an exponent instead. */
  private static final int MAX_PLAIN = 64;

  // Every decimal of 15 digits comes back from the nearest double, and every double from 17 digits.
  private static final int SURE_DIGITS = 15;
  private static final int ALL_DIGITS = 17;

  private PlainNumber() {}

  /**
   * The shortest decimal of at most 17 digits that reads back as this very number, the same on
   * every Java release: {@code 330}, {@code -5.1}. Only a number whose plain decimal would have
   * more than 64 characters has an exponent. Minus zero is {@code 0}.
   *
   * @throws IllegalArgumentException when the number is infinite or not a number
   */
  public static String of(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(
          "The number ("
              + value
              + ") must be finite: JSON has no other.\nMaybe check the layout before it is written.");
    }
    if (value == 0) {
      return "0";
    }
    BigDecimal exact = new BigDecimal(value);
    BigDecimal shortest = exact;
    for (int digits = SURE_DIGITS; digits <= ALL_DIGITS; digits++) {
      shortest = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
      if (shortest.doubleValue() == value) {
        break;
      }
    }
    BigDecimal stripped = shortest.stripTrailingZeros();
    String plain = stripped.toPlainString();
    return plain.length() <= MAX_PLAIN ? plain : stripped.unscaledValue() + "e" + -stripped.scale();
  }
}
