package org.hoopwright.route;

import org.hoopwright.finding.HoopwrightFault;
import org.jspecify.annotations.Nullable;

/**
 * The usual preferences as the search knows them: their values are read off a candidate, so that
 * most variants never become a route.
 */
enum Usual {
  MAKER(true),
  DIRECTION(true),
  DEPARTURES(true),
  COVERED(false),
  DOUBLED(false),
  KNOTS(true),
  LONGEST_RUN(false),
  STRING(false);

  /** Whether all variants of one order of passes have the same value. */
  final boolean sameForAllKnots;

  Usual(boolean sameForAllKnots) {
    this.sameForAllKnots = sameForAllKnots;
  }

  /** Which of the usual ones a preference is; null for a caller's own. */
  static @Nullable Usual of(RoutePreference p) {
    for (Usual usual : values()) {
      if (p == usual.preference()) {
        return usual;
      }
    }
    return null;
  }

  private RoutePreference preference() {
    return switch (this) {
      case MAKER -> RoutePreferences.MAKER;
      case DIRECTION -> RoutePreferences.DIRECTION;
      case DEPARTURES -> RoutePreferences.DEPARTURES;
      case COVERED -> RoutePreferences.COVERED;
      case DOUBLED -> RoutePreferences.DOUBLED;
      case KNOTS -> RoutePreferences.KNOTS;
      case LONGEST_RUN -> RoutePreferences.LONGEST_RUN;
      case STRING -> RoutePreferences.STRING;
    };
  }

  /** The value for a finished frame; only for those that knots decide. */
  long value(Strung strung) {
    return switch (this) {
      case COVERED -> strung.covered();
      case DOUBLED -> strung.doubled();
      case LONGEST_RUN -> strung.longestRun();
      case STRING -> strung.stringMm();
      case MAKER, DIRECTION, DEPARTURES, KNOTS ->
          throw new HoopwrightFault(
              "The preference "
                  + name()
                  + " was asked for the knots, which it does not depend on.");
    };
  }
}
