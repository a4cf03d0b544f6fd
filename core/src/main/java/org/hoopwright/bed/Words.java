package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.hoopwright.geometry.Side;

/** Words and numbers for messages. */
final class Words {

  private Words() {}

  /** A length in mm with one decimal, and a point whatever the locale. */
  static String mm(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  /** {@code left} or {@code right}. */
  static String of(Side side) {
    return side == Side.LEFT ? "left" : "right";
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
