package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Side;

/** Writes labels back as the skip rules of a layout, so that reading the rules gives the labels. */
final class CompleteLayout {

  private final Layout layout;
  private final Ring ring;
  private final Labels labels;

  private CompleteLayout(Layout layout, Labels labels) {
    this.layout = layout;
    this.labels = labels;
    ring = Ring.of(layout);
  }

  /** The layout with the skip rules, the first and the last cross and the shared holes of these */
  static Layout of(Layout layout, Labels labels) {
    return new CompleteLayout(layout, labels).write();
  }

  private Layout write() {
    Set<HoleId> wasShared = new HashSet<>();
    Set<HoleId> stated = new HashSet<>();
    layout.shared().forEach(ref -> wasShared.addAll(ref.holes()));
    layout.bore().keySet().forEach(ref -> stated.addAll(ref.holes()));
    List<HoleId> leftOut = holes(this::leftOutByMains);
    List<HoleId> empty = holes(h -> label(h) == HoleLabel.NONE && !ring.isBlocked(h));
    List<HoleId> shared = holes(h -> label(h) == HoleLabel.BOTH);
    Map<HoleRef, Integer> bore = new LinkedHashMap<>(layout.bore());
    // A hole that is shared no more is still as wide as it was.
    holes(h -> wasShared.contains(h) && !shared.contains(h) && !stated.contains(h))
        .forEach(h -> bore.put(HoleRef.of(h), 2));
    return layout.toBuilder()
        .mainsSkip(Optional.of(refs(leftOut)))
        .crossesSkip(refs(empty))
        .shared(refs(shared))
        .bore(bore)
        .crossesFirst(new EachSide<>(cross(Side.LEFT, true), cross(Side.RIGHT, true)))
        .crossesLast(new EachSide<>(cross(Side.LEFT, false), cross(Side.RIGHT, false)))
        .build();
  }

  private HoleLabel label(HoleId hole) {
    return labels.of(hole.side()).get(ring.place(hole));
  }

  private List<HoleId> holes(Predicate<HoleId> which) {
    List<HoleId> found = new ArrayList<>();
    for (Side side : Side.values()) {
      ring.list(side).stream().filter(which).forEach(found::add);
    }
    return found;
  }

  /** Whether mains pass this hole by on their way from the axis to the outermost one. */
  private boolean leftOutByMains(HoleId hole) {
    if (label(hole).main()) {
      return false;
    }
    return ring.list(hole.side()).stream()
        .anyMatch(h -> h.end() == hole.end() && h.number() > hole.number() && label(h).main());
  }

  private HoleId cross(Side side, boolean first) {
    List<HoleId> crosses = ring.list(side).stream().filter(h -> label(h).cross()).toList();
    return crosses.get(first ? 0 : crosses.size() - 1);
  }

  /**
   * Names of holes: one for both sides where both are meant; head first, from the axis outwards.
   */
  static List<HoleRef> refs(Collection<HoleId> holes) {
    Set<HoleId> all = new TreeSet<>(holes);
    List<HoleRef> refs = new ArrayList<>();
    for (End end : End.values()) {
      for (HoleId hole : all) {
        boolean both = all.contains(hole.mirrored());
        if (hole.end() == end && both && hole.side() == Side.LEFT) {
          refs.add(HoleRef.both(hole.end(), hole.number()));
        } else if (hole.end() == end && !both) {
          refs.add(HoleRef.of(hole));
        }
      }
    }
    return refs;
  }
}
