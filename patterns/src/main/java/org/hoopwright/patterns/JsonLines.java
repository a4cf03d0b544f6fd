package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import org.hoopwright.patterns.json.JsonText;
import org.hoopwright.patterns.json.PlainNumber;

/**
 * JSON as it is written: members in the order given, two-space indent, {@code \n}. A list or object
 * is either on one line or has a line for each of its parts, as whoever builds it says.
 */
final class JsonLines {

  /** A value: its parts, or its text when it has none. */
  private sealed interface Value {
    record Plain(String text) implements Value {}

    record Group(char open, char close, boolean oneLine, List<Part> parts) implements Value {}
  }

  /** A part of a list (without name) or of an object. */
  private record Part(String name, JsonLines value) {}

  private final Value value;

  private JsonLines(Value value) {
    this.value = value;
  }

  /** A text value. */
  static JsonLines text(String text) {
    return new JsonLines(new Value.Plain(JsonText.quote(text)));
  }

  /** A whole number. */
  static JsonLines number(long number) {
    return new JsonLines(new Value.Plain(Long.toString(number)));
  }

  /** A length in mm or a force in N, see {@link Decimals#tenths}. */
  static JsonLines tenths(double number) {
    return new JsonLines(new Value.Plain(Decimals.tenths(number)));
  }

  /** A number that needs more than one decimal, see {@link Decimals#precise}. */
  static JsonLines precise(double number) {
    return new JsonLines(new Value.Plain(Decimals.precise(number)));
  }

  /** A number that reads back as this very one, see {@link PlainNumber#of}. */
  static JsonLines exact(double number) {
    return new JsonLines(new Value.Plain(PlainNumber.of(number)));
  }

  /** True or false. */
  static JsonLines truth(boolean value) {
    return new JsonLines(new Value.Plain(Boolean.toString(value)));
  }

  /** A list on one line. */
  static JsonLines line(List<JsonLines> values) {
    return list(values, true);
  }

  /** A list of texts on one line, each by its {@code toString}. */
  static JsonLines names(Collection<?> names) {
    return line(names.stream().map(n -> text(n.toString())).toList());
  }

  /** A list with a line for each value. */
  static JsonLines lines(List<JsonLines> values) {
    return list(values, false);
  }

  /** A list with a line for each value. */
  static <T> JsonLines lines(Collection<T> things, Function<T, JsonLines> each) {
    return lines(things.stream().map(each).toList());
  }

  private static JsonLines list(List<JsonLines> values, boolean oneLine) {
    List<Part> parts = values.stream().map(v -> new Part("", v)).toList();
    return new JsonLines(new Value.Group('[', ']', oneLine, parts));
  }

  /** Starts an object on one line. */
  static Members lineObject() {
    return new Members(true);
  }

  /** Starts an object with a line for each member. */
  static Members object() {
    return new Members(false);
  }

  /** Gathers the members of an object. Not thread-safe. */
  static final class Members {
    private final boolean oneLine;
    private final List<Part> parts = new ArrayList<>();

    private Members(boolean oneLine) {
      this.oneLine = oneLine;
    }

    Members put(String name, JsonLines value) {
      parts.add(new Part(name, value));
      return this;
    }

    /** Adds a text, by the value's {@code toString}. */
    Members put(String name, Object value) {
      return put(name, text(value.toString()));
    }

    Members put(String name, long value) {
      return put(name, number(value));
    }

    JsonLines end() {
      return new JsonLines(new Value.Group('{', '}', oneLine, List.copyOf(parts)));
    }
  }

  /** The document: this value and a line end. */
  String document() {
    StringBuilder out = new StringBuilder();
    print(out, 0);
    return out.append('\n').toString();
  }

  private void print(StringBuilder out, int depth) {
    if (value instanceof Value.Plain plain) {
      out.append(plain.text());
    } else if (value instanceof Value.Group group) {
      if (group.parts().isEmpty()) {
        out.append(group.open()).append(group.close());
      } else if (group.oneLine()) {
        printLine(out, group, depth);
      } else {
        printLines(out, group, depth);
      }
    }
  }

  private static void printLine(StringBuilder out, Value.Group group, int depth) {
    boolean wide =
        group.open() == '{'
            || group.parts().stream().anyMatch(p -> p.value().value instanceof Value.Group);
    out.append(group.open()).append(wide ? " " : "");
    String between = "";
    for (Part part : group.parts()) {
      out.append(between);
      printPart(out, group, part, depth);
      between = ", ";
    }
    out.append(wide ? " " : "").append(group.close());
  }

  private static void printLines(StringBuilder out, Value.Group group, int depth) {
    out.append(group.open());
    String between = "\n";
    for (Part part : group.parts()) {
      out.append(between).append("  ".repeat(depth + 1));
      printPart(out, group, part, depth + 1);
      between = ",\n";
    }
    out.append('\n').append("  ".repeat(depth)).append(group.close());
  }

  private static void printPart(StringBuilder out, Value.Group group, Part part, int depth) {
    if (group.open() == '{') {
      out.append(JsonText.quote(part.name())).append(": ");
    }
    part.value().print(out, depth);
  }
}
