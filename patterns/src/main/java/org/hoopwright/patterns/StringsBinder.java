package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.End;
import org.hoopwright.frame.LayoutBuilder;
import org.hoopwright.frame.StringOffsets;
import org.hoopwright.geometry.Side;
import org.hoopwright.patterns.json.JsonNode;
import org.hoopwright.patterns.json.JsonNode.ArrayNode;
import org.hoopwright.patterns.json.JsonNode.ObjectNode;
import org.hoopwright.patterns.json.Pointers;

/** Reads {@code mains} and {@code crosses}. */
final class StringsBinder {

  // Any count that no check minds; what rests on it is not reported.
  private static final int NOT_KNOWN = 4;

  private static final List<String> MAINS =
      List.of("count", "start", "skip", "offsets", "shortSide");

  private static final List<String> CROSSES =
      List.of("count", "skip", "offsets", "first", "last", "direction", "startSide");

  private static final List<String> SIDES = List.of("left", "right");
  private static final List<String> ENDS = List.of("head", "throat");

  private final Values values;
  private final Values loose;
  private final HoleValues names;

  /** Reads what one side states. */
  private interface Part<T> {
    Optional<T> read(JsonNode node, String pointer, String title);
  }

  StringsBinder(Values values, Values loose) {
    this.values = values;
    this.loose = loose;
    this.names = new HoleValues(values);
  }

  /** Whether the count of mains is known; in the builder there is one in any case. */
  boolean mains(Optional<JsonNode> node, LayoutBuilder b) {
    Optional<ObjectNode> object = node.flatMap(n -> values.object(n, "/mains", "mains"));
    if (object.isEmpty()) {
      b.mains(NOT_KNOWN);
      return false;
    }
    MemberReader m = MemberReader.of(values, object.get(), "/mains", "mains", MAINS);
    Optional<Integer> count = count(m);
    b.mains(count.orElse(NOT_KNOWN));
    m.find("skip")
        .flatMap(n -> names.holes(n, "/mains/skip", "mains.skip"))
        .ifPresent(refs -> b.mainsSkip(Optional.of(refs)));
    m.find("offsets")
        .flatMap(n -> sides(n, "/mains/offsets", "mains.offsets", this::fan))
        .ifPresent(b::mainsOffsets);
    choice(m, "start", ENDS).flatMap(End::ofWord).ifPresent(b::mainsStart);
    choice(m, "shortSide", SIDES).map(StringsBinder::side).ifPresent(b::shortSide);
    return count.isPresent();
  }

  /** Whether the count of crosses is known; in the builder there is one in any case. */
  boolean crosses(Optional<JsonNode> node, LayoutBuilder b) {
    Optional<ObjectNode> object = node.flatMap(n -> values.object(n, "/crosses", "crosses"));
    if (object.isEmpty()) {
      b.crosses(NOT_KNOWN);
      return false;
    }
    MemberReader m = MemberReader.of(values, object.get(), "/crosses", "crosses", CROSSES);
    Optional<Integer> count = count(m);
    b.crosses(count.orElse(NOT_KNOWN));
    m.find("skip")
        .flatMap(n -> names.holes(n, "/crosses/skip", "crosses.skip"))
        .ifPresent(b::crossesSkip);
    m.find("offsets")
        .flatMap(
            n ->
                sides(
                    n,
                    "/crosses/offsets",
                    "crosses.offsets",
                    (o, p, t) -> numbers(o, p, t).map(StringOffsets.Crosses::new)))
        .ifPresent(b::crossesOffsets);
    m.find("first")
        .flatMap(n -> names.eachSide(n, "/crosses/first", "crosses.first"))
        .ifPresent(b::crossesFirst);
    m.find("last")
        .flatMap(n -> names.eachSide(n, "/crosses/last", "crosses.last"))
        .ifPresent(b::crossesLast);
    choice(m, "direction", LayoutBinder.words(Direction.values(), Direction::word))
        .flatMap(Direction::ofWord)
        .ifPresent(b::direction);
    choice(m, "startSide", SIDES).map(StringsBinder::side).ifPresent(b::startSide);
    return count.isPresent();
  }

  private Optional<Integer> count(MemberReader m) {
    return m.need("count").flatMap(n -> values.integer(n, m.pointer("count"), m.title("count")));
  }

  /** One of these words, or empty for {@code either} and when nothing is stated. */
  private Optional<String> choice(MemberReader m, String name, List<String> words) {
    List<String> all = new ArrayList<>(words);
    all.add(LayoutBinder.EITHER);
    return m.find(name)
        .flatMap(n -> loose.word(n, m.pointer(name), m.title(name), all))
        .filter(w -> !w.equals(LayoutBinder.EITHER));
  }

  /** The word for a side in a file. */
  static String word(Side side) {
    return SIDES.get(side == Side.LEFT ? 0 : 1);
  }

  private static Side side(String word) {
    return word.equals("left") ? Side.LEFT : Side.RIGHT;
  }

  /** The same for both sides, or {@code left} and {@code right}. */
  private <T> Optional<EachSide<T>> sides(
      JsonNode node, String pointer, String title, Part<T> part) {
    if (!(node instanceof ObjectNode object) || isFan(object)) {
      return part.read(node, pointer, title).map(EachSide::both);
    }
    MemberReader m = MemberReader.of(values, object, pointer, title, SIDES);
    Optional<T> left = part(m, "left", part);
    Optional<T> right = part(m, "right", part);
    return left.isPresent() && right.isPresent()
        ? Optional.of(new EachSide<>(left.get(), right.get()))
        : Optional.empty();
  }

  private static <T> Optional<T> part(MemberReader m, String name, Part<T> part) {
    return m.need(name).flatMap(n -> part.read(n, m.pointer(name), m.title(name)));
  }

  /** Whether an object speaks of the ends and not of the sides. */
  private static boolean isFan(ObjectNode object) {
    return object.members().stream().anyMatch(m -> ENDS.contains(m.name()))
        && object.members().stream().noneMatch(m -> SIDES.contains(m.name()));
  }

  /** A list for both ends, or {@code head} and {@code throat}. */
  private Optional<StringOffsets.Mains> fan(JsonNode node, String pointer, String title) {
    if (!(node instanceof ObjectNode object)) {
      return numbers(node, pointer, title).map(StringOffsets.Mains::parallel);
    }
    MemberReader m = MemberReader.of(values, object, pointer, title, ENDS);
    Optional<List<Double>> head = part(m, "head", this::numbers);
    Optional<List<Double>> throat = part(m, "throat", this::numbers);
    return head.isPresent() && throat.isPresent()
        ? Optional.of(new StringOffsets.Mains(head.get(), throat.get()))
        : Optional.empty();
  }

  private Optional<List<Double>> numbers(JsonNode node, String pointer, String title) {
    return values.list(node, pointer, title, "numbers").map(list -> numbers(list, pointer, title));
  }

  private List<Double> numbers(ArrayNode list, String pointer, String title) {
    List<Double> numbers = new ArrayList<>();
    for (int i = 0; i < list.items().size(); i++) {
      JsonNode item = list.items().get(i);
      double plain = Values.plain(item);
      if (!Double.isNaN(plain)) {
        numbers.add(plain);
      } else {
        values
            .number(item, Pointers.to(pointer, i), HoleValues.entry(i, title))
            .ifPresent(numbers::add);
      }
    }
    return numbers;
  }
}
