package org.hoopwright.check;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.TensionRange;

/** A range of tension that the game does not know. */
final class TensionUnusual extends Rule {

  TensionUnusual() {
    super(FindingCode.TENSION_UNUSUAL, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/tension", "/game");
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.TENSION_RANGE);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    Optional<Usual> usual = Usual.of(facts.layout().game());
    if (usual.isEmpty() || facts.layout().tension().isEmpty()) {
      return;
    }
    TensionRange range = facts.layout().tension().get();
    Usual.Range newtons = usual.get().tension();
    bound(facts, "min", range.least().newtons(), newtons, out);
    bound(facts, "max", range.most().newtons(), newtons, out);
  }

  private void bound(
      Facts facts, String name, double newtons, Usual.Range range, Consumer<Finding> out) {
    if (!range.holds(newtons)) {
      out.accept(
          finding()
              .message(
                  "The tension's %s is %s N; in %s it is from %s to %s N."
                      .formatted(
                          name,
                          Say.mm(newtons),
                          facts.layout().game().word(),
                          Say.number(range.least()),
                          Say.number(range.most())))
              .at("/tension/" + name, facts.layout().places())
              .fact(name, newtons, "N")
              .fix("Check the number and the unit: pounds read as kilograms break frames.")
              .build());
    }
  }
}
