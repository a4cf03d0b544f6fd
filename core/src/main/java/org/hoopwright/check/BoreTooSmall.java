package org.hoopwright.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.LayoutPointers;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Side;

/** A shared hole, or one for a tie-off, that takes one string only. */
final class BoreTooSmall extends Rule {

  BoreTooSmall() {
    super(FindingCode.BORE_TOO_SMALL, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of(
        "/holes/head",
        "/holes/throat",
        "/holes/tieOff",
        "/holes/shared",
        "/holes/blocked",
        "/holes/bore");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    Ring ring = facts.ring();
    Map<String, List<HoleId>> tooSmall = new LinkedHashMap<>();
    for (Side side : Side.values()) {
      for (HoleId hole : ring.list(side)) {
        // A bore below 1 is out of its range, which is said already.
        if ((ring.isShared(hole) || ring.isTieOff(hole)) && ring.bore(hole) == 1) {
          tooSmall
              .computeIfAbsent(
                  LayoutPointers.member("/holes/bore", facts.layout().bore().keySet(), hole),
                  p -> new ArrayList<>())
              .add(hole);
        }
      }
    }
    tooSmall.forEach(
        (pointer, holes) -> {
          boolean shared = holes.stream().anyMatch(ring::isShared);
          out.accept(
              finding()
                  .message(
                      "%s %s %s, which needs a bore of 2, not 1."
                          .formatted(
                              Say.holes(holes),
                              holes.size() == 1 ? "is" : "are",
                              shared ? "shared" : "for a tie-off"))
                  .at(pointer, facts.layout().places())
                  .about(holes)
                  .fact("needed", 2)
                  .fact("bore", 1)
                  .fix(
                      "State a bore of 2 or more, or take the hole out of holes.%s."
                          .formatted(shared ? "shared" : "tieOff"))
                  .build());
        });
  }
}
