package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;

/** A number of mains that the game does not know. */
final class MainsUnusual extends Rule {

  MainsUnusual() {
    super(FindingCode.MAINS_UNUSUAL, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/mains/count", "/game");
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.MAINS_ODD, FindingCode.MAINS_TOO_FEW);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    Usual.of(facts.layout().game())
        .map(Usual::mains)
        .filter(r -> !r.holds(facts.layout().mainsCount()))
        .ifPresent(
            r ->
                out.accept(
                    finding()
                        .message(
                            "%s mains are unusual: in %s there are from %s to %s."
                                .formatted(
                                    facts.layout().mainsCount(),
                                    facts.layout().game().word(),
                                    Say.number(r.least()),
                                    Say.number(r.most())))
                        .at("/mains/count", facts.layout().places())
                        .fact("mains", facts.layout().mainsCount())
                        .fix("Check the count: it is of both sides together.")
                        .build()));
  }
}
