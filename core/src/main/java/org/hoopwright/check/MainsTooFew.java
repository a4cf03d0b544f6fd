package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Limits;

/** Fewer mains than the least frame has. */
final class MainsTooFew extends Rule {

  MainsTooFew() {
    super(FindingCode.MAINS_TOO_FEW, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/mains/count");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    int mains = facts.layout().mainsCount();
    if (mains < Limits.MIN_MAINS) {
      out.accept(
          finding()
              .message(
                  "The number of mains (%s) is below %s, the fewest."
                      .formatted(mains, Limits.MIN_MAINS))
              .at("/mains/count", facts.layout().places())
              .fact("mains", mains)
              .fix("State all mains, those of both sides together.")
              .build());
    }
  }
}
