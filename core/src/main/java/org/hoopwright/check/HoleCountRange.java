package org.hoopwright.check;

import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Limits;
import org.hoopwright.geometry.Side;

/** A count of holes that no frame has. */
final class HoleCountRange extends Rule {

  HoleCountRange() {
    super(FindingCode.NUMBER_RANGE, Stage.LAYOUT);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    for (End end : End.values()) {
      for (Side side : Side.values()) {
        count(facts, end, side, out);
      }
    }
  }

  private void count(Facts facts, End end, Side side, Consumer<Finding> out) {
    EachSide<Integer> counts =
        end == End.HEAD ? facts.layout().headHoles() : facts.layout().throatHoles();
    int count = counts.of(side);
    if (Limits.isHoleCount(count)) {
      return;
    }
    String both = "/holes/" + end.word();
    String own = both + "/" + Say.of(side);
    boolean alike = counts.same() && !facts.layout().places().knows(own);
    if (alike && side == Side.RIGHT) {
      return; // said with the left side
    }
    String pointer = alike ? both : own;
    if (!facts.knows(pointer)) {
      return; // some count stands in for the lost one
    }
    out.accept(
        finding()
            .message(
                "The number of holes at the %s%s (%s) is not from 1 to %s."
                    .formatted(
                        end.word(),
                        alike ? "" : " on the " + Say.of(side),
                        count,
                        HoleId.MAX_NUMBER))
            .at(pointer, facts.layout().places())
            .fact("holes", count)
            .fix("Count the holes of each side from the long axis outwards.")
            .build());
  }
}
