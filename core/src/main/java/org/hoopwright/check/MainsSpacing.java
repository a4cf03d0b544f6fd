package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.bed.Span;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.geometry.Side;

/** Neighbouring mains that are much nearer or farther apart than those beside them. */
final class MainsSpacing extends Rule {

  MainsSpacing() {
    super(FindingCode.MAINS_SPACING, Stage.BED);
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.HOLE_OFF_HOOP, FindingCode.OFFSETS_DIFFER);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    for (Side side : Side.values()) {
      List<Span> mains = facts.bed().mains(side);
      List<Double> gaps = Spacing.gaps(mains, s -> Math.abs(Spacing.xAtMiddle(s)));
      for (int i : Spacing.odd(gaps, Threshold.GAP_RATIO.value())) {
        Span a = mains.get(i);
        Span b = mains.get(i + 1);
        out.accept(
            finding()
                .message(
                    "Mains %s and %s are %s mm apart, far from the %s mm of the mains beside them."
                        .formatted(
                            a.id(), b.id(), Say.mm(gaps.get(i)), Say.mm(Spacing.beside(gaps, i))))
                .at(Where.main(facts, b), facts.layout().places())
                .about(a.id(), b.id())
                .fact("apart", gaps.get(i), "mm")
                .fact("beside", Spacing.beside(gaps, i), "mm")
                .fix("Check mains.skip and what was measured.")
                .build());
      }
    }
  }
}
