package org.hoopwright.patterns;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;

/** Guesses what a text that is no hole name was meant to be. */
final class HoleNames {

  private static final String RULE =
      "A hole name is a number from 1 to %s and H or T, with L or R before it for one side: 7H, L7H."
          .formatted(HoleId.MAX_NUMBER);

  // Letters and number in some order, with blanks, zeros and words such as "left 07 head".
  private static final Pattern PARTS = Pattern.compile("([LRHT]{0,2})0*([0-9]{1,3})([LRHT]{0,2})");

  private HoleNames() {}

  /** What to do about it. */
  static String fix(String text) {
    return guess(text).map(ref -> "Write \"" + ref + "\" if that is meant. ").orElse("") + RULE;
  }

  /** The one hole name with the same letters and number, if there is one. */
  static Optional<HoleRef> guess(String text) {
    if (text.length() > 40) {
      return Optional.empty();
    }
    String plain = text.strip().toUpperCase(Locale.ROOT).replaceAll("[ _.-]", "");
    for (String word : List.of("LEFT", "RIGHT", "HEAD", "THROAT")) {
      plain = plain.replace(word, word.substring(0, 1));
    }
    Matcher parts = PARTS.matcher(plain);
    if (!parts.matches()) {
      return Optional.empty();
    }
    String letters = parts.group(1) + parts.group(3);
    Optional<String> end = one(letters, "H", "T");
    if (end.isEmpty() || letters.length() > 2) {
      return Optional.empty();
    }
    String side = letters.length() == 1 ? "" : one(letters, "L", "R").orElse("?");
    return HoleRef.find(side + parts.group(2) + end.get());
  }

  private static Optional<String> one(String letters, String a, String b) {
    return letters.contains(a) == letters.contains(b)
        ? Optional.empty()
        : Optional.of(letters.contains(a) ? a : b);
  }
}
