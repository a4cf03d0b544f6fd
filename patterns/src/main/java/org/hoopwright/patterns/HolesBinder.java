package org.hoopwright.patterns;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.LayoutBuilder;
import org.hoopwright.patterns.json.JsonNode;
import org.hoopwright.patterns.json.JsonNode.ObjectNode;

/** Reads {@code holes}. */
final class HolesBinder {

  private static final List<String> MEMBERS =
      List.of("head", "throat", "tieOff", "shared", "blocked", "bore", "at", "noRun");

  // Any counts that no check minds; what rests on them is not reported.
  private static final EachSide<Integer> NOT_KNOWN = EachSide.both(1);

  private static final List<String> SIDES = List.of("left", "right");

  private final Values values;
  private final HoleValues names;

  HolesBinder(Values values) {
    this.values = values;
    this.names = new HoleValues(values);
  }

  /** Whether the counts are known; in the builder there are counts in any case. */
  boolean bind(Optional<JsonNode> node, LayoutBuilder b) {
    Optional<ObjectNode> object = node.flatMap(n -> values.object(n, "/holes", "holes"));
    if (object.isEmpty()) {
      b.holes(NOT_KNOWN, NOT_KNOWN);
      return false;
    }
    MemberReader m = MemberReader.of(values, object.get(), "/holes", "holes", MEMBERS);
    Optional<EachSide<Integer>> head = m.need("head").flatMap(n -> counts(m, n, "head"));
    Optional<EachSide<Integer>> throat = m.need("throat").flatMap(n -> counts(m, n, "throat"));
    holes(m, "tieOff", b::tieOff);
    holes(m, "shared", b::shared);
    holes(m, "blocked", b::blocked);
    m.find("bore").ifPresent(n -> b.bore(names.table(n, "/holes/bore", "holes.bore", this::bore)));
    m.find("at").ifPresent(n -> b.at(names.table(n, "/holes/at", "holes.at", values::point)));
    m.find("noRun").ifPresent(n -> b.noRun(names.stretches(n, "/holes/noRun", "holes.noRun")));
    b.holes(head.orElse(NOT_KNOWN), throat.orElse(NOT_KNOWN));
    return head.isPresent() && throat.isPresent();
  }

  private Optional<Integer> bore(JsonNode node, Supplier<Values.Named> at) {
    return values.integer(node, at.get().pointer(), at.get().title());
  }

  private void holes(MemberReader m, String name, Consumer<List<HoleRef>> setting) {
    m.find(name).flatMap(n -> names.holes(n, m.pointer(name), m.title(name))).ifPresent(setting);
  }

  private Optional<EachSide<Integer>> counts(MemberReader m, JsonNode node, String name) {
    String pointer = m.pointer(name);
    String title = m.title(name);
    if (node instanceof ObjectNode object) {
      MemberReader sides = MemberReader.of(values, object, pointer, title, SIDES);
      Optional<Integer> left = count(sides, "left");
      Optional<Integer> right = count(sides, "right");
      return left.isPresent() && right.isPresent()
          ? Optional.of(new EachSide<>(left.get(), right.get()))
          : Optional.empty();
    }
    return values.integer(node, pointer, title).map(EachSide::both);
  }

  private Optional<Integer> count(MemberReader sides, String name) {
    return sides.need(name).flatMap(n -> values.integer(n, sides.pointer(name), sides.title(name)));
  }
}
