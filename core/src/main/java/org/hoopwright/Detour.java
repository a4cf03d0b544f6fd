package org.hoopwright;

import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.Route;

/** How the blocked holes of a frame can be worked round. */
public sealed interface Detour {

  /** No string of the stated pattern runs through a blocked hole, or the skip rules avoid them. */
  record NotNeeded() implements Detour {}

  /**
   * The skip rules give no bed even if nothing were blocked, or are not stated; the layout's own
   * check says why.
   */
  record NoPattern() implements Detour {}

  /**
   * The nearest pattern that leaves the blocked holes out and that can be strung.
   *
   * @param bed the bed; its layout states the skip rules and shared holes of the detour
   * @param route the best route through it
   * @param moves the strings that run through other holes than stated, in their order
   * @param shared holes that take two strings now and did not before
   * @param doubtful those of them of which the layout does not say that they can: their bore must
   *     be looked at
   * @param skewMm by how much mains and crosses run more askew than as stated, summed over all
   *     strings: mm between the two ends' distances from the axis or heights
   * @param passedOver how many nearer patterns have no route
   */
  record Found(
      Bed bed,
      Route route,
      List<Move> moves,
      List<HoleId> shared,
      List<HoleId> doubtful,
      double skewMm,
      int passedOver)
      implements Detour {
    /** Copies the lists. */
    public Found {
      moves = List.copyOf(moves);
      shared = List.copyOf(shared);
      doubtful = List.copyOf(doubtful);
    }

    /** Which strings move, which holes take two and what must be looked at, as plain sentences. */
    public String toWords() {
      String look =
          doubtful.isEmpty()
              ? ""
              : " First look whether "
                  + Detours.words(doubtful)
                  + (doubtful.size() == 1
                      ? " can take two strings."
                      : " can take two strings each.");
      return Detours.words(this) + "." + look;
    }
  }

  /**
   * None was found.
   *
   * @param why the smallest reason, as one or more plain sentences
   * @param proven false when a limit ended the search, so that one may exist
   */
  record None(String why, boolean proven) implements Detour {}

  /**
   * A string that runs through other holes.
   *
   * @param span the string
   * @param from its holes as stated
   * @param to its holes in the detour
   */
  record Move(SpanId span, List<HoleId> from, List<HoleId> to) {
    /** Copies the lists. */
    public Move {
      from = List.copyOf(from);
      to = List.copyOf(to);
    }
  }

  /** The detour, when there is one. */
  default Optional<Found> found() {
    return this instanceof Found f ? Optional.of(f) : Optional.empty();
  }
}
