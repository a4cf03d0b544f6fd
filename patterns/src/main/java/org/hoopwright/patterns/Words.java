package org.hoopwright.patterns;

import java.util.List;
import org.hoopwright.bed.Bed;
import org.hoopwright.bench.StartMark;
import org.hoopwright.bench.StringNeed;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.Game;
import org.hoopwright.geometry.Side;
import org.hoopwright.material.StringSpec;
import org.hoopwright.route.CoveredHole;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Piece;
import org.hoopwright.route.Route;

/** Words for people. */
final class Words {

  private Words() {}

  /** {@code 1 piece}, {@code 2 pieces}. */
  static String count(int n, String one, String many) {
    return n + " " + (n == 1 ? one : many);
  }

  /** Things in a list: {@code A}, {@code A and B}, {@code A, B and C}. */
  static String and(List<?> things) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < things.size(); i++) {
      text.append(i == 0 ? "" : i == things.size() - 1 ? " and " : ", ").append(things.get(i));
    }
    return text.toString();
  }

  /** The pattern and the game, such as {@code tennis, 16 mains x 19 crosses}. */
  static String pattern(Bed bed) {
    String game = bed.layout().game() == Game.OTHER ? "" : bed.layout().game().word() + ", ";
    return game + 2 * bed.mainsPerSide() + " mains x " + bed.crossCount() + " crosses";
  }

  /** {@code left} or {@code right}. */
  static String side(Side side) {
    return side == Side.LEFT ? "left" : "right";
  }

  /** Which way the crosses go in. */
  static String direction(Direction direction) {
    return direction == Direction.HEAD_TO_THROAT ? "from the head down" : "from the throat up";
  }

  /** What a piece of string is for. */
  static String role(Piece.Role role) {
    return switch (role) {
      case WHOLE -> "mains and crosses";
      case MAINS -> "mains";
      case CROSSES -> "crosses";
    };
  }

  /** Which pieces are cut from one string, after a word: empty for all of them. */
  static String piecesOf(Route route, StringNeed need) {
    return need.pieces().size() == route.pieces().size()
        ? ""
        : ", " + role(route.pieces().get(need.pieces().get(0)).role());
  }

  /** A knot, such as {@code tie-off knot in L8T round L7}. */
  static String knot(Knot knot) {
    String kind = knot.kind() == Knot.Kind.TIE_OFF ? "tie-off knot" : "starting knot";
    return kind + " in " + knot.hole() + " round " + knot.anchor();
  }

  /** A string, such as {@code nylon, gauge 16 (1.26 to 1.34 mm)}. */
  static String string(StringSpec string) {
    return string.material().word().replace('-', ' ')
        + ", gauge "
        + string.gauge().word()
        + " ("
        + Decimals.near(string.gauge().minMm(), 2)
        + " to "
        + Decimals.near(string.gauge().maxMm(), 2)
        + " mm)";
  }

  /** What to do about covered holes, before their names. */
  static String keepOpen(CoveredHole.KeepOpen how) {
    return switch (how) {
      case THREAD_FIRST -> "Thread the later pass first and leave it slack: ";
      case SCRAP_STRING -> "Lay a scrap of string into the hole before the run that covers it: ";
      case AWL -> "String lies in the hole already; make room beside it with an awl: ";
    };
  }

  /** An end of string. */
  static String end(EndName end) {
    return switch (end) {
      case SHORT -> "short end";
      case LONG -> "long end";
      case START -> "start of the crosses";
      case FINISH -> "end of the crosses";
    };
  }

  /** What the starting clamp's mark may lie on. */
  static String spot(StartMark.Spot spot) {
    return switch (spot) {
      case RUN -> "on the run";
      case BEND -> "on the bend";
      case HOLE -> "in the next hole";
    };
  }
}
