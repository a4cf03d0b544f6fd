package org.hoopwright.patterns.draw;

import java.util.Locale;
import org.hoopwright.bed.Bed;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Route;

/** The words of the trade as drawings and sheets write them. */
final class Terms {

  private Terms() {}

  static String end(EndName end) {
    return switch (end) {
      case SHORT -> "short end";
      case LONG -> "long end";
      case START -> "start of the crosses";
      case FINISH -> "end of the crosses";
    };
  }

  /** For example {@code Machine clamp 1}. */
  static String clamp(String name) {
    int dash = name.lastIndexOf('-');
    String kind = name.substring(0, dash);
    return Character.toUpperCase(kind.charAt(0))
        + kind.substring(1)
        + " clamp "
        + name.substring(dash + 1);
  }

  static String knot(EndName end, Knot knot) {
    return switch (end) {
      case SHORT -> "knot, short end";
      case LONG -> "knot, long end";
      case START ->
          knot.kind() == Knot.Kind.STARTING ? "starting knot" : "knot, start of the crosses";
      case FINISH -> "knot, end of the crosses";
    };
  }

  /** For example {@code 16 mains, 19 crosses}. */
  static String pattern(Bed bed) {
    return bed.layout().mainsCount() + " mains, " + bed.crossCount() + " crosses";
  }

  /** What a route is like, in one line. */
  static String route(Route route) {
    StringBuilder text = new StringBuilder();
    text.append(route.pieces().size() == 1 ? "one piece" : "two pieces");
    text.append(", mains start at the ").append(route.mainsStart().word());
    text.append(", crosses ").append(route.direction().word().replace("-", " "));
    text.append(", short side ").append(route.shortSide().name().toLowerCase(Locale.ROOT));
    return text.toString();
  }
}
