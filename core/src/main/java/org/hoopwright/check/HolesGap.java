package org.hoopwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;

/** Neighbouring holes that lie much farther apart than others of their side. */
final class HolesGap extends Rule {

  HolesGap() {
    super(FindingCode.HOLES_GAP, Stage.BED);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    for (Side side : Side.values()) {
      List<HoleId> list = facts.ring().list(side);
      List<Double> gaps = new ArrayList<>();
      for (int i = 1; i < list.size(); i++) {
        gaps.add(
            facts.bed().position(list.get(i - 1)).distanceTo(facts.bed().position(list.get(i))));
      }
      double most = Threshold.HOLES_GAP.value() * Spacing.median(gaps);
      for (int i = 0; i < gaps.size(); i++) {
        if (gaps.get(i) > most) {
          out.accept(
              finding()
                  .message(
                      "Between holes %s and %s lie %s mm, more than three times what is usual on that side."
                          .formatted(list.get(i), list.get(i + 1), Say.mm(gaps.get(i))))
                  .at(Where.position(facts, list.get(i + 1)), facts.layout().places())
                  .about(list.get(i), list.get(i + 1))
                  .fact("apart", gaps.get(i), "mm")
                  .fact("most", most, "mm")
                  .fix("Check whether a hole was not counted, and what was measured.")
                  .build());
        }
      }
    }
  }
}
