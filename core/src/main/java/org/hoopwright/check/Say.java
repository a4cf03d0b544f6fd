package org.hoopwright.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.hoopwright.geometry.Side;

/** Words and numbers for messages. */
final class Say {

  private Say() {}

  /** With one decimal, and a point whatever the locale. */
  static String mm(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  /** With two decimals at most, and no more than it needs. */
  static String number(double value) {
    String text = String.format(Locale.ROOT, "%.2f", value);
    return text.endsWith(".00")
        ? text.substring(0, text.length() - 3)
        : text.endsWith("0") ? text.substring(0, text.length() - 1) : text;
  }

  /** A number with three decimals at most, and no more than it needs. */
  static String thousandths(double value) {
    String text = String.format(Locale.ROOT, "%.3f", value);
    int end = text.length();
    while (text.charAt(end - 1) == '0') {
      end--;
    }
    return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
  }

  /** A finite number as a plain decimal that reads back as the same number. */
  static String exact(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
  }

  /** {@code left} or {@code right}. */
  static String of(Side side) {
    return side == Side.LEFT ? "left" : "right";
  }

  /** The text with a capital first letter. */
  static String capitalised(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** {@code Hole L7H}, {@code Holes L7H and R7H}. */
  static String holes(List<?> holes) {
    return (holes.size() == 1 ? "Hole " : "Holes ") + and(holes);
  }

  /** Things in a list: {@code A}, {@code A and B}, {@code A, B and C}. */
  static String and(Collection<?> things) {
    StringBuilder text = new StringBuilder();
    int i = 0;
    for (Object thing : things) {
      text.append(i == 0 ? "" : i == things.size() - 1 ? " and " : ", ").append(thing);
      i++;
    }
    return text.toString();
  }

  /** As {@link #and}, but of more than a dozen things only the first ten. */
  static String some(List<?> things) {
    if (things.size() <= 12) {
      return and(things);
    }
    List<Object> first = new ArrayList<>(things.subList(0, 10));
    first.add((things.size() - 10) + " more");
    return and(first);
  }
}
