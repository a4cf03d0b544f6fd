package org.hoopwright.patterns;

import java.util.Optional;
import org.hoopwright.patterns.json.Shown;

/** What a layout's name may hold. */
final class NameText {

  // Letters that take room or none but show nothing: hangul fillers, Khmer inherent vowels, the
  // grapheme joiner.
  private static final String INVISIBLE = "\u034f\u115f\u1160\u17b4\u17b5\u3164\uffa0";

  private NameText() {}

  /** Why a name cannot be, as the rest of a sentence that begins with what it is called. */
  static Optional<String> refused(String name) {
    if (name.isBlank()) {
      return Optional.of("is blank");
    }
    return name.codePoints()
        .filter(NameText::isRefused)
        .mapToObj(c -> "holds the character " + Shown.code(c) + ", which no text can show")
        .findFirst();
  }

  /** The first character that does not show or changes how others show. */
  static Optional<String> suspect(String name) {
    return name.codePoints().filter(NameText::isSuspect).mapToObj(Shown::code).findFirst();
  }

  private static boolean isRefused(int c) {
    int type = Character.getType(c);
    return type == Character.CONTROL || type == Character.SURROGATE || Shown.isNoncharacter(c);
  }

  private static boolean isSuspect(int c) {
    return INVISIBLE.indexOf(c) >= 0 || (!isRefused(c) && !Shown.isPlain(c));
  }
}
