package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.PatchStep;

/** A least tension above the most. */
final class TensionReversed extends Rule {

  TensionReversed() {
    super(FindingCode.TENSION_RANGE, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/tension");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    facts
        .layout()
        .tension()
        .filter(t -> t.min() > t.max())
        // One that is no pull at all is said already.
        .filter(t -> TensionOutOfRange.isPull(t.min(), t.unit()))
        .filter(t -> TensionOutOfRange.isPull(t.max(), t.unit()))
        .ifPresent(
            t ->
                out.accept(
                    finding()
                        .message(
                            "The least tension (%s %s) is above the most (%s %s)."
                                .formatted(t.min(), t.unit().symbol(), t.max(), t.unit().symbol()))
                        .at("/tension", facts.layout().places())
                        .fix("Exchange the two, or correct them.")
                        .patch(PatchStep.replace("/tension/min", Say.exact(t.max())))
                        .patch(PatchStep.replace("/tension/max", Say.exact(t.min())))
                        .fact("min", t.min(), t.unit().symbol())
                        .fact("max", t.max(), t.unit().symbol())
                        .build()));
  }
}
