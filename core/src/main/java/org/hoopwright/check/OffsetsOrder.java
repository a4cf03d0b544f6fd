package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Limits;

/** Measured offsets that do not grow. */
final class OffsetsOrder extends Rule {

  private final Strings strings;

  OffsetsOrder(Strings strings) {
    super(FindingCode.OFFSETS_ORDER, Stage.LAYOUT);
    this.strings = strings;
  }

  @Override
  List<String> needs() {
    return List.of("/units", strings.pointer() + "/offsets");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    for (Strings.Offsets list : strings.offsets(facts.layout())) {
      for (int i = 1; i < list.values().size(); i++) {
        double before = list.values().get(i - 1);
        double offset = list.values().get(i);
        // One that is out of its range is said already.
        if (offset <= before && Limits.isLength(facts.layout().mm(offset))) {
          out.accept(
              finding()
                  .message(
                      "The offset of %s %s (%s) is not greater than that of %s %s (%s)."
                          .formatted(strings.one(), i + 1, offset, strings.one(), i, before))
                  .at(list.pointer() + "/" + i, facts.layout().places())
                  .fact("offset", facts.layout().mm(offset), "mm")
                  .fact("before", facts.layout().mm(before), "mm")
                  .fix(
                      strings == Strings.MAINS
                          ? "List the distances from the long axis outwards."
                          : "List the distances from the head down.")
                  .build());
        }
      }
    }
  }
}
