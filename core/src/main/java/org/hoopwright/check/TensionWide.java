package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;

/** A range of tension so wide that it says little. */
final class TensionWide extends Rule {

  TensionWide() {
    super(FindingCode.TENSION_WIDE, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/tension");
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.TENSION_RANGE);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    facts
        .layout()
        .tension()
        .filter(t -> t.max() > Threshold.TENSION_RATIO.value() * t.min())
        .ifPresent(
            t ->
                out.accept(
                    finding()
                        .message(
                            "The most tension (%s %s) is more than %s times the least (%s %s)."
                                .formatted(
                                    Say.number(t.max()),
                                    t.unit().symbol(),
                                    Say.number(Threshold.TENSION_RATIO.value()),
                                    Say.number(t.min()),
                                    t.unit().symbol()))
                        .at("/tension", facts.layout().places())
                        .fact("most", t.max(), t.unit().symbol())
                        .fact("least", t.min(), t.unit().symbol())
                        .fact("ratio", t.max() / t.min(), "")
                        .fix("Check both numbers; one may be in another unit.")
                        .build()));
  }
}
