package org.hoopwright.patterns.json;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One pass over a text that keeps only the open brackets and what may come next. */
final class SyntaxScan {

  private enum Next {
    VALUE,
    VALUE_OR_END,
    NAME,
    NAME_OR_END,
    COLON,
    COMMA_OR_END,
    NOTHING
  }

  private final String text;
  private final TokenScan tokens;
  private final Deque<Integer> open = new ArrayDeque<>();
  private Next next = Next.VALUE;
  private int at;
  private int lastEnd; // just past the last token
  private int lastStart; // where it starts

  SyntaxScan(String text) {
    this.text = text;
    this.tokens = new TokenScan(text);
  }

  Optional<SyntaxFault> run() {
    while (true) {
      SyntaxFault blank = skipBlanks();
      if (blank != null) {
        return Optional.of(blank);
      }
      if (at >= text.length()) {
        return end();
      }
      int start = at;
      SyntaxFault fault = step(text.charAt(at));
      if (fault != null) {
        return Optional.of(fault);
      }
      lastStart = start;
      lastEnd = at;
    }
  }

  private Optional<SyntaxFault> end() {
    if (next == Next.NOTHING) {
      return Optional.empty();
    }
    if (open.isEmpty()) {
      String what = text.isBlank() ? "nothing" : "nothing but comments";
      return Optional.of(
          new SyntaxFault(
              0,
              0,
              "The file holds " + what + ".",
              "Write a layout in it.",
              -1,
              /* empty= */ true));
    }
    char closer = closerOf(open.element());
    return Optional.of(
        new SyntaxFault(
            lastEnd,
            lastEnd,
            "The text ends too early.",
            "Add what is missing, and the closing " + closer + ".",
            open.element(),
            /* empty= */ false));
  }

  /** Skips blanks and comments; a fault when a comment is wrong. */
  private @Nullable SyntaxFault skipBlanks() {
    while (at < text.length()) {
      char c = text.charAt(at);
      if (c == ' ' || c == '\t' || c == '\n' || c == '\r') {
        at++;
      } else if (text.startsWith("//", at) || text.startsWith("/*", at)) {
        SyntaxFault fault = skipComment();
        if (fault != null) {
          return fault;
        }
      } else {
        return null;
      }
    }
    return null;
  }

  private @Nullable SyntaxFault skipComment() {
    int start = at;
    boolean line = text.charAt(at + 1) == '/';
    for (at += 2; at < text.length(); at++) {
      char c = text.charAt(at);
      if (line ? c == '\n' || c == '\r' : text.startsWith("*/", at)) {
        at += line ? 0 : 2;
        return null;
      }
      if (c < ' ' && c != '\t' && c != '\n' && c != '\r') {
        return new SyntaxFault(
            at,
            at + 1,
            "A control character (%s) stands inside a comment.".formatted(Shown.code(c)),
            "Leave it out.");
      }
    }
    return line
        ? null
        : new SyntaxFault(
            start, start + 2, "The comment that starts here has no end.", "End it with */.");
  }

  private @Nullable SyntaxFault step(char c) {
    SyntaxFault comment = commentFault(c);
    if (comment != null) {
      return comment;
    }
    return switch (next) {
      case VALUE, VALUE_OR_END -> value(c);
      case NAME, NAME_OR_END -> name(c);
      case COLON -> colon(c);
      case COMMA_OR_END -> commaOrEnd(c);
      case NOTHING ->
          new SyntaxFault(
              at,
              tokens.endOfWord(at),
              "Something stands after the end of the layout.",
              "Leave it out, or check the brackets before it.");
    };
  }

  private @Nullable SyntaxFault commentFault(char c) {
    if (c == '/') {
      return new SyntaxFault(
          at, at + 1, "A single / has no meaning.", "Begin a comment with // or with /*.");
    }
    if (c == '#') {
      return new SyntaxFault(
          at, at + 1, "A # does not begin a comment.", "Begin a comment with // or with /*.");
    }
    return null;
  }

  private @Nullable SyntaxFault value(char c) {
    if (c == '{' || c == '[') {
      open.push(at++);
      next = c == '{' ? Next.NAME_OR_END : Next.VALUE_OR_END;
      return null;
    }
    if (c == ']' && next == Next.VALUE_OR_END) {
      return close(c);
    }
    if (c == ']' || c == '}' || c == ',') {
      boolean afterComma = lastEnd > 0 && text.charAt(lastEnd - 1) == ',';
      if (c == ']' && afterComma) {
        return commaTooMany(c);
      }
      return new SyntaxFault(
          at,
          at + 1,
          afterComma || next == Next.VALUE_OR_END
              ? "A value is missing before the %s.".formatted(c)
              : "The value is missing before the %s.".formatted(c),
          "Write a value, or leave out what stands before it.");
    }
    SyntaxFault fault = tokens.value(at);
    at = tokens.end();
    next = open.isEmpty() ? Next.NOTHING : Next.COMMA_OR_END;
    return fault;
  }

  private @Nullable SyntaxFault name(char c) {
    if (c == '"') {
      SyntaxFault fault = tokens.value(at);
      at = tokens.end();
      next = Next.COLON;
      return fault;
    }
    if (c == '}') {
      return next == Next.NAME_OR_END ? close(c) : commaTooMany(c);
    }
    if (c == ',') {
      return new SyntaxFault(at, at + 1, "There is a comma too many.", "Leave it out.");
    }
    int end = tokens.endOfWord(at);
    boolean word = Character.isLetter(c) || c == '_' || c == '$';
    return word
        ? new SyntaxFault(
            at,
            end,
            "The name %s must stand in double quotes."
                .formatted(Shown.cut(text.substring(at, end))),
            "Put it in double quotes.")
        : TokenScan.isQuote(c)
            ? tokens.wrongQuote(at)
            : new SyntaxFault(
                at,
                end,
                "A name in double quotes must stand here.",
                "Write a member as \"name\": value.");
  }

  private @Nullable SyntaxFault colon(char c) {
    if (c == ':') {
      at++;
      next = Next.VALUE;
      return null;
    }
    if (c == '=') {
      return new SyntaxFault(
          at, at + 1, "A colon must follow the name, not =.", "Write : in its place.");
    }
    return new SyntaxFault(
        at,
        tokens.endOfWord(at),
        "A colon is missing after the name %s."
            .formatted(Shown.cut(text.substring(lastStart, lastEnd))),
        "Write a member as \"name\": value.");
  }

  private @Nullable SyntaxFault commaOrEnd(char c) {
    if (c == ',') {
      at++;
      next = text.charAt(open.element()) == '{' ? Next.NAME : Next.VALUE;
      return null;
    }
    if (c == '}' || c == ']') {
      return close(c);
    }
    return new SyntaxFault(
        at,
        tokens.endOfWord(at),
        c == ';' ? "A comma must stand here, not a semicolon." : "A comma is missing before this.",
        "Put a comma between two members or values.");
  }

  private @Nullable SyntaxFault close(char c) {
    char wanted = closerOf(open.element());
    if (c != wanted) {
      return new SyntaxFault(
          at,
          at + 1,
          "The %s stands where %s must close the %s."
              .formatted(c, wanted, text.charAt(open.element())),
          "Write " + wanted + ", or check the brackets before it.");
    }
    open.pop();
    at++;
    next = open.isEmpty() ? Next.NOTHING : Next.COMMA_OR_END;
    return null;
  }

  private SyntaxFault commaTooMany(char closer) {
    return new SyntaxFault(
        lastStart,
        lastEnd,
        "The comma before the closing %s is one too many.".formatted(closer),
        "Leave it out.");
  }

  private char closerOf(int opener) {
    return text.charAt(opener) == '{' ? '}' : ']';
  }
}
