package org.hoopwright.route;

import java.util.Map;

/**
 * A route with the reason for its rank.
 *
 * @param route the route
 * @param values what each preference says of it, by the preference's name, most important first
 * @param why one sentence: why it stands above the next, or how it stands to the best
 * @param knotVariants in how many ways its ends can be knotted, this one included
 */
public record RankedRoute(Route route, Map<String, String> values, String why, int knotVariants) {

  /** Copies the map; its order is kept. */
  public RankedRoute {
    values = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(values));
  }
}
