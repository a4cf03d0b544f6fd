package org.hoopwright.bed;

import java.util.Arrays;

/**
 * All labellings of a {@link Column} that are cheap enough, by branch and bound: hole by hole from
 * the head to the throat, cheapest label first, leaving what {@link ColumnBounds} shows to be too
 * dear.
 */
final class ColumnSearch {

  /** Takes what is found, and says what is still wanted. */
  interface Sink {
    /** Labellings that cost more than this are not wanted; falls as cheaper ones are found. */
    long threshold();

    /** A labelling with its cost in this column; the array is used again. */
    void found(byte[] labels, long cost);
  }

  /** Nodes left; shared by all searches of one question. */
  static final class Budget {
    long nodes;
    final long most;
    boolean ended;

    Budget(long most) {
      this.most = most;
    }

    boolean take(long count) {
      nodes += count;
      ended |= nodes > most;
      return !ended;
    }
  }

  private final Column column;
  private final ColumnBounds bounds;
  private final Budget budget;
  private final byte[] labels;
  private final int[] headMain; // by number of main, from 1
  private final long[][] via;

  ColumnSearch(Column column, ColumnBounds bounds, Budget budget) {
    this.column = column;
    this.bounds = bounds;
    this.budget = budget;
    labels = new byte[column.size];
    headMain = new int[column.mains + 1];
    via = new long[column.size][4];
  }

  /** Hands every labelling at or below the sink's threshold to the sink, unless the budget ends. */
  void run(Sink sink) {
    if (!bounds.fits()) {
      budget.ended = true;
      return;
    }
    long before = bounds.states;
    long least = bounds.whole();
    if (budget.take(bounds.states - before) && least < Column.NEVER) {
      before = bounds.states;
      search(0, 0, 0, 0, 0, 0L, sink);
      budget.take(bounds.states - before);
    }
    budget.ended |= !bounds.fits();
  }

  private void search(int place, int k, int c, int am, int ac, long spent, Sink sink) {
    if (place == column.size) {
      sink.found(labels, spent);
      return;
    }
    if (!budget.take(1)) {
      return;
    }
    long[] costs = via[place];
    for (int label = 0; label < 4; label++) {
      costs[label] =
          column.may(place, label)
              ? plus(bounds.guess(place, k, c, am, ac, label), place, k, label)
              : Column.NEVER;
    }
    int exact = 0; // a bit for each label whose cost is no longer a guess
    while (true) {
      int label = cheapest(costs);
      if (costs[label] >= Column.NEVER || spent + costs[label] > sink.threshold()) {
        return;
      }
      if ((exact & 1 << label) == 0) {
        // What follows is worked out only now: what was found meanwhile may have ruled it out.
        exact |= 1 << label;
        costs[label] = plus(bounds.via(place, k, c, am, ac, label), place, k, label);
        continue;
      }
      costs[label] = Column.NEVER;
      boolean main = Column.isMain(label);
      int k2 = k + (main ? 1 : 0);
      int c2 = c + (Column.isCross(label) ? 1 : 0);
      if (main && place < column.head) {
        headMain[k2] = place;
      }
      long own =
          column.move(place, k, c, am, ac, label)
              + (main && place >= column.head ? excess(place, k) : 0);
      labels[place] = (byte) label;
      search(
          place + 1,
          k2,
          c2,
          column.nextMainAge(place, k2, am, label),
          column.nextCrossAge(place, c2, ac, label),
          spent + own,
          sink);
      if (budget.ended) {
        return;
      }
    }
  }

  /** A bound with the excess skew of the main that ends here, if one does. */
  private long plus(long bound, int place, int k, int label) {
    return bound >= Column.NEVER || place < column.head || !Column.isMain(label)
        ? bound
        : Math.min(Column.NEVER, bound + excess(place, k));
  }

  /** What the skew of the main that ends here is beyond the least that was counted at its head. */
  private long excess(int place, int k) {
    int from = headMain[2 * column.mains - k];
    return column.lean[from][place] - column.leanLeast[from];
  }

  private static int cheapest(long[] costs) {
    int best = 0;
    for (int i = 1; i < costs.length; i++) {
      if (costs[i] < costs[best]) {
        best = i;
      }
    }
    return best;
  }

  /** Keeps the cheapest labelling only; of equal ones the first found. */
  static final class Best implements Sink {
    long cost = Column.NEVER;
    byte[] labels = {};

    @Override
    public long threshold() {
      return cost - 1;
    }

    @Override
    public void found(byte[] found, long total) {
      cost = total;
      labels = Arrays.copyOf(found, found.length);
    }
  }
}
