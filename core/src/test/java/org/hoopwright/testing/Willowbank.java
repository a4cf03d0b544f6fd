package org.hoopwright.testing;

import java.util.Map;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.Game;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutBuilder;
import org.hoopwright.geometry.Point;
import org.hoopwright.units.ForceUnit;

/** Invented frames of the Willowbank workshop. */
public final class Willowbank {

  private Willowbank() {}

  /** A tennis frame, 16 x 19 with two skips at each end, nothing wrong with it. */
  public static LayoutBuilder hundred() {
    return Layout.builder("Willowbank 100")
        .game(Game.TENNIS)
        .frame(685, 262)
        .hoop(new Hoop.Superellipse(330, 248, 2.1))
        .holes(18, 17)
        .tieOff("5H", "6T", "8T", "12T")
        .bore(Map.of(HoleRef.of("L8T"), 3))
        .at(Map.of(HoleRef.of("L1H"), new Point(-5.1, 164.9)))
        .noRun("5T", "6T")
        .mains(16)
        .mainsSkip("7H", "9H", "7T", "9T")
        .crosses(19)
        .crossesFirst(both("7H"))
        .crossesLast(both("7T"))
        .headZone(both("10H"))
        .tension(50, 60, ForceUnit.POUND_FORCE);
  }

  /** A tennis frame, 18 x 20 with two skips at each end, nothing wrong with it. */
  public static LayoutBuilder ninetyFive() {
    return Layout.builder("Willowbank 95")
        .game(Game.TENNIS)
        .frame(685, 255)
        .hoop(new Hoop.Superellipse(324, 240, 2))
        .holes(19, 19)
        .tieOff("6H", "9H", "7T", "9T")
        .mains(18)
        .mainsSkip("8H", "10H", "8T", "10T")
        .crosses(20)
        .crossesFirst(both("8H"))
        .crossesLast(both("8T"))
        .tension(220, 265, ForceUnit.NEWTON);
  }

  /** The smallest frame for teaching: 4 x 4 on eight holes a side. */
  public static LayoutBuilder teaching() {
    return Layout.builder("Willowbank teaching frame")
        .hoop(new Hoop.Superellipse(120, 100, 2))
        .holes(4, 4)
        .tieOff("1H", "1T")
        .mains(4)
        .mainsSkip()
        .crosses(4);
  }

  /** The holes of this name on both sides, such as {@code 7H}. */
  public static EachSide<HoleId> both(String name) {
    return new EachSide<>(HoleId.of("L" + name), HoleId.of("R" + name));
  }
}
