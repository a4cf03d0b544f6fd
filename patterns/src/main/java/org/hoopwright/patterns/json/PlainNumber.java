package org.hoopwright.patterns.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as JSON texts write them: read from any, written as plain decimals, as short as can be.
 */
public final class PlainNumber {

  /** Plain decimals longer than this are written with an exponent instead. */
  private static final int MAX_PLAIN = 64;

  // Every decimal of 15 digits comes back from the nearest double, and every double from 17 digits.
  private static final int SURE_DIGITS = 15;
  private static final int ALL_DIGITS = 17;

  /** Powers of ten that doubles hold exactly. */
  private static final double[] TENS = {
    1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
  };

  private PlainNumber() {}

  /**
   * The double nearest to a number of a JSON text; infinite when it is beyond all doubles.
   *
   * @param raw the number as written
   */
  public static double parse(String raw) {
    // What people measure has few digits: then digits and power of ten are exact doubles, and one
    // division rounds once, as it must (W. D. Clinger, "How to read floating point numbers
    // accurately", PLDI 1990).
    long digits = 0;
    int count = 0;
    int decimals = -1;
    boolean minus = raw.startsWith("-");
    for (int i = minus ? 1 : 0; i < raw.length(); i++) {
      char c = raw.charAt(i);
      if (c == '.') {
        decimals = 0;
        continue;
      }
      if (c < '0' || c > '9' || ++count > SURE_DIGITS) {
        return Double.parseDouble(raw);
      }
      digits = 10 * digits + (c - '0');
      decimals += decimals < 0 ? 0 : 1;
    }
    double value = digits / TENS[Math.max(0, decimals)];
    return minus ? -value : value;
  }

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
