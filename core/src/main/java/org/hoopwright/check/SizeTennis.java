package org.hoopwright.check;

import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.frame.Game;
import org.hoopwright.geometry.Outline;

/** Limits of tennis: 73.7 cm by 31.7 cm overall, hitting surface 39.4 cm by 29.2 cm. */
final class SizeTennis extends SizeRule {

  SizeTennis() {
    super(Game.TENNIS, Bodies.TENNIS);
  }

  @Override
  void sizes(Facts facts, Consumer<Finding> out) {
    frame(facts, 737, 317, out);
    facts.outline().ifPresent(o -> hoop(facts, o, out));
  }

  private void hoop(Facts facts, Outline o, Consumer<Finding> out) {
    hoop(facts, "length", "hitting surface", o.lengthMm(), 394, out);
    hoop(facts, "width", "hitting surface", o.widthMm(), 292, out);
  }
}
