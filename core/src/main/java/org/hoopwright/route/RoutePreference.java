package org.hoopwright.route;

import org.hoopwright.bed.Bed;

/**
 * One thing to prefer among routes. Routes are compared by a list of these, first difference
 * decides; {@link RoutePreferences} has the usual ones, callers may add their own.
 *
 * <p>Implementations must be pure and thread-safe.
 */
public interface RoutePreference {

  /**
   * A short stable name in kebab-case or camelCase, such as {@code departures}; unique within a
   * list.
   */
  String name();

  /** How the route fares; the smaller value is preferred. */
  long value(Route route, Bed bed);

  /**
   * The value in words or digits, for people and plan files; the number itself unless overridden.
   */
  default String show(Route route, Bed bed) {
    return Long.toString(value(route, bed));
  }

  /** A clause that says what a better value means, such as {@code fewer covered holes}. */
  String reason();
}
