package org.hoopwright.check;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;

/** A wide bore on a hole that takes one pass and no knot. */
final class BoreIdle extends Rule {

  BoreIdle() {
    super(FindingCode.BORE_IDLE, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/holes/head", "/holes/throat", "/holes/shared", "/holes/tieOff");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    for (Map.Entry<HoleRef, Integer> bore : facts.layout().bore().entrySet()) {
      List<HoleId> idle =
          bore.getKey().holes().stream()
              .filter(facts.ring()::has)
              .filter(h -> bore.getValue() > 1)
              .filter(h -> !facts.ring().isShared(h) && !facts.ring().isTieOff(h))
              .toList();
      if (!idle.isEmpty()) {
        out.accept(
            finding()
                .message(
                    "%s a bore of %s, but one string at most goes there: %s neither shared nor for a tie-off."
                        .formatted(
                            Say.holes(idle) + (idle.size() == 1 ? " has" : " have"),
                            bore.getValue(),
                            idle.size() == 1 ? "it is" : "they are"))
                .at("/holes/bore/" + bore.getKey(), facts.layout().places())
                .about(idle)
                .fact("bore", bore.getValue())
                .fix("Name the hole under holes.shared or holes.tieOff too, or leave the bore out.")
                .build());
      }
    }
  }
}
