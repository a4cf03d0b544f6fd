package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Limits;

/** More mains, or more crosses, than a frame can have holes for. */
final class StringsTooMany extends Rule {

  private final Strings strings;

  StringsTooMany(Strings strings) {
    super(FindingCode.NUMBER_RANGE, Stage.LAYOUT);
    this.strings = strings;
  }

  @Override
  List<String> needs() {
    return List.of(strings.pointer() + "/count");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    int count = strings.count(facts.layout());
    if (count > Limits.MAX_STRINGS) {
      out.accept(
          finding()
              .message(
                  "The number of %s (%s) is above %s, the most."
                      .formatted(strings.member(), count, Limits.MAX_STRINGS))
              .at(strings.pointer() + "/count", facts.layout().places())
              .fact(strings.member(), count)
              .fix("Check the count.")
              .build());
    }
  }
}
