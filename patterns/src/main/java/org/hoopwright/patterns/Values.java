package org.hoopwright.patterns;

import static org.hoopwright.finding.FindingCode.JSON_LIMIT;
import static org.hoopwright.finding.FindingCode.NUMBER_RANGE;
import static org.hoopwright.finding.FindingCode.WRONG_TYPE;
import static org.hoopwright.finding.FindingCode.WRONG_VALUE;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.PatchStep;
import org.hoopwright.finding.Place;
import org.hoopwright.geometry.Point;
import org.hoopwright.patterns.json.JsonNode;
import org.hoopwright.patterns.json.JsonNode.ArrayNode;
import org.hoopwright.patterns.json.JsonNode.BooleanNode;
import org.hoopwright.patterns.json.JsonNode.NumberNode;
import org.hoopwright.patterns.json.JsonNode.ObjectNode;
import org.hoopwright.patterns.json.JsonNode.TextNode;
import org.hoopwright.patterns.json.PlainNumber;
import org.hoopwright.patterns.json.Pointers;
import org.hoopwright.patterns.json.Shown;

/**
 * Turns single JSON values into what the format means by them; empty, and a finding, where that
 * cannot be.
 *
 * @param reading takes the findings
 * @param vital whether a value left out makes the rest of the layout mean something else
 */
record Values(Reading reading, boolean vital) {

  /** The longest number, in characters. */
  static final int MAX_NUMBER_LENGTH = 64;

  /** A number that somebody put in quotes. */
  private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9][0-9]{0,8})(\\.[0-9]{1,9})?");

  /** The longest text, in characters. */
  static final int MAX_TEXT_LENGTH = 10_000;

  /** Reports a value that is left out for it. */
  <T> Optional<T> wrong(FindingCode code, Place place, String pointer, String message, String fix) {
    reading.add(code, pointer, place, message, fix);
    return lost(pointer);
  }

  /** Reports a value that is left out for it, with a mechanical fix. */
  <T> Optional<T> wrong(
      FindingCode code,
      Place place,
      String pointer,
      String message,
      String fix,
      List<PatchStep> patch) {
    reading.add(code, pointer, place, message, fix, patch);
    return lost(pointer);
  }

  /** Leaves a value out that is reported already. */
  <T> Optional<T> lost(String pointer) {
    reading.lose(pointer);
    if (vital) {
      reading.unsound();
    }
    return Optional.empty();
  }

  /**
   * Reports a value of the wrong kind.
   *
   * @param title what the value is called
   * @param wanted the right kind, such as {@code a list of numbers}
   * @param fix what to do
   */
  <T> Optional<T> wrongKind(
      JsonNode node, String pointer, String title, String wanted, String fix) {
    String given =
        node instanceof TextNode t
            ? "a text (" + Shown.quoted(t.text()) + ")"
            : node instanceof NumberNode n ? "a number (" + Shown.cut(n.raw()) + ")" : node.kind();
    List<PatchStep> patch =
        node instanceof TextNode t
                && wanted.endsWith(" number")
                && NUMBER.matcher(t.text()).matches()
            ? List.of(PatchStep.replace(pointer, t.text()))
            : List.of();
    return wrong(
        WRONG_TYPE,
        node.place(),
        pointer,
        "%s must be %s, not %s.".formatted(start(title), wanted, given),
        fix,
        patch);
  }

  /** An object. */
  Optional<ObjectNode> object(JsonNode node, String pointer, String title) {
    return node instanceof ObjectNode o
        ? Optional.of(o)
        : wrongKind(node, pointer, title, "an object", "Write its members in { }.");
  }

  /** A list. */
  Optional<ArrayNode> list(JsonNode node, String pointer, String title, String of) {
    if (!(node instanceof ArrayNode a)) {
      return wrongKind(node, pointer, title, "a list of " + of, "Write them in [ ].");
    }
    if (!a.complete()) {
      reading.lose(Pointers.to(pointer, "-")); // entries after the last one that was read
    }
    return Optional.of(a);
  }

  /** A text, within its limit. */
  Optional<String> text(JsonNode node, String pointer, String title) {
    if (!(node instanceof TextNode t)) {
      return wrongKind(node, pointer, title, "a text", "Write it in double quotes.");
    }
    return isShort(t, pointer, title) ? Optional.of(t.text()) : Optional.empty();
  }

  /** Whether a text is within its limit; a finding when not. */
  boolean isShort(TextNode node, String pointer, String title) {
    int length = node.text().codePointCount(0, node.text().length());
    if (length <= MAX_TEXT_LENGTH) {
      return true;
    }
    wrong(
        JSON_LIMIT,
        node.place(),
        pointer,
        "%s is a text of %s characters, more than %s."
            .formatted(start(title), length, MAX_TEXT_LENGTH),
        "Shorten it.");
    return false;
  }

  /** One of these words. */
  Optional<String> word(JsonNode node, String pointer, String title, List<String> words) {
    String fix = "Write one of \"" + String.join("\", \"", words) + "\".";
    if (!(node instanceof TextNode t)) {
      return wrongKind(node, pointer, title, "a text", fix);
    }
    if (words.contains(t.text())) {
      return Optional.of(t.text());
    }
    return isShort(t, pointer, title)
        ? wrong(
            WRONG_VALUE,
            node.place(),
            pointer,
            "%s cannot be %s; the nearest word is \"%s\"."
                .formatted(start(title), Shown.quoted(t.text()), Nearest.of(t.text(), words)),
            fix)
        : Optional.empty();
  }

  /** True or false. */
  Optional<Boolean> flag(JsonNode node, String pointer, String title) {
    return node instanceof BooleanNode b
        ? Optional.of(b.value())
        : wrongKind(node, pointer, title, "true or false", "Write true or false, without quotes.");
  }

  /** A number with nothing to say about it; not a number for any other value. */
  static double plain(JsonNode node) {
    if (!(node instanceof NumberNode n) || n.raw().length() > MAX_NUMBER_LENGTH) {
      return Double.NaN;
    }
    double value = PlainNumber.parse(n.raw());
    return Double.isInfinite(value) || (value == 0 && hasDigits(n.raw()))
        ? Double.NaN
        : value + 0.0; // turns -0.0 into 0.0
  }

  /** A finite number; minus zero is zero. */
  Optional<Double> number(JsonNode node, String pointer, String title) {
    double plain = plain(node);
    if (!Double.isNaN(plain)) {
      return Optional.of(plain);
    }
    if (!(node instanceof NumberNode n)) {
      return wrongKind(node, pointer, title, "a number", "Write a number, without quotes.");
    }
    if (n.raw().length() > MAX_NUMBER_LENGTH) {
      return wrong(
          JSON_LIMIT,
          node.place(),
          pointer,
          "%s is a number of %s characters, more than %s."
              .formatted(start(title), n.raw().length(), MAX_NUMBER_LENGTH),
          "Round it.");
    }
    return outOfRange(
        n,
        pointer,
        title,
        Double.isInfinite(PlainNumber.parse(n.raw()))
            ? "large a number"
            : "small a number to tell from 0");
  }

  private <T> Optional<T> outOfRange(NumberNode node, String pointer, String title, String how) {
    return wrong(
        NUMBER_RANGE,
        node.place(),
        pointer,
        "%s (%s) is too %s.".formatted(start(title), Shown.cut(node.raw()), how),
        "Check the number and its exponent.");
  }

  /** Whether the digits before the exponent are not all 0. */
  private static boolean hasDigits(String raw) {
    for (int i = 0; i < raw.length() && raw.charAt(i) != 'e' && raw.charAt(i) != 'E'; i++) {
      if (raw.charAt(i) >= '1' && raw.charAt(i) <= '9') {
        return true;
      }
    }
    return false;
  }

  /** A whole number; {@code 16.0} is one. */
  Optional<Integer> integer(JsonNode node, String pointer, String title) {
    String fix = "Write a whole number, without quotes.";
    if (!(node instanceof NumberNode n)) {
      return wrongKind(node, pointer, title, "a whole number", fix);
    }
    Optional<Double> value = number(node, pointer, title);
    if (value.isPresent() && value.get() != Math.rint(value.get())) {
      return wrongKind(node, pointer, title, "a whole number", fix);
    }
    if (value.isPresent() && value.get().intValue() != value.get()) {
      return outOfRange(n, pointer, title, "large a number");
    }
    return value.map(Double::intValue);
  }

  /**
   * A pair of numbers {@code [x, y]}.
   *
   * @param at what it is, only asked for when something is wrong with it
   */
  Optional<Point> point(JsonNode node, Supplier<Named> at) {
    if (node instanceof ArrayNode a && a.items().size() == 2) {
      double x = plain(a.items().get(0));
      double y = plain(a.items().get(1));
      if (!Double.isNaN(x) && !Double.isNaN(y)) {
        return Optional.of(new Point(x, y));
      }
    }
    return point(node, at.get().pointer(), at.get().title());
  }

  /**
   * What a value is.
   *
   * @param pointer where it stands
   * @param title what it is called
   */
  record Named(String pointer, String title) {}

  private Optional<Point> point(JsonNode node, String pointer, String title) {
    if (!(node instanceof ArrayNode a) || a.items().size() != 2) {
      return notTwo(node, pointer, title, "a pair [x, y] of numbers", "Write it as [x, y].");
    }
    Optional<Double> x = number(a.items().get(0), Pointers.to(pointer, 0), "the x of " + title);
    Optional<Double> y = number(a.items().get(1), Pointers.to(pointer, 1), "the y of " + title);
    return x.isPresent() && y.isPresent()
        ? Optional.of(new Point(x.get(), y.get()))
        : Optional.empty();
  }

  /** Reports what is no list of two. */
  <T> Optional<T> notTwo(JsonNode node, String pointer, String title, String wanted, String fix) {
    if (!(node instanceof ArrayNode a)) {
      return wrongKind(node, pointer, title, wanted, fix);
    }
    return a.complete()
        ? wrong(
            WRONG_TYPE,
            node.place(),
            pointer,
            "%s must be %s, not a list of %s.".formatted(start(title), wanted, a.items().size()),
            fix)
        : lost(pointer); // the rest of it was not read
  }

  /** A title at the start of a sentence: words get a capital letter, names of members do not. */
  static String start(String title) {
    return title.contains(" ")
        ? Character.toUpperCase(title.charAt(0)) + title.substring(1)
        : title;
  }
}
