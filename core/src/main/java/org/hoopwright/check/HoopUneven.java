package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Hoop;
import org.hoopwright.geometry.Outline;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;

/** An outline whose two halves are not mirror images. */
final class HoopUneven extends Rule {

  HoopUneven() {
    super(FindingCode.HOOP_UNEVEN, Stage.LAYOUT);
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
    if (facts.outline().isEmpty() || !(facts.layout().hoop() instanceof Hoop.Points)) {
      return;
    }
    Outline o = facts.outline().get();
    Outline mirrored = o.mirrored();
    double most = 0;
    for (int i = 1; i < 40; i++) {
      Point p = o.atArc(Side.RIGHT, o.halfLengthMm(Side.RIGHT) * i / 40);
      most = Math.max(most, Math.abs(mirrored.distanceTo(p)));
    }
    if (most > Threshold.HOOP_MIRROR.value()) {
      out.accept(
          finding()
              .message(
                  "The hoop's halves differ by up to %s mm from mirror images."
                      .formatted(Say.mm(most)))
              .at("/hoop/points", facts.layout().places())
              .fact("apart", most, "mm")
              .fix("Check the points, and that x = 0 is the long axis.")
              .build());
    }
  }
}
