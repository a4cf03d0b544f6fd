package org.hoopwright.route;

import java.util.List;

/**
 * What the ranking of routes looks at. All are better when smaller.
 *
 * @param departures crosses strung before the last main, mains strung after the first cross, and
 *     crosses strung by the short end, added up
 * @param covered how many passes meet a covered hole; a pass counts once even if both its holes are
 *     covered
 * @param doubled how many runs share a stretch of the frame with an earlier run; the stretch to a
 *     knot counts as a run
 * @param knots how many knots
 * @param longestRun the longest run in places of a side's list, stretches to knots included; the
 *     centre loop is one place
 * @param stringMm string that lies in the finished frame: spans, runs, stretches to knots and
 *     passages through the frame, rounded to 1 mm
 * @param coveredHoles each covered hole, in the time order of the passes that need them
 */
public record RouteMeasures(
    int departures,
    int covered,
    int doubled,
    int knots,
    int longestRun,
    long stringMm,
    List<CoveredHole> coveredHoles) {

  /** Copies the list. */
  public RouteMeasures {
    coveredHoles = List.copyOf(coveredHoles);
  }
}
