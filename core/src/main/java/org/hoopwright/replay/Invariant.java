package org.hoopwright.replay;

/** The rules of the bench that every plan obeys at every step. */
public enum Invariant {
  /**
   * From its own pull on a span stays between two holders (tensioner, clamp, knot) with only laced
   * string between; so does an anchor main from the moment its starting clamp is set. A shared pull
   * is given up by release and unlace. A hand only keeps a string straight.
   */
  I1_HELD,
  /**
   * Never more clamps than the bench has; no cross is woven while a clamp on one of its mains is
   * within its own length and 4 mm of the crossing.
   */
  I2_CLAMPS,
  /** Only a free tail is pulled, and what lies between grip and nearest holder is laced. */
  I3_FREE_TAIL,
  /**
   * The lead of one side's mains that have had their own pull over the other's stays within the
   * limit.
   */
  I4_LEAD,
  /** No starting clamp is outside at a hole of the head zone, unless the caller allowed it. */
  I5_HEAD_ZONE,
  /**
   * Every span has had a pull of its own at its reference tension, or at the stated extra for the
   * last one before a knot.
   */
  I6_OWN_PULL,
  /**
   * A knot goes on after the tensioner has let go and while a clamp still holds its span, round an
   * anchor that has had its own pull; that clamp comes off after it.
   */
  I7_KNOT,
  /** At the end every span has been pulled, every end is knotted and every clamp is off. */
  I8_END,
  /**
   * The weave alternates, and every cross meets exactly the mains that the order of the holes says.
   */
  I9_WEAVE,
  /** Steps and route agree: the same passes, in an order that the route's time order allows. */
  I10_ROUTE
}
