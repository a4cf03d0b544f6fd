package org.hoopwright.bed;

import org.hoopwright.finding.HoopwrightFault;
import org.jspecify.annotations.Nullable;

/**
 * The two cheapest ways to give a side's crosses their holes, in list order, with every hole that
 * must be taken: a dynamic programme over (hole, cross). Of ways that cost the same the one comes
 * first whose first difference lies nearer the head.
 *
 * <p>Time and memory are bounded by holes × crosses × the longest row of holes that need not be
 * taken.
 */
final class SidePaths {

  /** Costs in whole nanometres, so that sums do not depend on their order. */
  interface Costs {
    /** Of hole i for cross j, both from 0. */
    long node(int hole, int cross);

    /** Of crosses that follow each other in these holes. */
    long gap(int hole, int next);
  }

  /** More than any sum of costs. */
  static final long NEVER = Long.MAX_VALUE / 4;

  /** One way: its cost, and the hole of each cross. */
  static final class Way {
    private final long cost;
    private final int[] picks;

    Way(long cost, int[] picks) {
      this.cost = cost;
      this.picks = picks.clone();
    }

    long cost() {
      return cost;
    }

    int[] picks() {
      return picks.clone();
    }
  }

  private final boolean[] must;
  private final int crosses;
  private final Costs costs;
  // toGo[rank][j][i]: cost from cross j in hole i to the last cross, its own node included.
  private final long[][][] toGo;
  private final int[][][] next;
  private final int[][][] nextRank;
  private final int[] mustBefore;

  SidePaths(boolean[] must, int crosses, Costs costs) {
    this.must = must.clone();
    this.crosses = crosses;
    this.costs = costs;
    int n = must.length;
    toGo = new long[2][crosses][n];
    next = new int[2][crosses][n];
    nextRank = new int[2][crosses][n];
    mustBefore = new int[n + 1];
    for (int i = 0; i < n; i++) {
      mustBefore[i + 1] = mustBefore[i] + (must[i] ? 1 : 0);
    }
    for (int j = crosses - 1; j >= 0; j--) {
      for (int i = 0; i < n; i++) {
        fill(i, j);
      }
    }
  }

  /** Whether hole i can be cross j at all, by the numbers of holes before and after it. */
  boolean possible(int i, int j) {
    int after = must.length - 1 - i;
    int mustAfter = mustBefore[must.length] - mustBefore[i + 1];
    int left = crosses - 1 - j;
    return mustBefore[i] <= j && j <= i && mustAfter <= left && left <= after;
  }

  private void fill(int i, int j) {
    toGo[0][j][i] = NEVER;
    toGo[1][j][i] = NEVER;
    if (!possible(i, j)) {
      return;
    }
    long node = costs.node(i, j);
    if (j == crosses - 1) {
      toGo[0][j][i] = node;
      return;
    }
    for (int k = i + 1; k < must.length; k++) {
      for (int rank = 0; rank < 2; rank++) {
        long rest = toGo[rank][j + 1][k];
        if (rest < NEVER) {
          offer(i, j, node + costs.gap(i, k) + rest, k, rank);
        }
      }
      if (must[k]) {
        return; // a hole that must be taken is never passed over
      }
    }
  }

  private void offer(int i, int j, long cost, int k, int rank) {
    if (cost < toGo[0][j][i]) {
      toGo[1][j][i] = toGo[0][j][i];
      next[1][j][i] = next[0][j][i];
      nextRank[1][j][i] = nextRank[0][j][i];
      put(0, i, j, cost, k, rank);
    } else if (cost < toGo[1][j][i]) {
      put(1, i, j, cost, k, rank);
    }
  }

  private void put(int at, int i, int j, long cost, int k, int rank) {
    toGo[at][j][i] = cost;
    next[at][j][i] = k;
    nextRank[at][j][i] = rank;
  }

  /**
   * Least cost from cross j in hole i to the last cross; {@link #NEVER} or more if there is no way.
   */
  long toGo(int i, int j) {
    return toGo[0][j][i];
  }

  /** The cheapest way; there is always one. */
  Way best() {
    Way way = way(0);
    if (way == null) {
      throw new HoopwrightFault(
          "A side whose crosses fit has no way to place " + crosses + " of them.");
    }
    return way;
  }

  /** The runner-up, or null when there is no other way. */
  @Nullable Way second() {
    return way(1);
  }

  private @Nullable Way way(int wanted) {
    long[] cost = {NEVER, NEVER};
    int[] start = new int[2];
    int[] startRank = new int[2];
    for (int i = 0; i < must.length; i++) {
      for (int rank = 0; rank < 2; rank++) {
        long c = toGo[rank][0][i];
        if (c < cost[0]) {
          cost[1] = cost[0];
          start[1] = start[0];
          startRank[1] = startRank[0];
          cost[0] = c;
          start[0] = i;
          startRank[0] = rank;
        } else if (c < cost[1]) {
          cost[1] = c;
          start[1] = i;
          startRank[1] = rank;
        }
      }
    }
    if (cost[wanted] >= NEVER) {
      return null;
    }
    int[] picks = new int[crosses];
    int i = start[wanted];
    int rank = startRank[wanted];
    for (int j = 0; j < crosses; j++) {
      picks[j] = i;
      int from = i;
      i = next[rank][j][from];
      rank = nextRank[rank][j][from];
    }
    return new Way(cost[wanted], picks);
  }
}
