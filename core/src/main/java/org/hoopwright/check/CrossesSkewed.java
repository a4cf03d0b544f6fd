package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.bed.Span;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;

/** A cross that lies askew. */
final class CrossesSkewed extends Rule {

  CrossesSkewed() {
    super(FindingCode.CROSSES_SKEWED, Stage.BED);
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.HOLE_OFF_HOOP, FindingCode.OFFSETS_DIFFER);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    for (Span cross : facts.bed().crosses()) {
      double skew = Math.abs(cross.fromPoint().y() - cross.toPoint().y());
      if (skew > Threshold.CROSS_SKEW.value()) {
        out.accept(
            finding()
                .message(
                    "Cross %s, from %s to %s, is %s mm higher at one end than at the other."
                        .formatted(cross.id(), cross.from(), cross.to(), Say.mm(skew)))
                .at(Where.cross(facts, cross), facts.layout().places())
                .about(cross.id(), cross.from(), cross.to())
                .fact("skew", skew, "mm")
                .fix(
                    "Check the counts of both sides, mains.skip and crosses.skip, and what was measured.")
                .build());
      }
    }
  }
}
