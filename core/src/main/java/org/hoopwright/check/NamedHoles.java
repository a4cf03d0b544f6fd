package org.hoopwright.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutPointers;
import org.hoopwright.frame.NoRun;
import org.hoopwright.geometry.Side;

/**
 * A list or table in which a layout names holes.
 *
 * @param entries its names, in stated order
 * @param table whether each name has a value, of which the last counts
 */
record NamedHoles(List<Entry> entries, boolean table) {

  /**
   * A name.
   *
   * @param list where its list or table stands
   * @param step the step from there to it: its index, or in a table the name itself
   * @param ref the name
   */
  record Entry(String list, Object step, HoleRef ref) {

    /** Where it stands. */
    String pointer() {
      return list + "/" + step;
    }
  }

  /**
   * A hole for each side, which may be written as one name for both.
   *
   * @param list where they stand
   * @param stated the holes
   */
  record Pair(String list, EachSide<HoleId> stated) {

    List<HoleId> holes() {
      return List.of(stated.left(), stated.right());
    }

    /** Whether one name would do for both. */
    boolean alike() {
      return stated.left().equals(stated.right().mirrored());
    }

    /** Where one side's hole stands. */
    String pointer(Layout layout, Side side) {
      return LayoutPointers.side(layout, list, stated, side);
    }
  }

  /** Every list, every table and every stretch of a layout. */
  static List<NamedHoles> lists(Layout layout) {
    List<NamedHoles> all = new ArrayList<>();
    all.add(list("/holes/tieOff", layout.tieOff()));
    all.add(list("/holes/shared", layout.shared()));
    all.add(list("/holes/blocked", layout.blocked()));
    all.add(table("/holes/bore", layout.bore().keySet()));
    all.add(table("/holes/at", layout.at().keySet()));
    for (int i = 0; i < layout.noRun().size(); i++) {
      // Each end by itself: that they are one hole is another rule's to say.
      NoRun no = layout.noRun().get(i);
      all.add(one("/holes/noRun/" + i, 0, no.from()));
      all.add(one("/holes/noRun/" + i, 1, no.to()));
    }
    layout.mainsSkip().ifPresent(skip -> all.add(list("/mains/skip", skip)));
    all.add(list("/crosses/skip", layout.crossesSkip()));
    return all;
  }

  /** Every pair that a layout states. */
  static List<Pair> pairs(Layout layout) {
    List<Pair> all = new ArrayList<>();
    layout.crossesFirst().ifPresent(p -> all.add(new Pair("/crosses/first", p)));
    layout.crossesLast().ifPresent(p -> all.add(new Pair("/crosses/last", p)));
    layout.headZone().ifPresent(p -> all.add(new Pair("/headZone", p)));
    return all;
  }

  private static NamedHoles list(String pointer, List<HoleRef> refs) {
    List<Entry> entries = new ArrayList<>(refs.size());
    for (HoleRef ref : refs) {
      entries.add(new Entry(pointer, entries.size(), ref));
    }
    return new NamedHoles(entries, /* table= */ false);
  }

  private static NamedHoles table(String pointer, Collection<HoleRef> refs) {
    List<Entry> entries = new ArrayList<>(refs.size());
    for (HoleRef ref : refs) {
      entries.add(new Entry(pointer, ref, ref));
    }
    return new NamedHoles(entries, /* table= */ true);
  }

  private static NamedHoles one(String list, int index, HoleRef ref) {
    return new NamedHoles(List.of(new Entry(list, index, ref)), /* table= */ false);
  }
}
