package org.hoopwright.weave;

import java.util.List;
import org.hoopwright.bed.SpanId;

/**
 * What was found in an observed weave.
 *
 * @param misweaves every place where over and under do not alternate, along the crosses from the
 *     head down, then along the mains from left to right
 * @param weaveAgain a smallest set of strings which, drawn out and woven again, make the whole bed
 *     alternate: mains from left to right, then crosses
 * @param inverted whether the bed that it comes to is the inverse of the usual one, X1 under R1; it
 *     plays the same
 */
public record WeaveReport(List<Misweave> misweaves, List<SpanId> weaveAgain, boolean inverted) {

  /** Copies the lists. */
  public WeaveReport {
    misweaves = List.copyOf(misweaves);
    weaveAgain = List.copyOf(weaveAgain);
  }
}
