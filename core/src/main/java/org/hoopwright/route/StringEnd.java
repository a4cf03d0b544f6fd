package org.hoopwright.route;

import java.util.List;
import java.util.Optional;
import org.hoopwright.frame.HoleId;

/**
 * One end of a piece of string: the spans it runs through in order, and how it is closed.
 *
 * @param name short, long, start or finish
 * @param passes the spans in the order in which this end strings them; empty for the start of a
 *     crosses' piece
 * @param startingClamp where a starting clamp on the outside of the frame holds this end until it
 *     is pulled again and knotted; empty unless the crosses start so
 * @param finish the knot
 */
public record StringEnd(
    EndName name, List<Pass> passes, Optional<HoleId> startingClamp, Knot finish) {

  /** Copies the list. */
  public StringEnd {
    passes = List.copyOf(passes);
  }
}
