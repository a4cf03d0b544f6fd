package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;

/** A tie-off hole that no string runs through, so that there is nothing to tie a knot round. */
final class TieOffNoAnchor extends Rule {

  TieOffNoAnchor() {
    super(FindingCode.TIE_OFF_NO_ANCHOR, Stage.BED);
  }

  @Override
  List<String> needs() {
    return List.of("/holes/tieOff");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    TieOffFull.perEntry(facts, hole -> facts.bed().spansAt(hole).isEmpty())
        .forEach(
            (pointer, holes) ->
                out.accept(
                    finding()
                        .message(
                            "No string runs through tie-off %s %s, so no knot can be tied there."
                                .formatted(holes.size() == 1 ? "hole" : "holes", Say.and(holes)))
                        .at(pointer, facts.layout().places())
                        .about(holes)
                        .fix(
                            "Check which hole is meant: a knot is tied round the string that runs through its hole.")
                        .build()));
  }
}
