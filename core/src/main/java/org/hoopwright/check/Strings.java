package org.hoopwright.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hoopwright.frame.End;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutPointers;
import org.hoopwright.geometry.Side;

/** Mains or crosses, for rules that ask the same of both. */
enum Strings {
  /** The mains of both sides. */
  MAINS("mains", "main"),
  /** The crosses. */
  CROSSES("crosses", "cross");

  private final String member;
  private final String one;

  Strings(String member, String one) {
    this.member = member;
    this.one = one;
  }

  /**
   * A list of measured offsets.
   *
   * @param pointer where it stands
   * @param values the offsets in the layout's unit
   * @param count how many strings it is for
   */
  record Offsets(String pointer, List<Double> values, int count) {}

  /** The member of a layout file that is about them. */
  String member() {
    return member;
  }

  /** Pointer to that member. */
  String pointer() {
    return "/" + member;
  }

  /** The word for one of them. */
  String one() {
    return one;
  }

  /** How many there are. */
  int count(Layout layout) {
    return this == MAINS ? layout.mainsCount() : layout.crossesCount();
  }

  /** Every list of measured offsets; one that stands for several sides or ends is given once. */
  List<Offsets> offsets(Layout layout) {
    Map<String, Offsets> lists = new LinkedHashMap<>();
    for (Side side : Side.values()) {
      for (Offsets list : this == MAINS ? mains(layout, side) : crosses(layout, side)) {
        lists.putIfAbsent(list.pointer(), list);
      }
    }
    return List.copyOf(lists.values());
  }

  private static List<Offsets> mains(Layout layout, Side side) {
    List<Offsets> lists = new ArrayList<>();
    layout
        .mainsOffsets()
        .ifPresent(
            o -> {
              for (End end : End.values()) {
                lists.add(
                    new Offsets(
                        LayoutPointers.mainOffsets(layout, side, end),
                        o.of(side).at(end),
                        layout.mainsPerSide()));
              }
            });
    return lists;
  }

  private static List<Offsets> crosses(Layout layout, Side side) {
    return layout
        .crossesOffsets()
        .map(
            o ->
                List.of(
                    new Offsets(
                        LayoutPointers.crossOffsets(layout, side),
                        o.of(side).below(),
                        layout.crossesCount())))
        .orElse(List.of());
  }
}
