package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Limits;

/** A coordinate far from any frame. */
final class CoordinateRange extends Rule {

  CoordinateRange() {
    super(FindingCode.NUMBER_RANGE, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/units");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    facts
        .layout()
        .at()
        .forEach(
            (ref, p) -> {
              coordinate(facts, ref, 0, p.x(), out);
              coordinate(facts, ref, 1, p.y(), out);
            });
  }

  private void coordinate(
      Facts facts, HoleRef ref, int index, double stated, Consumer<Finding> out) {
    double mm = facts.layout().mm(stated);
    if (!Limits.isCoordinate(mm)) {
      String name = index == 0 ? "x" : "y";
      out.accept(
          finding()
              .message("The %s of %s is more than 10 m from the origin.".formatted(name, ref))
              .at("/holes/at/" + ref + "/" + index, facts.layout().places())
              .about(ref.holes())
              .fact(name, mm, "mm")
              .fix("Check the number and the unit.")
              .build());
    }
  }
}
