package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;

/** An odd number of mains. */
final class MainsOdd extends Rule {

  MainsOdd() {
    super(FindingCode.MAINS_ODD, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/mains/count");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    int mains = facts.layout().mainsCount();
    if (mains % 2 != 0) {
      out.accept(
          finding()
              .message("The number of mains (%s) is odd, which is not supported.".formatted(mains))
              .at("/mains/count", facts.layout().places())
              .fact("mains", mains)
              .fix("Check the count; frames with a main on the long axis cannot be planned.")
              .build());
    }
  }
}
