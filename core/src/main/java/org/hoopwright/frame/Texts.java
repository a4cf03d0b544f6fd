package org.hoopwright.frame;

import java.util.Collection;
import java.util.Locale;

/** Words and numbers for messages. */
final class Texts {

  private Texts() {}

  /** A length in mm with one decimal, and a point whatever the locale. */
  static String mm(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  /** The text with a capital first letter. */
  static String capitalised(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
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
