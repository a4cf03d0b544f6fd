package org.hoopwright.route;

/**
 * A knot as the search sees it.
 *
 * @param hole the tie-off hole, as a number
 * @param anchor the span it is tied round, as a number
 * @param clamped for the start of a second piece: whether a starting clamp holds it first and the
 *     knot is an ordinary one
 */
record KnotChoice(int hole, int anchor, boolean clamped) {}
