package org.hoopwright.patterns;

import static org.hoopwright.finding.FindingCode.BAD_HOLE_NAME;
import static org.hoopwright.finding.FindingCode.NUMBER_RANGE;
import static org.hoopwright.finding.FindingCode.WRONG_VALUE;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.ClampOn;
import org.hoopwright.bench.ClampSide;
import org.hoopwright.bench.HalfDone;
import org.hoopwright.bench.StrungEnd;
import org.hoopwright.bench.StrungPiece;
import org.hoopwright.frame.HoleId;
import org.hoopwright.patterns.json.JsonNode;
import org.hoopwright.patterns.json.JsonNode.ArrayNode;
import org.hoopwright.patterns.json.JsonNode.ObjectNode;
import org.hoopwright.patterns.json.Pointers;
import org.hoopwright.patterns.json.Shown;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Pass;

/**
 * Makes the state of a half-done job of the outermost JSON value, and reports all that is wrong.
 */
final class StateBinder {

  private static final double MOST_MM = 1e6;

  private static final List<List<EndName>> ENDS =
      List.of(List.of(EndName.SHORT, EndName.LONG), List.of(EndName.START, EndName.FINISH));

  private final Values values;
  private final MemberLists lists;

  StateBinder(Reading reading) {
    this.values = new Values(reading, /* vital= */ true);
    this.lists = new MemberLists(values);
  }

  Optional<HalfDone> bind(JsonNode root) {
    Optional<ObjectNode> object = values.object(root, "", "The state of a job");
    if (object.isEmpty()) {
      return Optional.empty();
    }
    MemberReader m =
        MemberReader.of(
            values,
            object.get(),
            "",
            "the state",
            List.of("$schema", "format", "pieces", "pulled", "clamps", "misweaves"));
    lists.format(m, StateReader.FORMAT);
    List<StrungPiece> pieces = new ArrayList<>();
    m.need("pieces")
        .flatMap(n -> values.list(n, "/pieces", "pieces", "pieces"))
        .ifPresent(list -> pieces(list, pieces));
    List<SpanId> pulled = lists.each(m, "pulled", this::span);
    List<ClampOn> clamps = lists.each(m, "clamps", this::clamp);
    List<SpanId> misweaves = lists.each(m, "misweaves", this::span);
    return pieces.isEmpty() || pieces.size() > ENDS.size() || !values.reading().isSound()
        ? Optional.empty()
        : Optional.of(new HalfDone(pieces, new LinkedHashSet<>(pulled), clamps, misweaves));
  }

  private void pieces(ArrayNode list, List<StrungPiece> pieces) {
    if (list.items().isEmpty() || list.items().size() > ENDS.size()) {
      values.wrong(
          WRONG_VALUE,
          list.place(),
          "/pieces",
          "There are %s pieces, and a job has one or two.".formatted(list.items().size()),
          "State the piece with the mains, and that of the crosses when it is begun.");
      return;
    }
    for (int i = 0; i < list.items().size(); i++) {
      piece(list.items().get(i), Pointers.to("/pieces", i), i).ifPresent(pieces::add);
    }
  }

  private Optional<StrungPiece> piece(JsonNode node, String pointer, int index) {
    Optional<ObjectNode> object = values.object(node, pointer, "a piece");
    if (object.isEmpty()) {
      return Optional.empty();
    }
    MemberReader m =
        MemberReader.of(values, object.get(), pointer, "a piece", List.of("ends", "broken"));
    boolean broken =
        m.find("broken").flatMap(n -> values.flag(n, m.pointer("broken"), "broken")).orElse(false);
    Optional<ArrayNode> list =
        m.need("ends").flatMap(n -> values.list(n, m.pointer("ends"), "ends", "two ends"));
    if (list.isEmpty()) {
      return Optional.empty();
    }
    List<EndName> names = ENDS.get(index);
    if (list.get().items().size() != names.size()) {
      return values.wrong(
          WRONG_VALUE,
          list.get().place(),
          m.pointer("ends"),
          "A piece has two ends, not %s.".formatted(list.get().items().size()),
          "State %s and %s, in this order.".formatted(names.get(0).word(), names.get(1).word()));
    }
    List<StrungEnd> ends = new ArrayList<>();
    for (int e = 0; e < names.size(); e++) {
      String at = Pointers.to(m.pointer("ends"), e);
      end(list.get().items().get(e), at, names.get(e)).ifPresent(ends::add);
    }
    return ends.size() == names.size()
        ? Optional.of(new StrungPiece(ends, broken))
        : Optional.empty();
  }

  private Optional<StrungEnd> end(JsonNode node, String pointer, EndName name) {
    Optional<ObjectNode> object = values.object(node, pointer, "an end");
    if (object.isEmpty()) {
      return Optional.empty();
    }
    MemberReader m =
        MemberReader.of(
            values, object.get(), pointer, "an end", List.of("name", "passes", "knot", "tail"));
    m.need("name").ifPresent(n -> values.word(n, m.pointer("name"), "name", List.of(name.word())));
    List<Pass> passes = lists.each(m, "passes", this::pass);
    Optional<Knot> knot = m.find("knot").flatMap(n -> knot(n, m.pointer("knot")));
    Optional<Double> tail = m.find("tail").flatMap(n -> length(n, m.pointer("tail"), "tail"));
    return Optional.of(
        new StrungEnd(
            name, passes, knot, tail.map(OptionalDouble::of).orElse(OptionalDouble.empty())));
  }

  private Optional<Pass> pass(JsonNode node, String pointer) {
    return values
        .object(node, pointer, "a pass")
        .flatMap(
            o -> {
              MemberReader m =
                  MemberReader.of(values, o, pointer, "a pass", List.of("span", "from", "to"));
              Optional<SpanId> span = m.need("span").flatMap(n -> span(n, m.pointer("span")));
              Optional<HoleId> from = m.need("from").flatMap(n -> hole(n, m.pointer("from")));
              Optional<HoleId> to = m.need("to").flatMap(n -> hole(n, m.pointer("to")));
              return span.isPresent() && from.isPresent() && to.isPresent()
                  ? Optional.of(new Pass(span.get(), from.get(), to.get()))
                  : Optional.empty();
            });
  }

  private Optional<Knot> knot(JsonNode node, String pointer) {
    return values
        .object(node, pointer, "a knot")
        .flatMap(
            o -> {
              MemberReader m =
                  MemberReader.of(values, o, pointer, "a knot", List.of("kind", "hole", "anchor"));
              Optional<Knot.Kind> kind = lists.one(m, "kind", Knot.Kind.values(), Knot.Kind::word);
              Optional<HoleId> hole = m.need("hole").flatMap(n -> hole(n, m.pointer("hole")));
              Optional<SpanId> anchor = m.need("anchor").flatMap(n -> span(n, m.pointer("anchor")));
              return kind.isPresent() && hole.isPresent() && anchor.isPresent()
                  ? Optional.of(new Knot(kind.get(), hole.get(), anchor.get()))
                  : Optional.empty();
            });
  }

  private Optional<ClampOn> clamp(JsonNode node, String pointer) {
    return values
        .object(node, pointer, "a clamp")
        .flatMap(
            o -> {
              MemberReader m =
                  MemberReader.of(
                      values,
                      o,
                      pointer,
                      "a clamp",
                      List.of("clamp", "span", "near", "distance", "side"));
              Optional<String> name =
                  m.need("clamp").flatMap(n -> values.text(n, m.pointer("clamp"), "clamp"));
              Optional<SpanId> span = m.need("span").flatMap(n -> span(n, m.pointer("span")));
              Optional<HoleId> near = m.need("near").flatMap(n -> hole(n, m.pointer("near")));
              Optional<Double> distance =
                  m.need("distance").flatMap(n -> length(n, m.pointer("distance"), "distance"));
              Optional<ClampSide> side = lists.one(m, "side", ClampSide.values(), ClampSide::word);
              return name.isPresent()
                      && span.isPresent()
                      && near.isPresent()
                      && distance.isPresent()
                      && side.isPresent()
                  ? Optional.of(
                      new ClampOn(name.get(), span.get(), near.get(), distance.get(), side.get()))
                  : Optional.empty();
            });
  }

  private Optional<Double> length(JsonNode node, String pointer, String title) {
    return values
        .number(node, pointer, title)
        .flatMap(
            mm ->
                mm >= 0 && mm < MOST_MM
                    ? Optional.of(mm)
                    : values.wrong(
                        NUMBER_RANGE,
                        node.place(),
                        pointer,
                        "The %s (%s mm) is not from 0 to 1000000 mm.".formatted(title, mm),
                        "State it in millimetres."));
  }

  private Optional<SpanId> span(JsonNode node, String pointer) {
    return values
        .text(node, pointer, "a span")
        .flatMap(
            t ->
                SpanId.find(t)
                    .or(
                        () ->
                            values.wrong(
                                WRONG_VALUE,
                                node.place(),
                                pointer,
                                "%s is not a span.".formatted(Shown.quoted(t)),
                                "Write L, R or X and a number, such as L3 or X19.")));
  }

  private Optional<HoleId> hole(JsonNode node, String pointer) {
    return values
        .text(node, pointer, "a hole")
        .flatMap(
            t ->
                HoleId.find(t)
                    .or(
                        () ->
                            values.wrong(
                                BAD_HOLE_NAME,
                                node.place(),
                                pointer,
                                "%s is not the name of one hole.".formatted(Shown.quoted(t)),
                                "Write side, number and end, such as L7H.")));
  }
}
