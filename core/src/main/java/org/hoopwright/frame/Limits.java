package org.hoopwright.frame;

import org.hoopwright.geometry.Side;

/** What the numbers of a layout may be. A layout may state others; rules report them. */
public final class Limits {

  /** The fewest mains: two a side. */
  public static final int MIN_MAINS = 4;

  /** The fewest crosses. */
  public static final int MIN_CROSSES = 2;

  /** The most mains, and the most crosses: a side has no more holes for them. */
  public static final int MAX_STRINGS = 2 * HoleId.MAX_NUMBER;

  /** The most strings that a hole may be said to take. */
  public static final int MAX_BORE = 9;

  /** The greatest length, and the greatest coordinate of either sign, in mm. */
  public static final double MAX_MM = 10_000;

  private Limits() {}

  /** Whether this is a length in mm: above 0 and at most {@link #MAX_MM}. */
  public static boolean isLength(double mm) {
    return mm > 0 && mm <= MAX_MM;
  }

  /** Whether this is a coordinate in mm: at most {@link #MAX_MM} from 0. */
  public static boolean isCoordinate(double mm) {
    return Math.abs(mm) <= MAX_MM;
  }

  /**
   * Whether the counts of holes, mains and crosses are such as a bed can have: 1 to {@value
   * HoleId#MAX_NUMBER} holes at each end of each side, an even number of mains from {@value
   * #MIN_MAINS}, crosses from {@value #MIN_CROSSES}, and no more strings than holes there could be.
   */
  public static boolean countsSound(Layout layout) {
    int mains = layout.mainsCount();
    int crosses = layout.crossesCount();
    boolean holes = true;
    for (Side side : Side.values()) {
      holes &= isHoleCount(layout.headHoles().of(side));
      holes &= isHoleCount(layout.throatHoles().of(side));
    }
    return holes
        && mains % 2 == 0
        && mains >= MIN_MAINS
        && mains <= MAX_STRINGS
        && crosses >= MIN_CROSSES
        && crosses <= MAX_STRINGS;
  }

  /** Whether a side may count so many holes from one end. */
  public static boolean isHoleCount(int count) {
    return count >= 1 && count <= HoleId.MAX_NUMBER;
  }
}
