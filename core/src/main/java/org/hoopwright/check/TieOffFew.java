package org.hoopwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;

/** Fewer places for knots than a job in two pieces takes. */
final class TieOffFew extends Rule {

  TieOffFew() {
    super(FindingCode.TIE_OFF_FEW, Stage.BED);
  }

  @Override
  List<String> needs() {
    return List.of("/holes/tieOff", "/holes/bore");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    List<HoleId> places = new ArrayList<>();
    for (Side side : Side.values()) {
      facts.ring().list(side).stream().filter(facts.bed()::knotPlace).forEach(places::add);
    }
    if (places.size() < Threshold.KNOT_PLACES.value()) {
      out.accept(
          finding()
              .message(
                  "There %s for a knot; two pieces take 4 and one piece 2."
                      .formatted(
                          places.isEmpty()
                              ? "is no place"
                              : places.size() == 1
                                  ? "is 1 place"
                                  : "are " + places.size() + " places"))
              .at("/holes/tieOff", facts.layout().places())
              .about(places)
              .fact("places", places.size())
              .fix("Name every hole that takes a knot beside its string under holes.tieOff.")
              .build());
    }
  }
}
