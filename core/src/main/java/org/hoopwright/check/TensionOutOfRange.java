package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.units.Force;
import org.hoopwright.units.ForceUnit;

/** A least or most tension that is no pull. */
final class TensionOutOfRange extends Rule {

  TensionOutOfRange() {
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
        .ifPresent(
            t -> {
              bound(facts, "min", t.min(), t.unit(), out);
              bound(facts, "max", t.max(), t.unit(), out);
            });
  }

  private void bound(
      Facts facts, String name, double stated, ForceUnit unit, Consumer<Finding> out) {
    if (!isPull(stated, unit)) {
      out.accept(
          finding()
              .message(
                  "The tension's %s (%s %s) is not above 0 and at most 10000 N."
                      .formatted(name, stated, unit.symbol()))
              .at("/tension/" + name, facts.layout().places())
              .fact(name, stated, unit.symbol())
              .fix("Check the number and the unit.")
              .build());
    }
  }

  /** Whether so much can be pulled at all. */
  static boolean isPull(double stated, ForceUnit unit) {
    double newtons = stated * unit.newtons();
    return newtons > 0 && newtons <= Force.MAX_NEWTONS;
  }
}
