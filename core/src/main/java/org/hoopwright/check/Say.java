package org.hoopwright.check;

import java.util.Collection;
import java.util.List;
import java.util.Locale;

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
}
