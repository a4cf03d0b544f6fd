package org.hoopwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;

/** Tie-off holes on one side of the frame only. */
final class TieOffOneSide extends Rule {

  TieOffOneSide() {
    super(FindingCode.TIE_OFF_ONE_SIDE, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/holes/tieOff");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    List<HoleId> left = new ArrayList<>();
    List<HoleId> right = new ArrayList<>();
    facts.layout().tieOff().stream()
        .flatMap(r -> r.holes().stream())
        .forEach(h -> (h.side() == Side.LEFT ? left : right).add(h));
    if (left.isEmpty() != right.isEmpty()) {
      out.accept(
          finding()
              .message(
                  "All tie-off holes are on the %s side; the ends of a string come out on both."
                      .formatted(left.isEmpty() ? "right" : "left"))
              .at("/holes/tieOff", facts.layout().places())
              .about(left)
              .about(right)
              .fix("Name those of the other side too; a name without L or R means both sides.")
              .build());
    }
  }
}
