package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.bed.Span;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.geometry.Side;

/** A main that leans out of the fan of its neighbours. */
final class MainsSkewed extends Rule {

  MainsSkewed() {
    super(FindingCode.MAINS_SKEWED, Stage.BED);
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.HOLE_OFF_HOOP, FindingCode.OFFSETS_DIFFER);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    double most = Threshold.MAINS_SKEW.value();
    for (Side side : Side.values()) {
      List<Span> mains = facts.bed().mains(side);
      for (int i = 1; i + 1 < mains.size(); i++) {
        double off = lean(mains.get(i)) - (lean(mains.get(i - 1)) + lean(mains.get(i + 1))) / 2;
        if (Math.abs(off) > most) {
          Span main = mains.get(i);
          out.accept(
              finding()
                  .message(
                      "Main %s, from %s to %s, leans %s mm out of line with its neighbours."
                          .formatted(main.id(), main.from(), main.to(), Say.mm(Math.abs(off))))
                  .at(Where.main(facts, main), facts.layout().places())
                  .about(main.id(), main.from(), main.to())
                  .fact("off", Math.abs(off), "mm")
                  .fix("Check mains.skip at both ends, and what was measured.")
                  .build());
        }
      }
    }
  }

  /** By how much a main's ends differ in their distance from the axis. */
  private static double lean(Span main) {
    return Math.abs(main.fromPoint().x()) - Math.abs(main.toPoint().x());
  }
}
