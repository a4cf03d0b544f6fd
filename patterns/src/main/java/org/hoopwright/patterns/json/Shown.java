package org.hoopwright.patterns.json;

import java.util.Locale;

/**
 * Foreign text as it is shown to a person: characters that do not show, that change how others show
 * or that a terminal obeys are written as escapes.
 */
public final class Shown {

  /** The most characters of a foreign text that a message repeats. */
  public static final int MAX_SHOWN = 40;

  private static final char ELLIPSIS = '\u2026';

  private Shown() {}

  /** Whether a character may go to a terminal or into a message as it is. */
  public static boolean isPlain(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> !isNoncharacter(codePoint);
    };
  }

  /** Whether Unicode sets this number aside for no character, such as U+FFFF. */
  public static boolean isNoncharacter(int codePoint) {
    return (codePoint & 0xFFFE) == 0xFFFE || (codePoint >= 0xFDD0 && codePoint <= 0xFDEF);
  }

  /** The whole text with escapes ({@code \}{@code u001b}) in place of what is not plain. */
  public static String escaped(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().forEach(c -> append(out, c));
    return out.toString();
  }

  /** Appends one character, or its escape. */
  static void append(StringBuilder out, int codePoint) {
    if (isPlain(codePoint)) {
      out.appendCodePoint(codePoint);
    } else {
      for (char unit : Character.toChars(codePoint)) {
        out.append(String.format(Locale.ROOT, "\\u%04x", (int) unit));
      }
    }
  }

  /** The start of a text, escaped, with an ellipsis when it is longer than {@value #MAX_SHOWN}. */
  public static String cut(String text) {
    if (text.length() <= MAX_SHOWN) {
      return escaped(text);
    }
    int end = Character.isHighSurrogate(text.charAt(MAX_SHOWN - 1)) ? MAX_SHOWN - 1 : MAX_SHOWN;
    return escaped(text.substring(0, end)) + ELLIPSIS;
  }

  /** The text in double quotes, cut and escaped. */
  public static String quoted(String text) {
    return '"' + cut(text) + '"';
  }

  /** A character for a message: itself, or its number when it does not show. */
  static String character(int codePoint) {
    return isPlain(codePoint) && codePoint != ' ' ? Character.toString(codePoint) : code(codePoint);
  }

  /** A character's number, such as {@code U+0007}. */
  public static String code(int codePoint) {
    return String.format(Locale.ROOT, "U+%04X", codePoint);
  }
}
