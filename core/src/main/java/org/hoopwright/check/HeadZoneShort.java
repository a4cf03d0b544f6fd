package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.bed.Span;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.LayoutPointers;
import org.hoopwright.geometry.Side;

/** A stated head zone that ends before the outermost main. */
final class HeadZoneShort extends Rule {

  HeadZoneShort() {
    super(FindingCode.HEAD_ZONE_SHORT, Stage.BED);
  }

  @Override
  List<String> needs() {
    return List.of("/headZone");
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.HEAD_ZONE_HOLE);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    if (facts.layout().headZone().isEmpty()) {
      return;
    }
    for (Side side : Side.values()) {
      List<Span> mains = facts.bed().mains(side);
      HoleId outermost = mains.get(mains.size() - 1).from();
      HoleId stated = facts.layout().headZone().get().of(side);
      if (facts.ring().has(stated) && facts.ring().place(stated) < facts.ring().place(outermost)) {
        String pointer =
            LayoutPointers.side(facts.layout(), "/headZone", facts.layout().headZone().get(), side);
        if (side == Side.RIGHT && pointer.equals("/headZone")) {
          continue; // said with the left side
        }
        out.accept(
            finding()
                .message(
                    "The head zone ends at %s, before the outermost main's head hole %s."
                        .formatted(stated, outermost))
                .at(pointer, facts.layout().places())
                .about(stated, outermost)
                .fix(
                    "Strings shear most on the bends of the head: let the zone reach the outermost main, or leave headZone out.")
                .build());
      }
    }
  }
}
