package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Limits;

/** Fewer crosses than the least frame has. */
final class CrossesTooFew extends Rule {

  CrossesTooFew() {
    super(FindingCode.CROSSES_TOO_FEW, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/crosses/count");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    int crosses = facts.layout().crossesCount();
    if (crosses < Limits.MIN_CROSSES) {
      out.accept(
          finding()
              .message(
                  "The number of crosses (%s) is below %s, the fewest."
                      .formatted(crosses, Limits.MIN_CROSSES))
              .at("/crosses/count", facts.layout().places())
              .fact("crosses", crosses)
              .fix("State all crosses.")
              .build());
    }
  }
}
