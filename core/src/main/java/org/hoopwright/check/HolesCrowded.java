package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;

/** Neighbouring holes that lie so near that no frame could be drilled so. */
final class HolesCrowded extends Rule {

  HolesCrowded() {
    super(FindingCode.HOLES_CROWDED, Stage.BED);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    double least = Threshold.HOLES_APART.value();
    for (Side side : Side.values()) {
      List<HoleId> list = facts.ring().list(side);
      for (int i = 1; i < list.size(); i++) {
        HoleId a = list.get(i - 1);
        HoleId b = list.get(i);
        double apart = facts.bed().position(a).distanceTo(facts.bed().position(b));
        if (apart < least) {
          out.accept(
              finding()
                  .message(
                      "Holes %s and %s lie %s mm apart, less than %s mm."
                          .formatted(a, b, Say.mm(apart), Say.mm(least)))
                  .at(Where.position(facts, b), facts.layout().places())
                  .about(a, b)
                  .fact("apart", apart, "mm")
                  .fact("least", least, "mm")
                  .fix("Check what was measured for the two holes, and the counts of holes.")
                  .build());
        }
      }
    }
  }
}
