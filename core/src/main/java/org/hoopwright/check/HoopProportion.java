package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;

/** A hoop that is wider than long, or more than twice as long as wide. */
final class HoopProportion extends Rule {

  HoopProportion() {
    super(FindingCode.HOOP_PROPORTION, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/units", "/hoop");
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.HOOP_SHAPE);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    if (facts.outline().isEmpty()) {
      return;
    }
    double ratio = facts.outline().get().lengthMm() / facts.outline().get().widthMm();
    if (ratio < 1 || ratio > Threshold.HOOP_RATIO.value()) {
      out.accept(
          finding()
              .message(
                  "The hoop is %s times as long as wide; rackets have from 1 to %s."
                      .formatted(Say.number(ratio), Say.number(Threshold.HOOP_RATIO.value())))
              .at("/hoop", facts.layout().places())
              .fact("ratio", ratio, "")
              .fix(
                  "Check whether length and width were exchanged: the length lies along the handle.")
              .build());
    }
  }
}
