package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Side;

/** What a layout's skip rules say about single holes, whether or not a hole is blocked. */
final class StatedRules {

  private final Layout layout;
  private final Ring ring;
  private final Set<HoleId> mainsSkip = new HashSet<>();
  private final Set<HoleId> crossesSkip = new HashSet<>();
  private final Set<HoleId> mains = new HashSet<>();

  StatedRules(Layout layout, Ring ring, List<HoleRef> mainsSkip) {
    this.layout = layout;
    this.ring = ring;
    mainsSkip.forEach(ref -> this.mainsSkip.addAll(ref.holes()));
    layout.crossesSkip().forEach(ref -> crossesSkip.addAll(ref.holes()));
    for (Side side : Side.values()) {
      for (End end : End.values()) {
        mains.addAll(mainHoles(side, end));
      }
    }
  }

  Layout layout() {
    return layout;
  }

  Ring ring() {
    return ring;
  }

  /**
   * The holes of a side's mains at one end, main 1 first: the first ones from the axis that
   * mains.skip does not name. Fewer than there are mains when the end has no more.
   */
  List<HoleId> mainHoles(Side side, End end) {
    List<HoleId> found = new ArrayList<>();
    for (int i = 1; found.size() < layout.mainsPerSide() && i <= HoleId.MAX_NUMBER; i++) {
      HoleId hole = new HoleId(side, end, i);
      if (!ring.has(hole)) {
        break;
      }
      if (!mainsSkip.contains(hole)) {
        found.add(hole);
      }
    }
    return found;
  }

  /** Whether a main ends in this hole. */
  boolean carriesMain(HoleId hole) {
    return mains.contains(hole);
  }

  /** Whether crosses.skip names this hole. */
  boolean crossesLeaveOut(HoleId hole) {
    return crossesSkip.contains(hole);
  }

  /** Whether neither a main nor crosses.skip stands against a cross here; it may be blocked. */
  boolean free(HoleId hole) {
    return !carriesMain(hole) && !crossesLeaveOut(hole);
  }

  /** Whether a cross may go through this hole beside its main. */
  boolean mayShare(HoleId hole) {
    return carriesMain(hole)
        && ring.isShared(hole)
        && !ring.isBlocked(hole)
        && !crossesLeaveOut(hole);
  }

  /** Why no cross can take this hole of the ring, as the end of a sentence; empty when one can. */
  Optional<String> whyNoCross(HoleId hole) {
    if (ring.isBlocked(hole)) {
      return Optional.of("is blocked");
    }
    if (crossesLeaveOut(hole)) {
      return Optional.of("is named in crosses.skip");
    }
    return carriesMain(hole) && !ring.isShared(hole)
        ? Optional.of("carries a main and is not shared")
        : Optional.empty();
  }
}
