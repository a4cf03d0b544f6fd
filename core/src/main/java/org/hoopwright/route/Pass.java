package org.hoopwright.route;

import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;

/**
 * A span as an end of string runs through it.
 *
 * @param span the span
 * @param from the hole where the string enters
 * @param to the hole where it comes out
 */
public record Pass(SpanId span, HoleId from, HoleId to) {

  /** For example {@code X1 L7H>R7H}. */
  @Override
  public String toString() {
    return span + " " + from + ">" + to;
  }
}
