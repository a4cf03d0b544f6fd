package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Limits;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;

/** Coordinates on the other side of the long axis. */
final class HoleWrongSide extends Rule {

  HoleWrongSide() {
    super(FindingCode.HOLE_WRONG_SIDE, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/units");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    facts.layout().at().forEach((ref, p) -> side(facts, ref, p, out));
  }

  private void side(Facts facts, HoleRef ref, Point stated, Consumer<Finding> out) {
    double x = facts.layout().mm(stated.x());
    int sign = ref.side().orElse(Side.RIGHT).sign();
    boolean inRange = Limits.isCoordinate(x) && Limits.isCoordinate(facts.layout().mm(stated.y()));
    if (inRange && x * sign <= 0) {
      out.accept(
          finding()
              .message(
                  "Hole %s is %s, but its x (%s mm) %s."
                      .formatted(
                          ref.side().isPresent() ? ref : "R" + ref,
                          sign < 0 ? "left of the long axis" : "right of the long axis",
                          Say.mm(x),
                          x == 0 ? "lies on it" : "is on the other side"))
              .at("/holes/at/" + ref + "/0", facts.layout().places())
              .about(ref.holes())
              .fact("x", x, "mm")
              .fix(
                  ref.side().isPresent()
                      ? "Check the sign of x: left is negative, right is positive."
                      : "Give the right hole's coordinates; the left hole is its mirror image.")
              .build());
    }
  }
}
