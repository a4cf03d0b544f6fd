package org.hoopwright.route;

import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;

/**
 * Where an end of string is knotted.
 *
 * @param kind tie-off knot or starting knot
 * @param hole the tie-off hole
 * @param anchor the span round which it is tied; it runs through that hole
 */
public record Knot(Kind kind, HoleId hole, SpanId anchor) {

  /** What kind of knot. */
  public enum Kind {
    /** Closes an end of string: usually two half hitches round the anchor. */
    TIE_OFF("tie-off-knot"),
    /** A bulky knot outside the frame, on which the first cross is pulled. */
    STARTING("starting-knot");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** {@code tie-off-knot} or {@code starting-knot}, as in plans. */
    public String word() {
      return word;
    }
  }

  /** For example {@code 5H on L5}. */
  @Override
  public String toString() {
    return hole + " on " + anchor + (kind == Kind.STARTING ? " (starting)" : "");
  }
}
