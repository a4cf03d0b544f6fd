package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.bed.Span;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;

/** Neighbouring crosses that are much nearer or farther apart than those beside them. */
final class CrossesSpacing extends Rule {

  CrossesSpacing() {
    super(FindingCode.CROSSES_SPACING, Stage.BED);
  }

  @Override
  List<FindingCode> after() {
    return List.of(
        FindingCode.HOLE_OFF_HOOP, FindingCode.OFFSETS_DIFFER, FindingCode.CROSSES_SKEWED);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    List<Span> crosses = facts.bed().crosses();
    List<Double> gaps = Spacing.gaps(crosses, s -> -Spacing.yAtMiddle(s));
    for (int i : Spacing.odd(gaps, Threshold.GAP_RATIO.value())) {
      Span a = crosses.get(i);
      Span b = crosses.get(i + 1);
      out.accept(
          finding()
              .message(
                  "Crosses %s and %s are %s mm apart, far from the %s mm of the crosses beside them."
                      .formatted(
                          a.id(), b.id(), Say.mm(gaps.get(i)), Say.mm(Spacing.beside(gaps, i))))
              .at(Where.cross(facts, b), facts.layout().places())
              .about(a.id(), b.id())
              .fact("apart", gaps.get(i), "mm")
              .fact("beside", Spacing.beside(gaps, i), "mm")
              .fix("Check mains.skip, crosses.skip and what was measured.")
              .build());
    }
  }
}
