package org.hoopwright.route;

/**
 * A rule that a route breaks, see {@link RouteCheck}.
 *
 * @param rule the rule
 * @param what one plain sentence with the holes and spans it is about
 */
public record Violation(Rule rule, String what) {

  /** What a route has to keep to. */
  public enum Rule {
    /** Pieces, ends and moments fit together, and all that is named exists in the bed. */
    FORM,
    /** Every span is strung exactly once, over all pieces. */
    EVERY_SPAN_ONCE,
    /** No hole carries more than its bore; blocked holes carry nothing. */
    HOLES,
    /** A run joins two different holes of one side within the run limit, over no forbidden one. */
    RUNS,
    /** The mains begin with the centre loop and go in from the axis outwards. */
    MAINS,
    /** Crosses go in in order; until the outermost mains are in, only early ones. */
    CROSSES,
    /** Each knot has a free place near its exit and an anchor that has had its own pull. */
    KNOTS,
    /** The short end is done and tied before the long end goes beyond its opening mains. */
    TIME_ORDER,
    /** What the caller fixed and the layout forbids. */
    REQUEST,
    /** The measures that the route states are those that it has. */
    MEASURES,
    /** The families that the route states are those that it belongs to. */
    FAMILIES
  }
}
