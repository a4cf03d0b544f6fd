package org.hoopwright.geometry;

/**
 * One thing that is wrong with the numbers an outline is to be made from, as data, so that a reader
 * can report all of them at their places.
 *
 * @param kind what is wrong
 * @param index the place in the list of points, from 0 (the point, or the start of the edge), or -1
 *     where the flaw is about the whole
 * @param message what is wrong with which values, the rule, and what to do; one or two sentences
 */
public record Flaw(Kind kind, int index, String message) {

  /** What is wrong. */
  public enum Kind {
    /** A length or width is out of range. */
    SIZE,
    /** An exponent is out of range. */
    EXPONENT,
    /** There are fewer points than an outline needs. */
    TOO_FEW_POINTS,
    /** There are more points than an outline may have. */
    TOO_MANY_POINTS,
    /** A point is too far from the origin to be on a hoop. */
    TOO_FAR_OUT,
    /** A point is the same as the one before it. */
    REPEATED_POINT,
    /** Two edges cross, touch or overlap. */
    SELF_CROSSING,
    /** The outline touches the long axis, or runs along it, without crossing it. */
    AXIS_TOUCHED,
    /** The outline does not cross the long axis exactly twice. */
    AXIS_CROSSINGS
  }
}
