package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;

/** A number of pieces that is neither 1 nor 2. */
final class PiecesNumber extends Rule {

  PiecesNumber() {
    super(FindingCode.WRONG_VALUE, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/pieces");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    facts
        .layout()
        .pieces()
        .ifPresent(
            n -> {
              if (n != 1 && n != 2) {
                out.accept(
                    finding()
                        .message("The number of pieces (%s) is neither 1 nor 2.".formatted(n))
                        .at("/pieces", facts.layout().places())
                        .fact("pieces", n)
                        .fix("State 1 or 2, or \"either\".")
                        .build());
              }
            });
  }
}
