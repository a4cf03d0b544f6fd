package org.hoopwright.patterns.json;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Looks at one text, number or word of a JSON text, and says what is wrong with it. */
final class TokenScan {

  private static final String QUOTES = "'`\u00b4\u2018\u2019\u201a\u201c\u201d\u201e\u00ab\u00bb";

  private final String text;
  private int end;

  TokenScan(String text) {
    this.text = text;
  }

  /** Just past the value that {@link #value} looked at; of no meaning when it had a fault. */
  int end() {
    return end;
  }

  /** Looks at the text, number or word that starts here; null when it is right. */
  @Nullable SyntaxFault value(int at) {
    char c = text.charAt(at);
    if (c == '"') {
      return quoted(at);
    }
    if (isQuote(c)) {
      return wrongQuote(at);
    }
    if (c == '-' || isDigit(c)) {
      return number(at);
    }
    if (c == '+') {
      return fault(at, "A number does not start with +.", "Leave the + out.");
    }
    if (c == '.') {
      return fault(at, "A number does not start with a point.", "Put a 0 before the point.");
    }
    return word(at);
  }

  static boolean isQuote(char c) {
    return QUOTES.indexOf(c) >= 0;
  }

  SyntaxFault wrongQuote(int at) {
    return new SyntaxFault(
        at,
        at + 1,
        "Texts stand in double quotes (\"), not in " + Shown.cut(text.substring(at, at + 1)) + ".",
        "Use double quotes.");
  }

  private @Nullable SyntaxFault quoted(int start) {
    int i = start + 1;
    while (i < text.length()) {
      char c = text.charAt(i);
      if (c == '"') {
        end = i + 1;
        return null;
      }
      if (c == '\n' || c == '\r') {
        break;
      }
      if (c < ' ') {
        return new SyntaxFault(
            i,
            i + 1,
            "A control character (%s) stands inside a text.".formatted(Shown.code(c)),
            c == '\t' ? "Write \\t for a tab." : "Leave it out.");
      }
      if (c == '\\') {
        SyntaxFault escape = escape(i);
        if (escape != null) {
          return escape;
        }
        i += text.startsWith("\\u", i) ? 6 : 2;
      } else {
        i++;
      }
    }
    return new SyntaxFault(
        start,
        Math.min(i, text.length()),
        "The text that starts here has no closing quote.",
        "End it with a double quote on the same line.");
  }

  private @Nullable SyntaxFault escape(int at) {
    if (at + 1 >= text.length()) {
      return null; // the missing quote is reported
    }
    char c = text.charAt(at + 1);
    if (c == 'u') {
      for (int i = at + 2; i < at + 6; i++) {
        if (i >= text.length() || Character.digit(text.charAt(i), 16) < 0 || text.charAt(i) > 'f') {
          return new SyntaxFault(
              at,
              Math.min(i, text.length()),
              "After \\u there must be four hexadecimal digits.",
              "Write for example \\u00e9.");
        }
      }
      return null;
    }
    if ("\"\\/bfnrt".indexOf(c) < 0) {
      return new SyntaxFault(
          at,
          at + 2,
          "The escape %s has no meaning in a text."
              .formatted(Shown.cut(text.substring(at, at + 2))),
          "Write \\\\ for a single backslash.");
    }
    return null;
  }

  private @Nullable SyntaxFault number(int start) {
    int i = start + (text.charAt(start) == '-' ? 1 : 0);
    int digits = digitsEnd(i);
    if (text.startsWith("Infinity", i)) {
      return notFinite(start);
    }
    if (digits == i) {
      return fault(start, "A digit must follow the minus sign.", "Write a number such as -5.1.");
    }
    if (text.charAt(i) == '0' && (text.startsWith("x", i + 1) || text.startsWith("X", i + 1))) {
      return fault(start, "Numbers are decimal, not hexadecimal.", "Write it as a decimal.");
    }
    if (text.charAt(i) == '0' && digits > i + 1) {
      return fault(start, "A number does not start with a 0 before other digits.", "Leave it out.");
    }
    i = digits;
    if (text.startsWith(".", i)) {
      digits = digitsEnd(i + 1);
      if (digits == i + 1) {
        return fault(start, "A digit must follow the point.", "Add a digit, or drop the point.");
      }
      i = digits;
    }
    if (text.startsWith("e", i) || text.startsWith("E", i)) {
      int sign = text.startsWith("+", i + 1) || text.startsWith("-", i + 1) ? 1 : 0;
      digits = digitsEnd(i + 1 + sign);
      if (digits == i + 1 + sign) {
        return fault(
            start, "A digit must follow the e of a number.", "Write it as a plain decimal.");
      }
      i = digits;
    }
    if (i < text.length() && (isWordPart(text.charAt(i)) || "+-.".indexOf(text.charAt(i)) >= 0)) {
      return fault(
          start,
          "%s is not a number.".formatted(Shown.cut(text.substring(start, endOfWord(start)))),
          "Write the number alone; units have members of their own.");
    }
    end = i;
    return null;
  }

  private @Nullable SyntaxFault word(int at) {
    int stop = endOfWord(at);
    String word = text.substring(at, stop);
    end = stop;
    switch (word) {
      case "true", "false", "null" -> {
        return null;
      }
      case "NaN", "Infinity" -> {
        return notFinite(at);
      }
      default -> {
        // told below
      }
    }
    String small = word.toLowerCase(Locale.ROOT);
    if (small.equals("true") || small.equals("false") || small.equals("null")) {
      return fault(at, word + " must be written in small letters.", "Write " + small + ".");
    }
    if (Character.isLetter(text.charAt(at)) || text.charAt(at) == '_') {
      return fault(
          at,
          "The text %s must stand in double quotes.".formatted(Shown.cut(word)),
          "Put it in double quotes.");
    }
    int wide = text.codePointAt(at);
    return new SyntaxFault(
        at,
        at + Character.charCount(wide),
        "A value cannot start with %s.".formatted(Shown.character(wide)),
        "Write a text in double quotes, a number, true, false, a list or an object.");
  }

  private SyntaxFault notFinite(int at) {
    return fault(
        at,
        "%s is not a number that a layout can hold."
            .formatted(Shown.cut(text.substring(at, endOfWord(at)))),
        "Write a plain decimal number.");
  }

  private SyntaxFault fault(int at, String message, String fix) {
    return new SyntaxFault(at, endOfWord(at), message, fix);
  }

  private int digitsEnd(int from) {
    int i = from;
    while (i < text.length() && isDigit(text.charAt(i))) {
      i++;
    }
    return i;
  }

  /** Just past the letters, digits, signs and points that start here; at least one character. */
  int endOfWord(int from) {
    int i = from;
    while (i < text.length()
        && (isWordPart(text.charAt(i)) || "+-.".indexOf(text.charAt(i)) >= 0)) {
      i++;
    }
    return i > from ? i : Math.min(from + 1, text.length());
  }

  private static boolean isWordPart(char c) {
    return Character.isLetterOrDigit(c) || c == '_' || c == '$';
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
