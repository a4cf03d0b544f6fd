package org.hoopwright.route;

/**
 * One thing done to the string, in the time order of a route.
 *
 * @param piece index of the piece, from 0
 * @param end which end of it
 * @param what a pass, a knot, or the setting of a starting clamp that stands in for a starting knot
 * @param pass index of the pass in that end's list; -1 for a knot or clamp
 */
public record Moment(int piece, EndName end, What what, int pass) {

  /** What is done. */
  public enum What {
    /** The string is led to a span and through it. */
    PASS,
    /** The end is led to its tie-off hole and knotted. */
    KNOT,
    /** A starting clamp is set outside the frame on the end of the crosses' piece. */
    CLAMP
  }
}
