package org.hoopwright.bed;

/**
 * The least cost from each state of a {@link Column} to the throat: a dynamic programme over (hole,
 * mains and crosses so far, how far back the last of each lies). Exact but for the skew of mains,
 * of which it knows only the least that each main's head hole can have; so it is a bound from
 * below. States that {@link ColumnGuess} shows to be too dear are not worked out.
 */
final class ColumnBounds {

  /** The largest tables that are made; an entry takes 8 bytes. */
  static final long MAX_ENTRIES = 4_000_000;

  /** States that are worked out at most. */
  static final long MAX_STATES = 1_000_000;

  private static final int AGES = Column.REACH + 1;

  private final Column column;
  private final ColumnGuess guess;
  private final KeyTable known = new KeyTable();
  private final long[][] promised; // by place and label, while it is worked on
  private final boolean fits;

  /** How many states were worked out. */
  long states;

  ColumnBounds(Column column) {
    this.column = column;
    fits = (2L * column.mains + column.crosses) * column.size * AGES <= MAX_ENTRIES;
    guess = new ColumnGuess(column, fits);
    promised = new long[column.size][4];
  }

  /** Whether the programme is small enough, so far, to be worked out. */
  boolean fits() {
    return fits && states <= MAX_STATES;
  }

  /** The least cost of the whole column; {@link Column#NEVER} when no labelling fits. */
  long whole() {
    return guess.least(0, 0, 0, 0, 0) >= Column.NEVER ? Column.NEVER : toGo(0, 0, 0, 0, 0);
  }

  /** The least cost from this state on; the parameters are those of {@link Column#move}. */
  long toGo(int place, int k, int c, int am, int ac) {
    if (place == column.size) {
      return k == 2 * column.mains && c == column.crosses ? 0 : Column.NEVER;
    }
    long key = (((place * 1024L + k) * 1024 + c) * 16 + am) * 16 + ac;
    long before = known.get(key);
    if (before >= 0) {
      return before;
    }
    states++;
    if (states > MAX_STATES) {
      return 0; // a bound still, and the search ends
    }
    long[] promises = promised[place];
    for (int label = 0; label < 4; label++) {
      promises[label] = column.may(place, label) ? guess(place, k, c, am, ac, label) : Column.NEVER;
    }
    long least = Column.NEVER;
    while (true) {
      // The label that promises most, then the next, until none can be better.
      int label = 0;
      for (int l = 1; l < 4; l++) {
        label = promises[l] < promises[label] ? l : label;
      }
      if (promises[label] >= least) {
        break;
      }
      promises[label] = Column.NEVER;
      least = Math.min(least, via(place, k, c, am, ac, label));
    }
    known.put(key, least);
    return least;
  }

  /** No more than {@link #via}, without working out what follows. */
  long guess(int place, int k, int c, int am, int ac, int label) {
    return via(place, k, c, am, ac, label, /* exact= */ false);
  }

  /** The least cost from this state on when the hole has this label. */
  long via(int place, int k, int c, int am, int ac, int label) {
    return via(place, k, c, am, ac, label, /* exact= */ true);
  }

  private long via(int place, int k, int c, int am, int ac, int label, boolean exact) {
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
    long rest =
        exact ? toGo(place + 1, k2, c2, am2, ac2) : guess.least(place + 1, k2, c2, am2, ac2);
    return Math.min(Column.NEVER, cost + rest);
  }
}
