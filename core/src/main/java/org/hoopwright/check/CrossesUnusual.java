package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;

/** A number of crosses that the game does not know. */
final class CrossesUnusual extends Rule {

  CrossesUnusual() {
    super(FindingCode.CROSSES_UNUSUAL, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/crosses/count", "/game");
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.CROSSES_TOO_FEW);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    Usual.of(facts.layout().game())
        .map(Usual::crosses)
        .filter(r -> !r.holds(facts.layout().crossesCount()))
        .ifPresent(
            r ->
                out.accept(
                    finding()
                        .message(
                            "%s crosses are unusual: in %s there are from %s to %s."
                                .formatted(
                                    facts.layout().crossesCount(),
                                    facts.layout().game().word(),
                                    Say.number(r.least()),
                                    Say.number(r.most())))
                        .at("/crosses/count", facts.layout().places())
                        .fact("crosses", facts.layout().crossesCount())
                        .fix("Check the count; a pattern is written mains x crosses.")
                        .build()));
  }
}
