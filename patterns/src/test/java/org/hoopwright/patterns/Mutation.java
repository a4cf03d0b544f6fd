package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.Place;
import org.hoopwright.patterns.json.JsonNode;
import org.hoopwright.patterns.json.JsonNode.ArrayNode;
import org.hoopwright.patterns.json.JsonNode.Member;
import org.hoopwright.patterns.json.JsonNode.NumberNode;
import org.hoopwright.patterns.json.JsonNode.ObjectNode;
import org.hoopwright.patterns.json.JsonNode.TextNode;
import org.hoopwright.patterns.json.JsonTree;
import org.hoopwright.patterns.json.Pointers;
import org.hoopwright.patterns.json.TextLines;
import org.hoopwright.testing.Draw;

/**
 * A layout file with one place changed.
 *
 * @param kind how it was changed
 * @param text the text then
 * @param pointers the values that were changed; empty where a change is not of one value
 * @param firstLine the first line of the text that the change touches
 * @param lastLine the last one
 */
record Mutation(Kind kind, String text, List<String> pointers, int firstLine, int lastLine) {

  /** What is done to the text. */
  enum Kind {
    DELETE,
    NUMBER,
    SWAP_NAME,
    DUPLICATE,
    TYPE,
    INSERT,
    CUT
  }

  /**
   * A member of an object or an entry of a list, as stretches of the text.
   *
   * @param from where it begins, its name included
   * @param value where its value begins
   * @param to its end
   * @param last whether nothing of its object or list comes after it
   * @param first whether nothing of its object or list comes before it
   */
  private record Part(
      String pointer,
      String parent,
      JsonNode node,
      int from,
      int value,
      int to,
      boolean first,
      boolean last) {

    boolean named() {
      return value > from;
    }

    /** Whether another part lies in this one. */
    boolean holds(Part other) {
      return from <= other.from && other.to <= to && to - from > other.to - other.from;
    }
  }

  private static final List<String> NUMBERS =
      List.of(
          "0",
          "1",
          "2",
          "3",
          "4",
          "5",
          "7",
          "13",
          "17",
          "19",
          "21",
          "-1",
          "0.5",
          "-3.25",
          "33.3",
          "90",
          "99",
          "150",
          "250",
          "400",
          "501",
          "16.5",
          "1e3",
          "1e9",
          "1e309",
          "1e-400",
          "9999999999");

  private static final List<String> VALUES =
      List.of(
          "null",
          "true",
          "0",
          "7",
          "\"\"",
          "\"x\"",
          "\"7H\"",
          "\"L3T\"",
          "\"either\"",
          "\"16\"",
          "[]",
          "[1, 2]",
          "[\"1H\"]",
          "{}",
          "{ \"left\": 4, \"right\": 4 }");

  private static final List<String> NAMES =
      List.of(
          "format", "name", "game", "units", "hoop", "holes", "mains", "crosses", "count", "skip",
          "offsets", "first", "last", "head", "throat", "length", "width", "tieOff", "shared",
          "blocked", "at", "bore", "noRun", "start", "7H", "colour", "");

  private static final String CHARACTERS = "{}[]\",:\\/*0123456789-+.eE xHTLR\n\t\0\u00e9'#";

  /** A text with one change of this kind, drawn from all that are possible. */
  static Mutation of(Kind kind, String text, Draw draw) {
    return switch (kind) {
      case INSERT -> {
        int at = draw.between(0, text.length());
        char c = CHARACTERS.charAt(draw.between(0, CHARACTERS.length() - 1));
        String changed = text.substring(0, at) + c + text.substring(at);
        yield at(kind, changed, valueAt(text, at), endOfToken(text, at), at + 1);
      }
      case CUT -> {
        int at = draw.between(0, text.length());
        yield at(kind, text.substring(0, at), List.of(), endOfToken(text, at), at);
      }
      default -> ofPart(kind, text, draw);
    };
  }

  /** Where the text before an offset ends, blanks left aside: a fault shows there at the latest. */
  private static int endOfToken(String text, int at) {
    return Math.max(0, text.substring(0, at).stripTrailing().length() - 1);
  }

  /** The innermost value that an offset stands in or beside. */
  private static List<String> valueAt(String text, int at) {
    return parts(text).stream()
        .filter(p -> p.from() <= at && at <= p.to())
        .reduce((outer, inner) -> inner)
        .map(p -> List.of(p.pointer()))
        .orElse(List.of());
  }

  private static Mutation at(Kind kind, String text, List<String> pointers, int from, int to) {
    TextLines lines = new TextLines(text);
    return new Mutation(kind, text, pointers, lines.lineAt(from), lines.lineAt(to));
  }

  private static Mutation ofPart(Kind kind, String text, Draw draw) {
    List<Part> all = parts(text);
    List<Part> fit =
        all.stream()
            .filter(
                p ->
                    switch (kind) {
                      case NUMBER -> p.node() instanceof NumberNode;
                      case SWAP_NAME -> p.named() || p.node() instanceof TextNode;
                      case DUPLICATE -> p.named();
                      default -> true;
                    })
            .toList();
    Part p = draw.oneOf(fit);
    String own = text.substring(p.from(), p.to());
    return switch (kind) {
      case DELETE -> delete(text, p, all);
      case NUMBER -> put(kind, text, p.value(), p.to(), draw.oneOf(NUMBERS), List.of(p.pointer()));
      case SWAP_NAME -> {
        String name = draw.oneOf(NAMES);
        String quoted = '"' + name + '"';
        yield p.named()
            ? put(
                kind,
                text,
                p.from(),
                p.from() + text.substring(p.from(), p.value()).lastIndexOf('"') + 1,
                quoted,
                List.of(p.pointer(), Pointers.to(p.parent(), name)))
            : put(kind, text, p.value(), p.to(), quoted, List.of(p.pointer()));
      }
      case DUPLICATE ->
          put(kind, text, p.from(), p.from(), own + ", ", List.of(p.pointer(), p.parent()));
      default -> {
        String value = draw.oneOf(VALUES);
        yield put(kind, text, p.value(), p.to(), value, List.of(p.pointer()));
      }
    };
  }

  private static Mutation put(
      Kind kind, String text, int from, int to, String put, List<String> pointers) {
    String changed = text.substring(0, from) + put + text.substring(to);
    TextLines lines = new TextLines(changed);
    return new Mutation(
        kind, changed, pointers, lines.lineAt(from), lines.lineAt(from + put.length()));
  }

  private static Mutation delete(String text, Part p, List<Part> all) {
    int from = p.from();
    int to = p.to();
    if (!p.last()) {
      to = text.indexOf(',', to) + 1;
    } else if (!p.first()) {
      int at = all.indexOf(p);
      while (!all.get(at - 1).parent().equals(p.parent())) {
        at--;
      }
      from = all.get(at - 1).to();
    }
    return put(Kind.DELETE, text, from, to, "", List.of(p.pointer()));
  }

  /** Every member and entry, an outer one before what is in it. */
  private static List<Part> parts(String text) {
    List<Part> parts = new ArrayList<>();
    TextLines lines = new TextLines(text);
    collect(JsonTree.parse(text).root().orElseThrow(), "", lines, parts);
    return parts;
  }

  private static void collect(JsonNode node, String pointer, TextLines lines, List<Part> parts) {
    List<String> pointers = new ArrayList<>();
    List<Place> starts = new ArrayList<>();
    List<JsonNode> values = new ArrayList<>();
    if (node instanceof ObjectNode o) {
      for (Member member : o.members()) {
        pointers.add(Pointers.to(pointer, member.name()));
        starts.add(member.key());
        values.add(member.value());
      }
    } else if (node instanceof ArrayNode a) {
      for (JsonNode item : a.items()) {
        pointers.add(Pointers.to(pointer, values.size()));
        starts.add(item.place());
        values.add(item);
      }
    }
    for (int i = 0; i < values.size(); i++) {
      JsonNode value = values.get(i);
      parts.add(
          new Part(
              pointers.get(i),
              pointer,
              value,
              offset(lines, starts.get(i).line(), starts.get(i).column()),
              offset(lines, value.place().line(), value.place().column()),
              offset(lines, value.place().endLine(), value.place().endColumn()),
              i == 0,
              i == values.size() - 1));
      collect(value, pointers.get(i), lines, parts);
    }
  }

  private static int offset(TextLines lines, int line, int column) {
    return lines.start(line) + column - 1;
  }

  /**
   * Whether a finding's place begins in the value that its pointer names, or in the nearest one
   * round it that the text holds. A text that is no JSON has no pointers to ask.
   */
  static boolean agree(String text, Finding finding) {
    JsonTree tree = JsonTree.parse(text);
    if (tree.flaw().isPresent() || !(tree.root().orElseThrow() instanceof ObjectNode)) {
      return true;
    }
    TextLines lines = new TextLines(text);
    Place place = finding.place().orElseThrow();
    int at = offset(lines, place.line(), place.column());
    List<Part> round =
        parts(text).stream()
            .filter(p -> (finding.pointer() + "/").startsWith(p.pointer() + "/"))
            .toList();
    // A member that is stated twice has two values of one pointer, each with what it holds.
    return round.isEmpty()
        || round.stream()
            .filter(p -> round.stream().noneMatch(p::holds))
            .anyMatch(p -> p.from() <= at && at < p.to());
  }

  /** Whether a place touches the lines of the change. */
  boolean touches(Place place) {
    return place.line() <= lastLine && place.endLine() >= firstLine;
  }
}
