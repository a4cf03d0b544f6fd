package org.hoopwright.patterns;

import static org.hoopwright.finding.FindingCode.BAD_HOLE_NAME;
import static org.hoopwright.finding.FindingCode.WRONG_VALUE;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.hoopwright.finding.PatchStep;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.NoRun;
import org.hoopwright.geometry.Side;
import org.hoopwright.patterns.Values.Named;
import org.hoopwright.patterns.json.JsonNode;
import org.hoopwright.patterns.json.JsonNode.ArrayNode;
import org.hoopwright.patterns.json.JsonNode.Member;
import org.hoopwright.patterns.json.JsonNode.ObjectNode;
import org.hoopwright.patterns.json.JsonNode.TextNode;
import org.hoopwright.patterns.json.Pointers;
import org.hoopwright.patterns.json.Shown;

/**
 * Turns JSON values into hole names and what goes by them.
 *
 * @param values reads what the names go with
 */
record HoleValues(Values values) {

  private static final String QUOTED = "Write it in double quotes, such as \"7H\".";

  /** Reads what a table states for one hole. */
  interface Entry<T> {
    Optional<T> read(JsonNode node, Supplier<Named> at);
  }

  /** A hole name, with or without side. */
  Optional<HoleRef> hole(JsonNode node, String pointer, String title) {
    if (!(node instanceof TextNode t)) {
      return values.wrongKind(node, pointer, title, "a hole name", QUOTED);
    }
    Optional<HoleRef> ref = HoleRef.find(t.text());
    return ref.isPresent()
        ? ref
        : values.wrong(
            BAD_HOLE_NAME,
            node.place(),
            pointer,
            "%s, %s, is not a hole name.".formatted(Values.start(title), Shown.quoted(t.text())),
            HoleNames.fix(t.text()),
            HoleRef.find(t.text().strip().toUpperCase(Locale.ROOT))
                .map(r -> List.of(PatchStep.replace(pointer, "\"" + r + "\"")))
                .orElse(List.of()));
  }

  /** A list of hole names; those that are none are left out. */
  Optional<List<HoleRef>> holes(JsonNode node, String pointer, String title) {
    return values
        .list(node, pointer, title, "hole names")
        .map(
            list -> {
              List<HoleRef> refs = new ArrayList<>();
              for (int i = 0; i < list.items().size(); i++) {
                JsonNode item = list.items().get(i);
                Optional<HoleRef> ref = hole(item, Pointers.to(pointer, i), entry(i, title));
                if (ref.isPresent()) {
                  moved(pointer, i, refs.size());
                  refs.add(ref.get());
                }
              }
              return refs;
            });
  }

  /** Notes an entry that moves up in its list because entries before it are left out. */
  private void moved(String list, int inFile, int inLayout) {
    if (inFile != inLayout) {
      values.reading().move(Pointers.to(list, inLayout), Pointers.to(list, inFile));
    }
  }

  /** What an item of a list is called. */
  static String entry(int index, String title) {
    return "entry " + (index + 1) + " of " + title;
  }

  /**
   * A hole for each side: one name without side, or a list of two names, left and then right. In a
   * list a name without side means its own side's hole.
   */
  Optional<EachSide<HoleId>> eachSide(JsonNode node, String pointer, String title) {
    if (node instanceof ArrayNode list) {
      if (list.items().size() != 2) {
        return values.notTwo(
            node, pointer, title, "one hole name or a list of two", "Name the left and the right.");
      }
      Optional<HoleId> left = oneOf(list, pointer, title, Side.LEFT);
      Optional<HoleId> right = oneOf(list, pointer, title, Side.RIGHT);
      return left.isPresent() && right.isPresent()
          ? Optional.of(new EachSide<>(left.get(), right.get()))
          : Optional.empty();
    }
    if (!(node instanceof TextNode)) {
      return values.wrongKind(node, pointer, title, "a hole name or a list of two", QUOTED);
    }
    Optional<HoleRef> ref = hole(node, pointer, title);
    if (ref.isPresent() && ref.get().side().isPresent()) {
      HoleRef both = HoleRef.both(ref.get().end(), ref.get().number());
      return values.wrong(
          WRONG_VALUE,
          node.place(),
          pointer,
          "%s names one side only, %s.".formatted(Values.start(title), ref.get()),
          "Write \"%s\" for both sides, or a list of two names, left and then right."
              .formatted(both));
    }
    return ref.map(r -> new EachSide<>(r.holes().get(0), r.holes().get(1)));
  }

  private Optional<HoleId> oneOf(ArrayNode list, String pointer, String title, Side side) {
    int index = side == Side.LEFT ? 0 : 1;
    return hole(list.items().get(index), Pointers.to(pointer, index), entry(index, title))
        .map(ref -> new HoleId(ref.side().orElse(side), ref.end(), ref.number()));
  }

  /** Stretches between two holes. */
  List<NoRun> stretches(JsonNode node, String pointer, String title) {
    List<NoRun> stretches = new ArrayList<>();
    Optional<ArrayNode> list = values.list(node, pointer, title, "pairs of hole names");
    if (list.isPresent()) {
      for (int i = 0; i < list.get().items().size(); i++) {
        JsonNode item = list.get().items().get(i);
        Optional<NoRun> stretch = stretch(item, Pointers.to(pointer, i), entry(i, title));
        if (stretch.isPresent() && item instanceof ArrayNode pair) {
          moved(pointer, i, stretches.size());
          String own = Pointers.to(pointer, i);
          String kept = Pointers.to(pointer, stretches.size());
          for (int end = 0; end < pair.items().size() && i > stretches.size(); end++) {
            values.reading().move(Pointers.to(kept, end), Pointers.to(own, end));
          }
          stretches.add(stretch.get());
        }
      }
    }
    return stretches;
  }

  private Optional<NoRun> stretch(JsonNode node, String pointer, String title) {
    if (!(node instanceof ArrayNode list) || list.items().size() != 2) {
      return values.notTwo(
          node, pointer, title, "a pair of hole names", "Write it as [\"5T\", \"6T\"].");
    }
    Optional<HoleRef> from =
        hole(list.items().get(0), Pointers.to(pointer, 0), "the first hole of " + title);
    Optional<HoleRef> to =
        hole(list.items().get(1), Pointers.to(pointer, 1), "the second hole of " + title);
    return from.isPresent() && to.isPresent()
        ? Optional.of(new NoRun(from.get(), to.get()))
        : Optional.empty();
  }

  /**
   * Something stated by hole name, in the order of the file. The place of an entry reaches from its
   * name to the end of its value, because a finding may be about either.
   */
  <T> Map<HoleRef, T> table(JsonNode node, String pointer, String title, Entry<T> entry) {
    Map<HoleRef, T> table = new LinkedHashMap<>();
    Optional<ObjectNode> object = values.object(node, pointer, title);
    if (object.isPresent()) {
      MemberReader members = MemberReader.ofTable(values, object.get(), pointer, title);
      values.reading().table(pointer);
      for (Member member : members.known()) {
        Optional<HoleRef> ref = HoleRef.find(member.name());
        if (ref.isEmpty()) {
          values.wrong(
              BAD_HOLE_NAME,
              member.key(),
              members.pointer(member.name()),
              "%s in %s is not a hole name.".formatted(Shown.quoted(member.name()), title),
              HoleNames.fix(member.name()));
        } else {
          Supplier<Named> at =
              () -> new Named(members.pointer(member.name()), title + "." + ref.get());
          entry.read(member.value(), at).ifPresent(v -> table.put(ref.get(), v));
        }
      }
    }
    return table;
  }
}
