package org.hoopwright.patterns.json;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Writes JSON in one canonical form: two-space indent, {@code \n}, no trailing blank.
 *
 * <p>An object or list stands on one line ({@code { "a": 1 }}, {@code [1, 2]}) when that line has
 * at most {@value #WIDTH} columns; else an object has one member a line, and a list as many items
 * as fit. The outermost object always has one member a line. Characters that do not show are
 * escaped, so that no text can disturb whoever looks at the file.
 *
 * <p>Values are maps with text keys (objects, in the map's order), lists, texts, {@link Boolean},
 * {@link Integer}, {@link Long} and {@link Double}.
 */
public final class JsonText {

  /** The most columns of a line that holds more than one value. */
  public static final int WIDTH = 100;

  private final StringBuilder out = new StringBuilder();

  private JsonText() {}

  /**
   * The text of an object, ending with a line end.
   *
   * @throws IllegalArgumentException when a value is of another kind or a number is not finite
   */
  public static String of(Map<String, ?> object) {
    JsonText text = new JsonText();
    text.object(object, 0);
    return text.out.append('\n').toString();
  }

  /** A text in quotes, escaped. */
  public static String quote(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                case '\n' -> quoted.append("\\n");
                case '\r' -> quoted.append("\\r");
                case '\t' -> quoted.append("\\t");
                default -> Shown.append(quoted, c);
              }
            });
    return quoted.append('"').toString();
  }

  private void value(Object value, int indent, int column) {
    if (!(value instanceof Map<?, ?>) && !(value instanceof List<?>)) {
      out.append(scalar(value));
      return;
    }
    Optional<String> line = inline(value, WIDTH - column - 1); // and a comma
    if (line.isPresent()) {
      out.append(line.get());
    } else if (value instanceof Map<?, ?> map) {
      object(map, indent);
    } else {
      list((List<?>) value, indent);
    }
  }

  private void object(Map<?, ?> object, int indent) {
    if (object.isEmpty()) {
      out.append("{}");
      return;
    }
    out.append("{");
    String separator = "";
    for (Map.Entry<?, ?> member : object.entrySet()) {
      out.append(separator);
      newLine(indent + 2);
      String key = quote((String) member.getKey()) + ": ";
      out.append(key);
      value(member.getValue(), indent + 2, indent + 2 + key.length());
      separator = ",";
    }
    newLine(indent);
    out.append("}");
  }

  private void list(List<?> list, int indent) {
    out.append("[");
    int column = WIDTH; // the first item starts a line
    String separator = "";
    for (Object item : list) {
      Optional<String> line = inline(item, WIDTH);
      int length = line.map(String::length).orElse(WIDTH);
      out.append(separator);
      if (line.isPresent() && column + 1 + length + 1 <= WIDTH) {
        out.append(' ').append(line.get());
        column += 2 + length;
      } else {
        newLine(indent + 2);
        value(item, indent + 2, indent + 2);
        column = indent + 2 + length + 1;
      }
      separator = ",";
    }
    newLine(indent);
    out.append("]");
  }

  private void newLine(int indent) {
    out.append('\n').append(" ".repeat(indent));
  }

  /**
   * A value on one line, when it has at most so many columns. What is longer is not looked at to
   * its end, so that a deep value is not written again at every depth.
   */
  private static Optional<String> inline(Object value, int most) {
    StringBuilder line = new StringBuilder();
    return append(line, value, most) ? Optional.of(line.toString()) : Optional.empty();
  }

  /** Whether the line has at most so many columns with this value. */
  private static boolean append(StringBuilder line, Object value, int most) {
    if (value instanceof List<?> list) {
      line.append('[');
      String separator = "";
      for (Object item : list) {
        line.append(separator);
        if (!append(line, item, most)) {
          return false;
        }
        separator = ", ";
      }
      line.append(']');
    } else if (value instanceof Map<?, ?> map) {
      line.append('{');
      String separator = " ";
      for (Map.Entry<?, ?> member : map.entrySet()) {
        line.append(separator).append(quote((String) member.getKey())).append(": ");
        if (!append(line, member.getValue(), most)) {
          return false;
        }
        separator = ", ";
      }
      line.append(map.isEmpty() ? "}" : " }");
    } else {
      line.append(scalar(value));
    }
    return line.length() <= most;
  }

  private static String scalar(Object value) {
    if (value instanceof String s) {
      return quote(s);
    }
    if (value instanceof Double d) {
      return PlainNumber.of(d);
    }
    if (value instanceof Integer || value instanceof Long || value instanceof Boolean) {
      return value.toString();
    }
    throw new IllegalArgumentException(
        String.format(
            Locale.ROOT,
            "A value (%s) must be a map, a list, a text, a number or a boolean.",
            value));
  }
}
