package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Side;

/**
 * Which labels each hole may have when the mains' skip rules are not known: all that the layout
 * does not speak against.
 *
 * <p>A blocked hole stays empty. A stated first or last cross, and holes that crosses leave out,
 * are kept to. Two strings go through shared holes only; if a side states none and has too few
 * holes, through any hole whose bore is not stated to be too small, but such a hole is doubtful:
 * its bore must be looked at. A hole may stay empty only on a side that has more places than
 * strings.
 */
final class OpenLabels {

  private final Layout layout;
  private final Ring ring;
  private final Set<HoleId> crossesSkip = new HashSet<>();
  private final Set<HoleId> tooSmall = new HashSet<>();
  private final Set<HoleId> doubtful = new HashSet<>();
  private final EachSide<List<Set<HoleLabel>>> allowed;

  OpenLabels(Layout layout) {
    this.layout = layout;
    ring = Ring.of(layout);
    layout.crossesSkip().forEach(ref -> crossesSkip.addAll(ref.holes()));
    layout
        .bore()
        .forEach(
            (ref, bore) -> {
              if (bore < 2) {
                tooSmall.addAll(ref.holes());
              }
            });
    allowed = new EachSide<>(side(Side.LEFT), side(Side.RIGHT));
  }

  /** The labels of each hole. */
  EachSide<List<Set<HoleLabel>>> allowed() {
    return allowed;
  }

  /** Holes that may take two strings though the layout does not say so. */
  Set<HoleId> doubtful() {
    return doubtful;
  }

  /** Whether nothing that is stated tells the sides apart. */
  boolean alike() {
    return layout.headHoles().same()
        && layout.throatHoles().same()
        && allowed.left().equals(allowed.right());
  }

  private List<Set<HoleLabel>> side(Side side) {
    long usable = ring.list(side).stream().filter(h -> !ring.isBlocked(h)).count();
    long shared = ring.list(side).stream().filter(h -> ring.passLimit(h) > 1).count();
    long strings = 2L * layout.mainsPerSide() + layout.crossesCount();
    boolean mayDoubt = shared == 0 && usable < strings;
    boolean mayEmpty = !mayDoubt && usable + shared > strings;
    List<Set<HoleLabel>> list = new ArrayList<>();
    for (HoleId hole : ring.list(side)) {
      list.add(labels(hole, mayDoubt, mayEmpty));
    }
    return list;
  }

  private Set<HoleLabel> labels(HoleId hole, boolean mayDoubt, boolean mayEmpty) {
    if (ring.passLimit(hole) == 0) {
      return Set.of(HoleLabel.NONE);
    }
    boolean cross = !crossesSkip.contains(hole) && withinStated(hole);
    boolean mustCross = is(layout.crossesFirst(), hole) || is(layout.crossesLast(), hole);
    EnumSet<HoleLabel> set = EnumSet.noneOf(HoleLabel.class);
    if (!mustCross) {
      set.add(HoleLabel.MAIN);
      if (mayEmpty || crossesSkip.contains(hole)) {
        set.add(HoleLabel.NONE);
      }
    }
    if (cross || mustCross) {
      set.add(HoleLabel.CROSS);
      if (ring.passLimit(hole) > 1) {
        set.add(HoleLabel.BOTH);
      } else if (mayDoubt && !tooSmall.contains(hole)) {
        set.add(HoleLabel.BOTH);
        doubtful.add(hole);
      }
    }
    return set;
  }

  private boolean withinStated(HoleId hole) {
    int place = ring.place(hole);
    return stated(layout.crossesFirst(), hole.side()).map(p -> place >= p).orElse(true)
        && stated(layout.crossesLast(), hole.side()).map(p -> place <= p).orElse(true);
  }

  private Optional<Integer> stated(Optional<EachSide<HoleId>> pair, Side side) {
    return pair.map(p -> p.of(side)).filter(ring::has).map(ring::place);
  }

  private static boolean is(Optional<EachSide<HoleId>> pair, HoleId hole) {
    return pair.isPresent() && pair.get().of(hole.side()).equals(hole);
  }
}
