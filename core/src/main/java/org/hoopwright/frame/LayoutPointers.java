package org.hoopwright.frame;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.hoopwright.geometry.Side;

/**
 * JSON pointers (RFC 6901) to what a layout states, for findings.
 *
 * <p>A value that a file may write in several ways has the pointer of the way in which the layout's
 * file wrote it; for a layout built in code, of the shortest way.
 */
public final class LayoutPointers {

  private LayoutPointers() {}

  /**
   * The entry that names this hole in one of the layout's lists, such as {@code /holes/blocked/2};
   * the first of several, and the list itself when none does.
   *
   * @param list pointer of the list, such as {@code /holes/blocked}
   * @param refs what the list states
   */
  public static String entry(String list, List<HoleRef> refs, HoleId hole) {
    for (int i = 0; i < refs.size(); i++) {
      if (refs.get(i).holes().contains(hole)) {
        return list + "/" + i;
      }
    }
    return list;
  }

  /**
   * The last member that names this hole in one of the layout's tables, such as {@code
   * /holes/at/7H}, which is the one that counts; the table itself when none does.
   */
  public static String member(String table, Collection<HoleRef> refs, HoleId hole) {
    String pointer = table;
    for (HoleRef ref : refs) {
      if (ref.holes().contains(hole)) {
        pointer = table + "/" + ref;
      }
    }
    return pointer;
  }

  /** One side's part of a pair that may be written as one name for both sides. */
  public static String side(Layout layout, String pointer, EachSide<HoleId> pair, Side side) {
    String own = pointer + (side == Side.LEFT ? "/0" : "/1");
    return layout.places().knows(own) || !pair.left().equals(pair.right().mirrored())
        ? own
        : pointer;
  }

  /** The measured offset of a main, such as {@code /mains/offsets/left/head/3}. */
  public static String mainOffset(Layout layout, Side side, End end, int index) {
    return offset(layout, "/mains/offsets", side, Optional.of(end), "/" + index);
  }

  /** A side's measured offsets of mains at one end. */
  public static String mainOffsets(Layout layout, Side side, End end) {
    return offset(layout, "/mains/offsets", side, Optional.of(end), "");
  }

  /** The measured offset of a cross, such as {@code /crosses/offsets/left/3}. */
  public static String crossOffset(Layout layout, Side side, int index) {
    return offset(layout, "/crosses/offsets", side, Optional.empty(), "/" + index);
  }

  /** A side's measured offsets of crosses. */
  public static String crossOffsets(Layout layout, Side side) {
    return offset(layout, "/crosses/offsets", side, Optional.empty(), "");
  }

  private static String offset(
      Layout layout, String base, Side side, Optional<End> end, String index) {
    boolean sidesAlike;
    boolean endsAlike = true;
    if (end.isPresent()) {
      Optional<EachSide<StringOffsets.Mains>> mains = layout.mainsOffsets();
      sidesAlike = mains.map(EachSide::same).orElse(true);
      endsAlike = mains.map(m -> m.of(side).head().equals(m.of(side).throat())).orElse(true);
    } else {
      sidesAlike = layout.crossesOffsets().map(EachSide::same).orElse(true);
    }
    String sidePart = side == Side.LEFT ? "/left" : "/right";
    String endPart = end.map(e -> "/" + e.word()).orElse("");
    List<String> ways = new ArrayList<>(List.of(sidePart + endPart, endPart, sidePart, ""));
    for (String way : ways) {
      if (layout.places().knows(base + way + (index.isEmpty() ? "/0" : index))) {
        return base + way + index;
      }
    }
    return base + (sidesAlike ? "" : sidePart) + (endsAlike ? "" : endPart) + index;
  }
}
