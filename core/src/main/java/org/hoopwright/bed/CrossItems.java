package org.hoopwright.bed;

import java.util.Arrays;
import java.util.List;
import org.hoopwright.frame.HoleId;

/**
 * The holes of one side that its crosses take or may take, in list order.
 *
 * @param items the holes
 * @param crosses how many crosses there are; at least the holes that must be taken, at most all
 */
record CrossItems(List<Item> items, int crosses) {

  /**
   * One hole.
   *
   * @param hole the hole
   * @param must whether a cross has to take it; if not, it is a shared hole that may carry its main
   *     alone
   */
  record Item(HoleId hole, boolean must) {}

  CrossItems {
    items = List.copyOf(items);
  }

  /** Whether there is nothing to choose. */
  boolean fixed() {
    return items.size() == crosses || items.stream().allMatch(Item::must);
  }

  /** The holes that may carry their main alone. */
  List<HoleId> optional() {
    return items.stream().filter(i -> !i.must()).map(Item::hole).toList();
  }

  /** The holes at these indices. */
  List<HoleId> holes(int[] indices) {
    return Arrays.stream(indices).mapToObj(i -> items.get(i).hole()).toList();
  }
}
