package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;

/** Measured offsets where it is not stated which holes they use. */
final class OffsetsWithoutSkip extends Rule {

  private final Strings strings;

  OffsetsWithoutSkip(Strings strings) {
    super(FindingCode.OFFSETS_WITHOUT_SKIP, Stage.LAYOUT);
    this.strings = strings;
  }

  @Override
  List<String> needs() {
    return List.of("/mains/skip", strings.pointer() + "/offsets");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    if (facts.layout().mainsSkip().isEmpty() && !strings.offsets(facts.layout()).isEmpty()) {
      out.accept(
          finding()
              .message("Offsets say where strings are, so it must be stated which holes they use.")
              .at(strings.pointer() + "/offsets", facts.layout().places())
              .fix("State mains.skip, or give coordinates of holes under holes.at instead.")
              .build());
    }
  }
}
