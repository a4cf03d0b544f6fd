package org.hoopwright.check;

import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.frame.Game;

/** The limit of racquetball: 22 inches overall. */
final class SizeRacquetball extends SizeRule {

  SizeRacquetball() {
    super(Game.RACQUETBALL, Bodies.RACQUETBALL);
  }

  @Override
  void sizes(Facts facts, Consumer<Finding> out) {
    frame(facts, 558.8, Double.MAX_VALUE, out);
  }
}
