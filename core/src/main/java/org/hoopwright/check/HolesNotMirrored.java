package org.hoopwright.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;

/** Coordinates of two holes of one name that are far from mirror images. */
final class HolesNotMirrored extends Rule {

  HolesNotMirrored() {
    super(FindingCode.HOLES_NOT_MIRRORED, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/units", "/holes/at", "/holes/head", "/holes/throat");
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.HOLES_UNEVEN, FindingCode.HOLE_WRONG_SIDE);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    double most = Threshold.MIRROR.value();
    for (Map.Entry<HoleRef, Point> left : facts.layout().at().entrySet()) {
      Optional<Side> side = left.getKey().side();
      Point other = facts.layout().at().get(left.getKey().mirrored());
      if (side.isPresent() && side.get() == Side.LEFT && other != null) {
        double apart = facts.layout().mm(left.getValue().mirrored().distanceTo(other));
        if (apart > most) {
          out.accept(
              finding()
                  .message(
                      "Holes %s and %s are %s mm from being mirror images."
                          .formatted(left.getKey(), left.getKey().mirrored(), Say.mm(apart)))
                  .at("/holes/at/" + left.getKey(), facts.layout().places())
                  .about(left.getKey(), left.getKey().mirrored())
                  .fact("apart", apart, "mm")
                  .fix("Measure both holes again; most frames are drilled alike on both sides.")
                  .build());
        }
      }
    }
  }
}
