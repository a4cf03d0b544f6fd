package org.hoopwright.frame;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.PatchStep;
import org.hoopwright.geometry.Side;

/** Checks that every hole that a layout names exists, and is named once in a list. */
final class HoleListCheck {

  private final Layout layout;
  private final Ring ring;
  private final List<Finding> findings = new ArrayList<>();

  private HoleListCheck(Layout layout) {
    this.layout = layout;
    this.ring = Ring.of(layout);
  }

  static List<Finding> findings(Layout layout) {
    HoleListCheck check = new HoleListCheck(layout);
    check.run();
    return check.findings;
  }

  private void run() {
    list("/holes/tieOff", layout.tieOff());
    list("/holes/shared", layout.shared());
    list("/holes/blocked", layout.blocked());
    table("/holes/bore", layout.bore());
    table("/holes/at", layout.at());
    for (int i = 0; i < layout.noRun().size(); i++) {
      NoRun no = layout.noRun().get(i);
      known("/holes/noRun/" + i + "/0", no.from());
      known("/holes/noRun/" + i + "/1", no.to());
    }
    layout.mainsSkip().ifPresent(skip -> list("/mains/skip", skip));
    list("/crosses/skip", layout.crossesSkip());
    layout.crossesFirst().ifPresent(p -> pair("/crosses/first", p, FindingCode.CROSSES_FIRST));
    layout.crossesLast().ifPresent(p -> pair("/crosses/last", p, FindingCode.CROSSES_LAST));
    layout.headZone().ifPresent(p -> pair("/headZone", p, FindingCode.HEAD_ZONE_HOLE));
    layout.headZone().ifPresent(this::headZone);
  }

  private void list(String pointer, List<HoleRef> refs) {
    Set<HoleId> seen = new HashSet<>();
    for (int i = 0; i < refs.size(); i++) {
      known(pointer + "/" + i, refs.get(i));
      twice(pointer + "/" + i, refs.get(i), seen, "once is enough");
    }
  }

  private void table(String pointer, Map<HoleRef, ?> entries) {
    Set<HoleId> seen = new HashSet<>();
    for (HoleRef ref : entries.keySet()) {
      known(pointer + "/" + ref, ref);
      twice(pointer + "/" + ref, ref, seen, "the last value counts");
    }
  }

  private void known(String pointer, HoleRef ref) {
    List<HoleId> missing = ref.holes().stream().filter(h -> !ring.has(h)).toList();
    if (!missing.isEmpty()) {
      findings.add(unknown(pointer, missing));
    }
  }

  private Finding unknown(String pointer, List<HoleId> missing) {
    HoleId one = missing.get(0);
    int count = (one.end() == End.HEAD ? layout.headHoles() : layout.throatHoles()).of(one.side());
    return Finding.of(FindingCode.UNKNOWN_HOLE)
        .message(
            "%s %s not exist: %s %s counted at the %s."
                .formatted(
                    Texts.holes(missing),
                    missing.size() == 1 ? "does" : "do",
                    count,
                    count == 1 ? "is" : "are",
                    one.end().word()))
        .at(pointer, layout.places())
        .about(missing)
        .fix("Check the name and the counts under holes.head and holes.throat.")
        .build();
  }

  private void twice(String pointer, HoleRef ref, Set<HoleId> seen, String what) {
    List<HoleId> again = ref.holes().stream().filter(h -> !seen.add(h)).toList();
    if (!again.isEmpty()) {
      findings.add(
          Finding.of(FindingCode.HOLE_TWICE)
              .message(
                  "%s %s already named before in the same list; %s."
                      .formatted(Texts.holes(again), again.size() == 1 ? "is" : "are", what))
              .at(pointer, layout.places())
              .about(again)
              .fix("Leave one of the names out.")
              .patch(
                  again.size() == ref.holes().size()
                      ? List.of(PatchStep.remove(pointer))
                      : List.of())
              .build());
    }
  }

  /** A hole for each side: each must exist and be on its own side. */
  private void pair(String pointer, EachSide<HoleId> pair, FindingCode wrongSide) {
    boolean alike = pair.left().equals(pair.right().mirrored());
    List<HoleId> missing =
        List.of(pair.left(), pair.right()).stream().filter(h -> !ring.has(h)).toList();
    if (alike && missing.size() == 2) {
      findings.add(unknown(LayoutPointers.side(layout, pointer, pair, Side.LEFT), missing));
    }
    for (Side side : Side.values()) {
      HoleId hole = pair.of(side);
      String own = LayoutPointers.side(layout, pointer, pair, side);
      if (!ring.has(hole) && !(alike && missing.size() == 2)) {
        findings.add(unknown(own, List.of(hole)));
      }
      if (hole.side() != side) {
        findings.add(
            Finding.of(wrongSide)
                .message(
                    "Hole %s stands where a hole of the %s side must."
                        .formatted(hole, Texts.of(side)))
                .at(own, layout.places())
                .about(hole)
                .fix("Name the left hole first and then the right one, or one name for both.")
                .build());
      }
    }
  }

  private void headZone(EachSide<HoleId> zone) {
    for (Side side : Side.values()) {
      HoleId hole = zone.of(side);
      if (hole.end() != End.HEAD) {
        String pointer = LayoutPointers.side(layout, "/headZone", zone, side);
        if (side == Side.RIGHT && pointer.equals("/headZone")) {
          continue; // said with the left side
        }
        List<HoleId> both =
            pointer.equals("/headZone") ? List.of(zone.left(), zone.right()) : List.of(hole);
        findings.add(
            Finding.of(FindingCode.HEAD_ZONE_HOLE)
                .message(
                    "The head zone cannot end at %s, which %s counted from the throat."
                        .formatted(
                            both.size() == 1 ? "hole " + hole : "holes " + Texts.and(both),
                            both.size() == 1 ? "is" : "are"))
                .at(pointer, layout.places())
                .about(both)
                .fix("Name the last hole of the head zone by its count from the head, such as 10H.")
                .build());
      }
    }
  }
}
