package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;

/** Another number of measured offsets than there are strings. */
final class OffsetsCount extends Rule {

  private final Strings strings;

  OffsetsCount(Strings strings) {
    super(FindingCode.OFFSETS_COUNT, Stage.LAYOUT);
    this.strings = strings;
  }

  @Override
  List<String> needs() {
    return List.of(strings.pointer() + "/count", strings.pointer() + "/offsets");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    for (Strings.Offsets list : strings.offsets(facts.layout())) {
      int offsets = list.values().size();
      if (offsets != list.count()) {
        out.accept(
            finding()
                .message(
                    strings == Strings.MAINS
                        ? "There are %s offsets for the %s mains of a side."
                            .formatted(offsets, list.count())
                        : "There are %s offsets for %s crosses.".formatted(offsets, list.count()))
                .at(list.pointer(), facts.layout().places())
                .fact("offsets", offsets)
                .fact(strings.member(), list.count())
                .fix("Give one offset for each, in order.")
                .build());
      }
    }
  }
}
