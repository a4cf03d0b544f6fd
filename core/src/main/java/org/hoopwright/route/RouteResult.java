package org.hoopwright.route;

import java.util.List;
import java.util.Optional;

/**
 * What a route search found and how it ended.
 *
 * @param status how it ended
 * @param ranked one route for each class of pass orders, with its best knots and time order, best
 *     first; mirror images on a symmetric bed are one class
 * @param orders how many orders of passes were found, mirror images counted apart, whatever the
 *     knots
 * @param nodes how many nodes were visited
 * @param obstacles when no route exists: a smallest set of facts that together forbid one; empty
 *     otherwise
 * @param lift when no route exists: a smallest set of facts that, all lifted together, let a route
 *     appear; empty otherwise, or when the bed is below the least frame
 * @param request what was asked, defaults filled in
 */
public record RouteResult(
    Status status,
    List<RankedRoute> ranked,
    int orders,
    long nodes,
    List<Obstacle> obstacles,
    List<Obstacle> lift,
    RouteRequest request) {

  /** How a search ended. */
  public enum Status {
    /** Routes were found and the search saw them all. */
    FOUND,
    /** There is none, and the search saw every possibility. */
    PROVEN_ABSENT,
    /**
     * The search stopped at its limit or was cancelled; {@link RouteResult#ranked} holds what it
     * had found.
     */
    LIMIT_REACHED
  }

  /** Copies the lists. */
  public RouteResult {
    ranked = List.copyOf(ranked);
    obstacles = List.copyOf(obstacles);
    lift = List.copyOf(lift);
  }

  /** The best route, or empty. */
  public Optional<Route> best() {
    return ranked.stream().findFirst().map(RankedRoute::route);
  }
}
