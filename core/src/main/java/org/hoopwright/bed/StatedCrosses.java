package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutPointers;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Side;

/** Which holes of one side the crosses take, or may take, under the stated skip rules. */
final class StatedCrosses {

  private final StatedRules rules;
  private final Layout layout;
  private final Ring ring;
  private final Side side;
  private final List<Finding> findings = new ArrayList<>();
  private final List<HoleId> passedBy = new ArrayList<>();
  private Optional<CrossItems> items = Optional.empty();

  StatedCrosses(StatedRules rules, Side side) {
    this.rules = rules;
    this.layout = rules.layout();
    this.ring = rules.ring();
    this.side = side;
    work();
  }

  /**
   * What there is to take; empty when there are not enough holes or the first one is impossible.
   */
  Optional<CrossItems> items() {
    return items;
  }

  /** What is wrong on this side. */
  List<Finding> findings() {
    return findings;
  }

  private void work() {
    Optional<HoleId> first = layout.crossesFirst().map(f -> f.of(side));
    if (first.isPresent() && !firstPossible(first.get())) {
      return;
    }
    List<CrossItems.Item> found = new ArrayList<>();
    int from = first.map(ring::place).orElse(0);
    for (HoleId hole : ring.list(side)) {
      int place = ring.place(hole);
      boolean isFirst = first.isPresent() && place == from;
      if (rules.free(hole) && ring.isBlocked(hole)) {
        if (place >= from) {
          passedBy.add(hole);
        }
      } else if (place >= from && rules.free(hole)) {
        found.add(new CrossItems.Item(hole, /* must= */ true));
      } else if (place >= from && rules.mayShare(hole)) {
        found.add(new CrossItems.Item(hole, /* must= */ isFirst));
      }
    }
    choose(found);
  }

  private boolean firstPossible(HoleId hole) {
    if (hole.side() != side || !ring.has(hole)) {
      return false; // a rule on layouts reports it
    }
    Optional<String> why = rules.whyNoCross(hole);
    why.ifPresent(
        text ->
            findings.add(
                Finding.of(FindingCode.CROSSES_FIRST)
                    .message("The first cross cannot take hole %s, which %s.".formatted(hole, text))
                    .at(
                        LayoutPointers.side(
                            layout, "/crosses/first", layout.crossesFirst().orElseThrow(), side),
                        layout.places())
                    .about(hole, SpanId.cross(1))
                    .fix(
                        "Name the hole nearest the head that a cross goes through, or leave crosses.first out to have it worked out.")
                    .build()));
    return why.isEmpty();
  }

  private void choose(List<CrossItems.Item> found) {
    int crosses = layout.crossesCount();
    List<CrossItems.Item> must = found.stream().filter(CrossItems.Item::must).toList();
    if (must.size() >= crosses) {
      items = Optional.of(new CrossItems(must.subList(0, crosses), crosses));
      return;
    }
    if (found.size() < crosses) {
      findings.add(tooFew(must.size(), found.size() - must.size()));
      return;
    }
    items = Optional.of(new CrossItems(upToLast(found, crosses), crosses));
  }

  /**
   * What the stated last hole leaves of a choice: no shared hole beyond it carries two, and if it
   * is a shared hole itself it does. Where that cannot be, all is left and the check of the last
   * cross reports it.
   */
  private List<CrossItems.Item> upToLast(List<CrossItems.Item> found, int crosses) {
    Optional<HoleId> last =
        layout.crossesLast().map(l -> l.of(side)).filter(h -> h.side() == side && ring.has(h));
    if (last.isEmpty()) {
      return found;
    }
    List<CrossItems.Item> kept = new ArrayList<>();
    for (CrossItems.Item item : found) {
      boolean isLast = item.hole().equals(last.get());
      if (item.must() || ring.place(item.hole()) <= ring.place(last.get())) {
        kept.add(new CrossItems.Item(item.hole(), item.must() || isLast));
      }
    }
    return kept.size() < crosses ? found : kept;
  }

  private Finding tooFew(int free, int shared) {
    String blocked =
        passedBy.isEmpty()
            ? ""
            : " (%s blocked)"
                .formatted(Words.some(passedBy) + (passedBy.size() == 1 ? " is" : " are"));
    return Finding.of(FindingCode.CROSSES_NO_HOLE)
        .message(
            "The %s crosses find only %s free and %s shared holes on the %s side%s."
                .formatted(layout.crossesCount(), free, shared, Words.of(side), blocked))
        .at("/crosses/count", layout.places())
        .about(passedBy)
        .fact("crosses", layout.crossesCount())
        .fact("free", free)
        .fact("shared", shared)
        .fact("blocked", passedBy.size())
        .fix(
            passedBy.isEmpty()
                ? "Check the counts of holes and crosses, mains.skip, crosses.skip and crosses.first, and name shared holes under holes.shared."
                : "Have a detour worked out that leaves the blocked holes out, or name a shared hole under holes.shared.")
        .build();
  }

  /** Checks the stated last hole against the hole that the last cross takes. */
  static Optional<Finding> last(StatedRules rules, Side side, HoleId taken) {
    Layout layout = rules.layout();
    Optional<EachSide<HoleId>> stated = layout.crossesLast();
    if (stated.isEmpty() || stated.get().of(side).equals(taken)) {
      return Optional.empty();
    }
    if (stated.get().of(side).side() != side || !rules.ring().has(stated.get().of(side))) {
      return Optional.empty(); // a rule on layouts reports it
    }
    return Optional.of(
        Finding.of(FindingCode.CROSSES_LAST)
            .message(
                "The last cross takes hole %s, not the stated %s."
                    .formatted(taken, stated.get().of(side)))
            .at(LayoutPointers.side(layout, "/crosses/last", stated.get(), side), layout.places())
            .about(SpanId.cross(Math.max(1, layout.crossesCount())), taken, stated.get().of(side))
            .fix("Check crosses.count, crosses.skip and crosses.first, or leave crosses.last out.")
            .build());
  }
}
