package org.hoopwright.bed;

/**
 * The least cost from each state of a {@link Column} to the throat: a dynamic programme over (hole,
 * mains and crosses so far, how far back the last of each lies). Exact but for the skew of mains,
 * of which it knows only the least that each main's head hole can have; so it is a bound from
 * below.
 */
final class ColumnBounds {

  /** States that are kept at most; each takes 8 bytes. */
  static final long MAX_STATES = 6_000_000;

  private static final int AGES = Column.REACH + 1;

  private final Column column;
  private final int total; // strings
  private final int[] low; // least strings so far less holes so far
  private final int width;
  private final long[][] memo; // cost + 1; 0 for not known yet
  private final int[] mainsAfter; // holes from here on, at the same end, that may have a main
  private final int[] crossesAfter;
  private final boolean fits;

  /** How many states were worked out. */
  long states;

  ColumnBounds(Column column) {
    this.column = column;
    int size = column.size;
    total = 2 * column.mains + column.crosses;
    low = new int[size + 1];
    int[] high = new int[size + 1];
    mainsAfter = new int[size + 1];
    crossesAfter = new int[size + 1];
    int none = 0;
    int both = 0;
    int[] noneBefore = new int[size + 1];
    int[] bothBefore = new int[size + 1];
    for (int p = 0; p < size; p++) {
      noneBefore[p] = none;
      bothBefore[p] = both;
      none += column.may(p, Column.NONE) ? 1 : 0;
      both += column.may(p, Column.BOTH) ? 1 : 0;
    }
    noneBefore[size] = none;
    bothBefore[size] = both;
    for (int p = size - 1; p >= 0; p--) {
      boolean main = column.mayMain(p);
      boolean cross = column.mayCross(p);
      mainsAfter[p] = (p + 1 == column.head ? 0 : mainsAfter[p + 1]) + (main ? 1 : 0);
      crossesAfter[p] = crossesAfter[p + 1] + (cross ? 1 : 0);
    }
    int widest = 1;
    int end = total - size;
    for (int p = 0; p <= size; p++) {
      low[p] = Math.max(-noneBefore[p], end - (both - bothBefore[p]));
      high[p] = Math.min(bothBefore[p], end + (none - noneBefore[p]));
      widest = Math.max(widest, high[p] - low[p] + 1);
    }
    width = widest;
    memo = new long[size][];
    fits = (long) size * (column.mains + 1) * width * AGES * AGES <= MAX_STATES;
  }

  /** Whether the programme is small enough to be worked out. */
  boolean fits() {
    return fits;
  }

  /** The least cost of the whole column; {@link Column#NEVER} when no labelling fits. */
  long whole() {
    return toGo(0, 0, 0, 0, 0);
  }

  /** The least cost from this state on; the parameters are those of {@link Column#move}. */
  long toGo(int place, int k, int c, int am, int ac) {
    if (place == column.size) {
      return k == 2 * column.mains && c == column.crosses ? 0 : Column.NEVER;
    }
    int over = k + c - place - low[place];
    int wanted = place < column.head ? column.mains : 2 * column.mains;
    if (over < 0
        || over >= width
        || wanted - k > mainsAfter[place]
        || column.crosses - c > crossesAfter[place]) {
      return Column.NEVER;
    }
    long[] row = memo[place];
    int own = place < column.head ? k : k - column.mains;
    if (row == null) {
      row = new long[(column.mains + 1) * width * AGES * AGES];
      memo[place] = row;
    }
    int index = ((own * width + over) * AGES + am) * AGES + ac;
    long known = row[index];
    if (known != 0) {
      return known - 1;
    }
    states++;
    long least = Column.NEVER;
    for (int label = 0; label < 4; label++) {
      if (column.may(place, label)) {
        least = Math.min(least, via(place, k, c, am, ac, label));
      }
    }
    row[index] = least + 1;
    return least;
  }

  /** The least cost from this state on when the hole has this label. */
  long via(int place, int k, int c, int am, int ac, int label) {
    long cost = column.move(place, k, c, am, ac, label);
    if (cost >= Column.NEVER) {
      return Column.NEVER;
    }
    int k2 = k + (Column.isMain(label) ? 1 : 0);
    int c2 = c + (Column.isCross(label) ? 1 : 0);
    int am2 = column.nextMainAge(place, k2, am, label);
    int ac2 = column.nextCrossAge(place, c2, ac, label);
    if (am2 > Column.REACH || ac2 > Column.REACH) {
      return Column.NEVER;
    }
    if (place + 1 == column.head && k2 != column.mains) {
      return Column.NEVER;
    }
    return Math.min(Column.NEVER, cost + toGo(place + 1, k2, c2, am2, ac2));
  }
}
