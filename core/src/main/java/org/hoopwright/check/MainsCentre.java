package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.bed.Span;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.geometry.Side;

/** The two middle mains too near together or too far apart. */
final class MainsCentre extends Rule {

  MainsCentre() {
    super(FindingCode.MAINS_CENTRE, Stage.BED);
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.HOLE_OFF_HOOP, FindingCode.OFFSETS_DIFFER);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    Span left = facts.bed().mains(Side.LEFT).get(0);
    Span right = facts.bed().mains(Side.RIGHT).get(0);
    double middle = Spacing.xAtMiddle(right) - Spacing.xAtMiddle(left);
    double next =
        (Spacing.xAtMiddle(facts.bed().mains(Side.RIGHT).get(1))
                - Spacing.xAtMiddle(right)
                + Spacing.xAtMiddle(left)
                - Spacing.xAtMiddle(facts.bed().mains(Side.LEFT).get(1)))
            / 2;
    double ratio = Threshold.GAP_RATIO.value();
    if (middle > ratio * next || middle < next / ratio) {
      out.accept(
          finding()
              .message(
                  "The middle mains L1 and R1 are %s mm apart, and the next ones %s mm from them."
                      .formatted(Say.mm(middle), Say.mm(next)))
              .at(Where.main(facts, right), facts.layout().places())
              .about(left.id(), right.id())
              .fact("apart", middle, "mm")
              .fact("beside", next, "mm")
              .fix(
                  "Check the first holes of both ends; offsets are measured from the axis, not from string to string.")
              .build());
    }
  }
}
