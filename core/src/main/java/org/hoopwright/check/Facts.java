package org.hoopwright.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.HoleLabel;
import org.hoopwright.frame.Draft;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoopOutline;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Outline;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.RouteMeasures;

/**
 * What is known when the rules are asked; what several of them need is worked out once.
 *
 * @param draft the layout as far as it is known
 * @param ring its holes
 * @param hoop its hoop's outline, or why there is none
 * @param laid its bed, if every string has its holes
 * @param best its best route, if routes were looked for and there is one
 */
record Facts(Draft draft, Ring ring, HoopOutline hoop, Optional<Bed> laid, Optional<Best> best) {

  /**
   * The best route.
   *
   * @param measures what it is ranked by
   * @param runLimit how many places a run may reach
   */
  record Best(RouteMeasures measures, int runLimit) {}

  /** Before strings are laid. */
  static Facts of(Draft draft) {
    Layout layout = draft.layout();
    return new Facts(
        draft, Ring.of(layout), HoopOutline.of(layout), Optional.empty(), Optional.empty());
  }

  /** With what the work on the strings came to. */
  Facts with(Optional<Bed> bed, Optional<Best> route) {
    return new Facts(draft, ring, hoop, bed, route);
  }

  Layout layout() {
    return draft.layout();
  }

  /** Whether the value at this pointer is known, with everything in it. */
  boolean knows(String pointer) {
    return draft.knows(pointer);
  }

  /** The inside of the hoop; empty when the stated numbers make none. */
  Optional<Outline> outline() {
    return hoop.outline();
  }

  /** The bed; only rules that need one may ask. */
  Bed bed() {
    return laid.orElseThrow();
  }

  /** The best route; only rules that need one may ask. */
  Best route() {
    return best.orElseThrow();
  }

  /**
   * The holes without any string that crosses.skip does not name, in the order of their sides'
   * lists; only rules that need a bed may ask.
   */
  List<HoleId> emptyHoles() {
    Set<HoleId> leftOut = new HashSet<>();
    layout().crossesSkip().forEach(ref -> leftOut.addAll(ref.holes()));
    List<HoleId> empty = new ArrayList<>();
    for (Side side : Side.values()) {
      for (HoleId hole : ring.list(side)) {
        if (bed().labels().of(side).get(ring.place(hole)) == HoleLabel.NONE
            && !leftOut.contains(hole)) {
          empty.add(hole);
        }
      }
    }
    return empty;
  }
}
