package org.hoopwright.bench;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Pass;

/**
 * One end of a piece in a half-done job.
 *
 * @param name which end
 * @param passes the spans it has laced, in order
 * @param knot its knot; empty while it is not tied
 * @param tailMm what is left of the string beyond the last exit, unstretched, in mm; empty when
 *     nobody has measured it, and then it is taken to be enough
 */
public record StrungEnd(
    EndName name, List<Pass> passes, Optional<Knot> knot, OptionalDouble tailMm) {

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException when the tail is negative or not a number
   */
  public StrungEnd {
    passes = List.copyOf(passes);
    if (tailMm.isPresent() && !(tailMm.getAsDouble() >= 0 && tailMm.getAsDouble() < 1e6)) {
      throw new IllegalArgumentException(
          "The tail (%s mm) must be from 0 to 1000000 mm.".formatted(tailMm.getAsDouble()));
    }
  }

  /** An end that has strung nothing. */
  static StrungEnd empty(EndName name) {
    return new StrungEnd(name, List.of(), Optional.empty(), OptionalDouble.empty());
  }

  /** Its first so many passes; what comes out of them is added to the tail by the caller. */
  StrungEnd keep(int count, OptionalDouble tail) {
    return new StrungEnd(name, passes.subList(0, count), knot, tail);
  }

  StrungEnd named(EndName other) {
    return new StrungEnd(other, passes, knot, tailMm);
  }
}
