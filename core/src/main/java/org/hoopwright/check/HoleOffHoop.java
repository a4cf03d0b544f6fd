package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleCoordinates;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Foot;
import org.hoopwright.geometry.Outline;

/** Coordinates away from the inside of the hoop. */
final class HoleOffHoop extends Rule {

  HoleOffHoop() {
    super(FindingCode.HOLE_OFF_HOOP, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/units", "/hoop", "/holes/at", "/holes/head", "/holes/throat");
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.HOOP_SHAPE);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    if (facts.outline().isEmpty()) {
      return;
    }
    Outline outline = facts.outline().get();
    HoleCoordinates.of(facts.layout())
        .forEach(
            (hole, stated) -> {
              if (facts.ring().has(hole) && !near(outline, hole, stated)) {
                far(facts, hole, stated, Math.abs(outline.distanceTo(stated.point())), out);
              }
            });
  }

  /** Whether a place of the outline that is easily found is near enough. */
  private static boolean near(Outline outline, HoleId hole, HoleCoordinates stated) {
    return Foot.of(outline, hole.side(), stated.point())
        .filter(f -> f.awayMm() <= Threshold.OFF_HOOP.value())
        .isPresent();
  }

  private void far(
      Facts facts, HoleId hole, HoleCoordinates stated, double away, Consumer<Finding> out) {
    if (away > Threshold.OFF_HOOP.value()) {
      out.accept(
          finding()
              .message(
                  "Hole %s lies %s mm from the inside of the hoop.".formatted(hole, Say.mm(away)))
              .at("/holes/at/" + stated.ref(), facts.layout().places())
              .about(hole)
              .fact("away", away, "mm")
              .fix("Check its coordinates, the unit, and the hoop's size.")
              .build());
    }
  }
}
