package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.LayoutPointers;
import org.hoopwright.geometry.Side;

/** A head zone that ends at a hole counted from the throat. */
final class HeadZoneHole extends Rule {

  HeadZoneHole() {
    super(FindingCode.HEAD_ZONE_HOLE, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/headZone");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    if (facts.layout().headZone().isEmpty()) {
      return;
    }
    EachSide<HoleId> zone = facts.layout().headZone().get();
    for (Side side : Side.values()) {
      HoleId hole = zone.of(side);
      String pointer = LayoutPointers.side(facts.layout(), "/headZone", zone, side);
      boolean forBoth = pointer.equals("/headZone");
      if (hole.end() == End.HEAD || (forBoth && side == Side.RIGHT)) {
        continue; // one name for both sides is said with the left one
      }
      List<HoleId> holes = forBoth ? List.of(zone.left(), zone.right()) : List.of(hole);
      out.accept(
          finding()
              .message(
                  "The head zone cannot end at %s, which %s counted from the throat."
                      .formatted(
                          forBoth ? "holes " + Say.and(holes) : "hole " + hole,
                          forBoth ? "are" : "is"))
              .at(pointer, facts.layout().places())
              .about(holes)
              .fix("Name the last hole of the head zone by its count from the head, such as 10H.")
              .build());
    }
  }
}
