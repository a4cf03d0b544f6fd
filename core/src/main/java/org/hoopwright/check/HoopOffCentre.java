package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.geometry.PolygonOutline;

/** An origin that is not at the middle of the inside length. */
final class HoopOffCentre extends Rule {

  HoopOffCentre() {
    super(FindingCode.HOOP_OFF_CENTRE, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/units", "/hoop");
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.HOOP_SHAPE);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    if (facts.outline().orElse(null) instanceof PolygonOutline outline) {
      double away = Math.abs(outline.axisOffsetMm());
      boolean towardsHead = outline.axisOffsetMm() > 0;
      if (away > Threshold.HOOP_CENTRE.value()) {
        out.accept(
            finding()
                .message(
                    "The middle of the hoop's inside length lies %s mm from the origin, towards %s."
                        .formatted(Say.mm(away), towardsHead ? "the head" : "the throat"))
                .at("/hoop/points", facts.layout().places())
                .fact("away", away, "mm")
                .fix(
                    "Move every y by %s mm towards %s, so that y = 0 is half-way between head and throat."
                        .formatted(Say.mm(away), towardsHead ? "the throat" : "the head"))
                .build());
      }
    }
  }
}
