package org.hoopwright.bench;

import java.util.List;
import org.hoopwright.route.EndName;

/**
 * A piece of string in a half-done job.
 *
 * @param ends short and long, or start and finish, in this order
 * @param broken whether it has broken: nothing of it can stay
 */
public record StrungPiece(List<StrungEnd> ends, boolean broken) {

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException when the ends are not short and long, or start and finish
   */
  public StrungPiece {
    ends = List.copyOf(ends);
    List<EndName> names = ends.stream().map(StrungEnd::name).toList();
    if (!names.equals(List.of(EndName.SHORT, EndName.LONG))
        && !names.equals(List.of(EndName.START, EndName.FINISH))) {
      throw new IllegalArgumentException(
          "The ends of a piece (%s) must be short and long, or start and finish, in this order."
              .formatted(names.stream().map(EndName::word).toList()));
    }
  }

  /** The end that begins with the short or start end's name. */
  StrungEnd low() {
    return ends.get(0);
  }

  StrungEnd high() {
    return ends.get(1);
  }

  /** Whether nothing of it lies in the frame. */
  public boolean isEmpty() {
    return ends.stream().allMatch(e -> e.passes().isEmpty());
  }

  /** The end of this name, or null when it is the other piece's. */
  StrungEnd end(EndName name) {
    return ends.get(name == EndName.SHORT || name == EndName.START ? 0 : 1);
  }
}
