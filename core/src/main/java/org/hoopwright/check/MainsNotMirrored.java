package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.bed.Span;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;

/** Mains of one number that are far from mirror images. */
final class MainsNotMirrored extends Rule {

  MainsNotMirrored() {
    super(FindingCode.MAINS_NOT_MIRRORED, Stage.BED);
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.HOLE_OFF_HOOP, FindingCode.OFFSETS_DIFFER, FindingCode.MAINS_SKEWED);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    if (!facts.ring().list(Side.LEFT).stream()
        .map(HoleId::mirrored)
        .toList()
        .equals(facts.ring().list(Side.RIGHT))) {
      return; // drilled unevenly on purpose
    }
    double most = Threshold.MIRROR.value();
    for (int k = 0; k < facts.bed().mainsPerSide(); k++) {
      Span left = facts.bed().mains(Side.LEFT).get(k);
      Span right = facts.bed().mains(Side.RIGHT).get(k);
      double apart = Math.abs(Spacing.xAtMiddle(left) + Spacing.xAtMiddle(right));
      if (apart > most) {
        out.accept(
            finding()
                .message(
                    "Mains %s and %s differ by %s mm in their distance from the axis."
                        .formatted(left.id(), right.id(), Say.mm(apart)))
                .at(Where.main(facts, right), facts.layout().places())
                .about(left.id(), right.id())
                .fact("apart", apart, "mm")
                .fix("Check mains.skip of both sides and what was measured.")
                .build());
      }
    }
  }
}
