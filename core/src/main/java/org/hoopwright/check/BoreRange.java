package org.hoopwright.check;

import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Limits;

/** A bore that no hole has. */
final class BoreRange extends Rule {

  BoreRange() {
    super(FindingCode.NUMBER_RANGE, Stage.LAYOUT);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    facts
        .layout()
        .bore()
        .forEach(
            (ref, bore) -> {
              if (bore < 1 || bore > Limits.MAX_BORE) {
                out.accept(
                    finding()
                        .message(
                            "The bore of %s (%s) is not from 1 to %s."
                                .formatted(ref, bore, Limits.MAX_BORE))
                        .at("/holes/bore/" + ref, facts.layout().places())
                        .about(ref.holes())
                        .fact("bore", bore)
                        .fix(
                            "State how many strings the hole takes; name a hole that takes none under holes.blocked.")
                        .build());
              }
            });
  }
}
