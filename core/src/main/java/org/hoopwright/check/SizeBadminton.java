package org.hoopwright.check;

import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.frame.Game;
import org.hoopwright.geometry.Outline;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.PolygonOutline;
import org.hoopwright.geometry.Side;

/** Limits of badminton: 680 mm by 230 mm overall, stringed area 280 mm by 220 mm. */
final class SizeBadminton extends SizeRule {

  SizeBadminton() {
    super(Game.BADMINTON, Bodies.BADMINTON);
  }

  @Override
  void sizes(Facts facts, Consumer<Finding> out) {
    frame(facts, 680, 230, out);
    facts.outline().ifPresent(o -> hoop(facts, o, out));
  }

  private void hoop(Facts facts, Outline o, Consumer<Finding> out) {
    // Strings may go on into what would be the throat: at most 35 mm wide, 330 mm in all. An
    // oval has no such part, however narrow its last millimetre.
    boolean extension =
        o instanceof PolygonOutline p
            && p.lengthMm() > 280
            && widthBelowHead(p, 280) <= 35 + ROUNDING;
    hoop(facts, "length", "stringed area", o.lengthMm(), extension ? 330 : 280, out);
    hoop(facts, "width", "stringed area", o.widthMm(), 220, out);
  }

  /** The greatest width of the part farther than this below the inside of the head. */
  private static double widthBelowHead(PolygonOutline o, double distance) {
    double y = o.headAxisPoint().y() - distance;
    double width = 0;
    for (Side side : Side.values()) {
      double reach = o.atY(side, y).map(p -> Math.abs(p.x())).orElse(0.0);
      for (Point p : o.points()) { // it may widen again farther down
        if (p.y() < y) {
          reach = Math.max(reach, p.x() * side.sign());
        }
      }
      width += reach;
    }
    return width;
  }
}
