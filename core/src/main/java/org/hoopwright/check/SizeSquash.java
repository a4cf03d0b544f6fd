package org.hoopwright.check;

import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.frame.Game;
import org.hoopwright.geometry.Outline;

/** Limits of squash: 686 mm by 215 mm overall, strings 390 mm, strung area 500 cm². */
final class SizeSquash extends SizeRule {

  private static final double SQUARE_MM_OF_SQUARE_CM = 100.0;

  SizeSquash() {
    super(Game.SQUASH, Bodies.SQUASH);
  }

  @Override
  void sizes(Facts facts, Consumer<Finding> out) {
    frame(facts, 686, 215, out);
    facts.outline().ifPresent(o -> hoop(facts, o, out));
  }

  private void hoop(Facts facts, Outline o, Consumer<Finding> out) {
    hoop(facts, "length", "strings", o.lengthMm(), 390, out);
    double area = o.areaMm2() / SQUARE_MM_OF_SQUARE_CM;
    limit(facts, "/hoop", "The strung area", area, 500, "cm²", out);
  }
}
