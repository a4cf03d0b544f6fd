package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;

/** Text for screens and paper: nothing that does not show, and lines of a limited width. */
final class PlainText {

  private PlainText() {}

  /**
   * Whether a character shows as itself: not a control, format or private character, no half of a
   * surrogate pair, no line or paragraph separator.
   */
  static boolean shows(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.PRIVATE_USE,
          Character.SURROGATE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }

  /** A UTF-16 unit as JSON and Java write it when it must not show, such as {@code \u001b}. */
  static String escaped(char unit) {
    return "\\u" + HexFormat.of().toHexDigits(unit);
  }

  /** The text on one line, with what does not show written as an escape. */
  static String safe(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              if (shows(c)) {
                out.appendCodePoint(c);
              } else {
                for (char unit : Character.toChars(c)) {
                  out.append(escaped(unit));
                }
              }
            });
    return out.toString();
  }

  /**
   * The text, made safe, in lines: broken at spaces, and within a word only when the word alone is
   * too wide.
   *
   * @param text what to write
   * @param width the widest line, in characters; 10 or more
   */
  static List<String> wrap(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : safe(text).split(" +", -1)) {
      String rest = word;
      if (!line.isEmpty() && line.length() + 1 + rest.length() <= width) {
        line.append(' ').append(rest);
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (rest.length() > width) {
        int cut = Character.isHighSurrogate(rest.charAt(width - 1)) ? width - 1 : width;
        lines.add(rest.substring(0, cut));
        rest = rest.substring(cut);
      }
      line.append(rest);
    }
    if (!line.isEmpty() || lines.isEmpty()) {
      lines.add(line.toString());
    }
    return lines;
  }

  /** The text with a capital first letter. */
  static String capitalised(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
