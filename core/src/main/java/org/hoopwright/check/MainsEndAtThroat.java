package org.hoopwright.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.Layout;

/** One piece from the head down is asked for where the mains end at the throat. */
final class MainsEndAtThroat extends Rule {

  MainsEndAtThroat() {
    super(FindingCode.MAINS_END_THROAT, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of(
        "/mains/count", "/mains/start", "/pieces", "/crosses/direction", "/aroundTheWorld");
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.MAINS_ODD, FindingCode.MAINS_TOO_FEW);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    Layout layout = facts.layout();
    boolean even = layout.mainsPerSide() % 2 == 0;
    Optional<End> end = layout.mainsStart().map(s -> even ? s : s.other());
    if (end.filter(e -> e == End.THROAT).isPresent()
        && layout.pieces().equals(OptionalInt.of(1))
        && layout.direction().filter(d -> d == Direction.HEAD_TO_THROAT).isPresent()) {
      out.accept(
          finding()
              .message(
                  "With %s mains started at the %s the mains end at the throat; one piece then reaches the head only round the frame."
                      .formatted(layout.mainsCount(), layout.mainsStart().orElseThrow().word()))
              .at("/mains/start", layout.places())
              .fact("mains", layout.mainsCount())
              .fix(
                  layout.aroundTheWorld()
                      ? "Two pieces, or crosses from the throat up, are the simpler ways."
                      : "That is forbidden here too (aroundTheWorld is false): ask for two pieces, or another direction.")
              .build());
    }
  }
}
