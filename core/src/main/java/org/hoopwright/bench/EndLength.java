package org.hoopwright.bench;

import org.hoopwright.route.EndName;

/**
 * The string that one end of a piece needs, part by part, in mm, unstretched.
 *
 * @param piece index of the piece
 * @param end which end
 * @param spansMm its spans, with what the weave takes up
 * @param runsMm its runs and the stretch to its knot; the centre loop counts with the short end
 * @param frameMm its passages through the frame
 * @param knotMm the tail for its knot
 * @param reachMm what reaches to the tensioner
 * @param stretchMm what the string stretches, zero or negative
 */
public record EndLength(
    int piece,
    EndName end,
    double spansMm,
    double runsMm,
    double frameMm,
    double knotMm,
    double reachMm,
    double stretchMm) {

  /** All parts together, in mm. */
  public double totalMm() {
    return spansMm + runsMm + frameMm + knotMm + reachMm + stretchMm;
  }
}
