package org.hoopwright.route;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hoopwright.bed.Bed;
import org.jspecify.annotations.Nullable;

/**
 * Compares candidates by a list of preferences and, when all of them tie, by what breaks the last
 * ties.
 */
final class RouteRanking implements Comparator<Candidate> {

  private final Bed bed;
  private final List<RoutePreference> preferences;
  private final @Nullable Usual[] usual; // null where a preference is the caller's own
  private final Usual[] byKnots; // those that tell variants of one order apart
  private final boolean allUsual;

  RouteRanking(Bed bed, List<RoutePreference> preferences) {
    this.bed = bed;
    this.preferences = preferences;
    usual = new Usual[preferences.size()];
    List<Usual> deciding = new ArrayList<>(preferences.size());
    boolean all = true;
    for (int i = 0; i < usual.length; i++) {
      Usual u = Usual.of(preferences.get(i));
      usual[i] = u;
      if (u == null) {
        all = false;
      } else if (!u.sameForAllKnots) {
        deciding.add(u);
      }
    }
    byKnots = deciding.toArray(new Usual[0]);
    allUsual = all;
  }

  @Override
  public int compare(Candidate a, Candidate b) {
    for (int i = 0; i < usual.length; i++) {
      int c = Long.compare(value(i, a), value(i, b));
      if (c != 0) {
        return c;
      }
    }
    return a.compareTies(b);
  }

  /** Whether a variant can be judged by {@link #better} before it is made a candidate. */
  boolean judgesByMeasures() {
    return allUsual;
  }

  /** Whether a variant stands before the best candidate so far of the same order of passes. */
  boolean better(RouteModel m, KnotChoice[] knots, Strung strung, Candidate best) {
    for (Usual u : byKnots) {
      int c = Long.compare(u.value(strung), best.value(u));
      if (c != 0) {
        return c < 0;
      }
    }
    int side = best.order.shortSide();
    return Knots.of(knots).compare(m, side, best.knots, side) < 0;
  }

  /**
   * Whether every variant of an order of passes stands behind a candidate, by the first preferences
   * that do not depend on knots. Mirror images that miss as many wishes are alike in these.
   */
  boolean isBehind(PassOrder order, int departures, int wishesMissed, Candidate ahead) {
    for (Usual u : usual) {
      if (u == null || !u.sameForAllKnots) {
        return false;
      }
      long own = Candidate.value(u, order, departures, wishesMissed);
      int c = Long.compare(own, ahead.value(u));
      if (c != 0) {
        return c > 0;
      }
    }
    return false;
  }

  private long value(int i, Candidate c) {
    Usual u = usual[i];
    return u != null ? c.value(u) : preferences.get(i).value(c.route(), bed);
  }

  /** What each preference says of a candidate, most important first. */
  Map<String, String> values(Candidate c) {
    Map<String, String> values = new LinkedHashMap<>();
    preferences.forEach(p -> values.put(p.name(), p.show(c.route(), bed)));
    return values;
  }

  /** How the runs of a candidate are laid. */
  LaidRuns laidRuns(Candidate c) {
    return LaidRuns.of(bed, c.route());
  }

  /** One sentence on why a candidate stands above the next. */
  String why(Candidate c, Candidate next) {
    for (int i = 0; i < usual.length; i++) {
      if (value(i, c) != value(i, next)) {
        RoutePreference p = preferences.get(i);
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
