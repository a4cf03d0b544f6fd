package org.hoopwright.route;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hoopwright.bed.Bed;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.Layout;

/**
 * Compares candidates by a list of preferences and, when all of them tie, by what breaks the last
 * ties.
 */
final class RouteRanking implements Comparator<Candidate> {

  private final Bed bed;
  private final List<RoutePreference> preferences;
  private final boolean wishes; // whether the frame's maker asks for anything

  RouteRanking(Bed bed, List<RoutePreference> preferences) {
    this.bed = bed;
    this.preferences = preferences;
    Layout layout = bed.layout();
    this.wishes =
        layout.direction().isPresent()
            || layout.pieces().isPresent()
            || layout.shortSide().isPresent()
            || layout.startSide().isPresent();
  }

  @Override
  public int compare(Candidate a, Candidate b) {
    for (RoutePreference p : preferences) {
      int c = Long.compare(value(p, a), value(p, b));
      if (c != 0) {
        return c;
      }
    }
    return Arrays.compare(a.tieBreak(), b.tieBreak());
  }

  /**
   * The value of a preference; the usual ones are read off the candidate, so that most variants
   * never become a route.
   */
  private long value(RoutePreference p, Candidate c) {
    if (p == RoutePreferences.MAKER && !wishes) {
      return 0;
    }
    if (p == RoutePreferences.DIRECTION) {
      return c.order.direction() == Direction.HEAD_TO_THROAT ? 0 : 1;
    }
    if (p == RoutePreferences.DEPARTURES) {
      return c.departures;
    }
    if (p == RoutePreferences.COVERED) {
      return c.measured.covered();
    }
    if (p == RoutePreferences.DOUBLED) {
      return c.measured.doubled();
    }
    if (p == RoutePreferences.KNOTS) {
      return c.measured.knots();
    }
    if (p == RoutePreferences.LONGEST_RUN) {
      return c.measured.longestRun();
    }
    if (p == RoutePreferences.STRING) {
      return c.measured.stringMm();
    }
    return p.value(c.route(), bed);
  }

  /** What each preference says of a candidate, most important first. */
  Map<String, String> values(Candidate c) {
    Map<String, String> values = new LinkedHashMap<>();
    preferences.forEach(p -> values.put(p.name(), p.show(c.route(), bed)));
    return values;
  }

  /** One sentence on why a candidate stands above the next. */
  String why(Candidate c, Candidate next) {
    for (RoutePreference p : preferences) {
      if (value(p, c) != value(p, next)) {
        return "It stands above the next because of "
            + p.reason()
            + ": "
            + p.name()
            + " "
            + p.show(c.route(), bed)
            + " against "
            + p.show(next.route(), bed)
            + ".";
      }
    }
    return "It is as good as the next in every preference, and stands first by start end, side, passes and knots, in this order.";
  }
}
