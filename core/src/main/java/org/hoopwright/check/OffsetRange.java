package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Limits;

/** A measured offset that is no distance. */
final class OffsetRange extends Rule {

  private final Strings strings;

  OffsetRange(Strings strings) {
    super(FindingCode.NUMBER_RANGE, Stage.LAYOUT);
    this.strings = strings;
  }

  @Override
  List<String> needs() {
    return List.of("/units", strings.pointer() + "/offsets");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    for (Strings.Offsets list : strings.offsets(facts.layout())) {
      for (int i = 0; i < list.values().size(); i++) {
        double mm = facts.layout().mm(list.values().get(i));
        if (!Limits.isLength(mm)) {
          out.accept(
              finding()
                  .message(
                      "The offset of %s %s (%s) is not above 0 and at most 10 m."
                          .formatted(strings.one(), i + 1, list.values().get(i)))
                  .at(list.pointer() + "/" + i, facts.layout().places())
                  .fact("offset", mm, "mm")
                  .fix("Check the number and the unit.")
                  .build());
        }
      }
    }
  }
}
