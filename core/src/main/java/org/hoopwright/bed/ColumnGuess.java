package org.hoopwright.bed;

import java.util.Arrays;

/**
 * A quick bound from below for the cost from a state of a {@link Column} to the throat: the least
 * that its mains can cost by themselves, and its crosses by themselves, and the holes that must be
 * shared or stay empty by their number. It keeps {@link ColumnBounds} from working out states that
 * cannot be on a cheapest way.
 */
final class ColumnGuess {

  private static final int AGES = Column.REACH + 1;

  private final Column column;
  private final int total; // strings
  // By mains so far; by the last one's number among the holes that may have one, and how far back.
  private final long[][] mains;
  private final long[] firstAtHead; // by place: of all mains, the first from here on
  private final long[] firstAtThroat; // of the throat's mains
  private final long[][] crosses; // by crosses so far; as for mains
  private final long[] firstCross;
  private final int[] mainPlaces; // holes that may have a main, those of the head first
  private final int[] mainsBefore; // how many of them come before a hole
  private final int[] crossPlaces;
  private final int[] crossesBefore;
  private final int[] mainsAfter; // holes from here on, at the same end, that may have a main
  private final int[] crossesAfter;
  private final int[] usable; // holes from here on that may have a string
  // Least and most strings so far less holes so far, by the holes that may be empty or shared.
  private final int[] low;
  private final int[] high;
  private final long empty;
  private final long shared;

  /**
   * Works the tables out.
   *
   * @param make false for a column that is too large; then nothing may be asked
   */
  ColumnGuess(Column column, boolean make) {
    this.column = column;
    int size = make ? column.size : 0;
    total = 2 * column.mains + column.crosses;
    mainsBefore = new int[size + 1];
    crossesBefore = new int[size + 1];
    int[] places = new int[size];
    int[] others = new int[size];
    for (int p = 0; p < size; p++) {
      places[mainsBefore[p]] = p;
      others[crossesBefore[p]] = p;
      mainsBefore[p + 1] = mainsBefore[p] + (column.mayMain(p) ? 1 : 0);
      crossesBefore[p + 1] = crossesBefore[p] + (column.mayCross(p) ? 1 : 0);
    }
    mainPlaces = Arrays.copyOf(places, mainsBefore[size]);
    crossPlaces = Arrays.copyOf(others, crossesBefore[size]);
    mainsAfter = new int[size + 1];
    crossesAfter = new int[size + 1];
    usable = new int[size + 1];
    long leastEmpty = Column.NEVER;
    long leastShared = Column.NEVER;
    for (int p = size - 1; p >= 0; p--) {
      boolean main = column.mayMain(p);
      boolean cross = column.mayCross(p);
      mainsAfter[p] = (p + 1 == column.head ? 0 : mainsAfter[p + 1]) + (main ? 1 : 0);
      crossesAfter[p] = crossesAfter[p + 1] + (cross ? 1 : 0);
      usable[p] = usable[p + 1] + (main || cross ? 1 : 0);
      if ((main || cross) && column.may(p, Column.NONE)) {
        leastEmpty = Math.min(leastEmpty, column.node[p][Column.NONE]);
      }
      if (column.may(p, Column.BOTH)) {
        leastShared = Math.min(leastShared, column.node[p][Column.BOTH]);
      }
    }
    empty = leastEmpty;
    shared = leastShared;
    low = new int[size + 1];
    high = new int[size + 1];
    limits();
    mains = new long[2 * column.mains + 1][];
    firstAtThroat = new long[size + 1];
    firstAtHead = new long[size + 1];
    crosses = new long[column.crosses + 1][];
    firstCross = new long[size + 1];
    if (make) {
      fillMains(column.head, size, column.mains, firstAtThroat, 0);
      fillMains(0, column.head, 0, firstAtHead, firstAtThroat[column.head]);
      fillCrosses();
    }
  }

  private void limits() {
    int size = low.length - 1;
    for (int p = 0; p < size; p++) {
      low[p + 1] = low[p] - (column.may(p, Column.NONE) ? 1 : 0);
      high[p + 1] = high[p] + (column.may(p, Column.BOTH) ? 1 : 0);
    }
    int none = 0;
    int both = 0;
    for (int p = size; p >= 0; p--) {
      low[p] = Math.max(low[p], total - size - both);
      high[p] = Math.min(high[p], total - size + none);
      if (p > 0) {
        none += column.may(p - 1, Column.NONE) ? 1 : 0;
        both += column.may(p - 1, Column.BOTH) ? 1 : 0;
      }
    }
  }

  /** The mains of one end, its last one first; {@code after} is what follows this end. */
  private void fillMains(int from, int end, int before, long[] first, long after) {
    int n = column.mains;
    int begin = mainsBefore[from];
    int count = mainsBefore[end] - begin;
    for (int k = n - 1; k >= 1; k--) {
      long[] here = new long[count * AGES];
      mains[before + k] = here;
      // The mains before and after need a hole each. What cannot be stays 0, which is a bound too.
      int last = count - (n - k);
      for (int m = k - 1; m < last; m++) {
        long least = Column.NEVER;
        for (int age = Column.REACH; age >= 1; age--) {
          if (m + age <= last) {
            least = Math.min(least, nextMain(begin, m + age, before + k, age, after));
          }
          here[m * AGES + age] = least;
        }
      }
    }
    first[end] = Column.NEVER;
    int m = count;
    for (int q = end - 1; q >= from; q--) {
      first[q] = first[q + 1];
      if (column.mayMain(q)) {
        m--;
        first[q] = Math.min(first[q], nextMain(begin, m, before, 0, after));
      }
    }
  }

  /** The next main in the m-th hole of its end that may have one, and all that follow. */
  private long nextMain(int begin, int m, int many, int age, long after) {
    int k = many + 1;
    long rest = k % column.mains == 0 ? after : mains[k][m * AGES + 1];
    return rest >= Column.NEVER
        ? Column.NEVER
        : column.mainAt(mainPlaces[begin + m], many, age) + rest;
  }

  private void fillCrosses() {
    int places = crossPlaces.length;
    int count = column.crosses;
    for (int c = count - 1; c >= 1; c--) {
      long[] here = new long[places * AGES];
      crosses[c] = here;
      int last = places - (count - c);
      for (int m = c - 1; m < last; m++) {
        long least = Column.NEVER;
        for (int age = Column.REACH; age >= 1; age--) {
          if (m + age <= last) {
            least = Math.min(least, nextCross(m + age, c, age));
          }
          here[m * AGES + age] = least;
        }
      }
    }
    firstCross[column.size] = Column.NEVER;
    int m = places;
    for (int q = column.size - 1; q >= 0; q--) {
      firstCross[q] = firstCross[q + 1];
      if (column.mayCross(q)) {
        m--;
        firstCross[q] = Math.min(firstCross[q], nextCross(m, 0, 0));
      }
    }
  }

  private long nextCross(int m, int c, int age) {
    long rest = c + 1 == column.crosses ? 0 : crosses[c + 1][m * AGES + 1];
    return rest >= Column.NEVER ? Column.NEVER : column.crossAt(crossPlaces[m], c, age) + rest;
  }

  /** No more than the cost from this state on; the parameters are those of {@link Column#move}. */
  long least(int place, int k, int c, int am, int ac) {
    int n = column.mains;
    int wanted = place < column.head ? n : 2 * n;
    int strings = total - k - c;
    int room = usable[place];
    if (wanted - k > mainsAfter[place]
        || column.crosses - c > crossesAfter[place]
        || k + c - place < low[place]
        || k + c - place > high[place]
        || (strings > room && shared >= Column.NEVER)
        || strings > 2 * room
        || (strings < room && empty >= Column.NEVER)) {
      return Column.NEVER;
    }
    long holes = strings > room ? (strings - room) * shared : (room - strings) * empty;
    long ofMains;
    if (k == 2 * n) {
      ofMains = 0;
    } else if (k == 0) {
      ofMains = firstAtHead[place];
    } else if (k == n) {
      ofMains = firstAtThroat[Math.max(place, column.head)];
    } else {
      int begin = place < column.head ? 0 : mainsBefore[column.head];
      ofMains = mains[k][(mainsBefore[place] - begin - am) * AGES + am];
    }
    long ofCrosses =
        c == column.crosses
            ? 0
            : c == 0 ? firstCross[place] : crosses[c][(crossesBefore[place] - ac) * AGES + ac];
    return Math.min(Column.NEVER, holes + ofMains + ofCrosses);
  }
}
