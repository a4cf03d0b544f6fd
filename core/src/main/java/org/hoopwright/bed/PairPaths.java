package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hoopwright.frame.EachSide;
import org.jspecify.annotations.Nullable;

/**
 * The two cheapest ways to give crosses their holes when both sides have a choice and differ: a
 * dynamic programme over (cross, hole of side a, hole of side b), from the last cross to the first,
 * which leaves out every pair that no way as cheap as two known ones can pass. The bound for that
 * is each side's own least cost. Of ways that cost the same the one comes first whose first
 * difference lies nearer the head, on side a before side b.
 *
 * <p>Exact unless it ends at {@link #MAX_STEPS}; then the best way known is given and marked as not
 * proven.
 */
final class PairPaths {

  /** Steps from pair to pair that are tried at most. */
  static final long MAX_STEPS = 5_000_000;

  // A kept pair takes memory, so it counts for more than a step.
  private static final int STEPS_FOR_A_STATE = 16;

  // Rounds of improving one side against the other; each is cheaper or the last.
  private static final int ROUNDS = 20;

  private static final double MM = 1e-6;

  private final ChoiceSide a;
  private final ChoiceSide b;
  private final int crosses;
  private long steps;

  private PairPaths(ChoiceSide a, ChoiceSide b) {
    this.a = a;
    this.b = b;
    this.crosses = a.items().crosses();
  }

  /** The best ways; {@code left} of the result is side a. */
  static SharedChoice choose(ChoiceSide a, ChoiceSide b) {
    return new PairPaths(a, b).run();
  }

  /** A way for both sides, with its cost. */
  private static final class Pair {
    final int[] picksA;
    final int[] picksB;
    final long cost;

    Pair(int[] picksA, int[] picksB, long cost) {
      this.picksA = picksA;
      this.picksB = picksB;
      this.cost = cost;
    }

    boolean sameAs(Pair other) {
      return Arrays.equals(picksA, other.picksA) && Arrays.equals(picksB, other.picksB);
    }

    EachSide<int[]> picks() {
      return new EachSide<>(picksA, picksB);
    }
  }

  private SharedChoice run() {
    List<Pair> known = improve();
    List<Pair> found = search(known.size() < 2 ? SidePaths.NEVER : known.get(1).cost);
    boolean proven = !found.isEmpty();
    List<Pair> ways = proven ? found : known;
    Pair best = ways.get(0);
    Optional<Pair> second = ways.size() < 2 ? Optional.empty() : Optional.of(ways.get(1));
    return new SharedChoice(
        best.picks(),
        second.map(Pair::picks),
        second.map(s -> (s.cost - best.cost) * MM).orElse(0.0),
        proven);
  }

  /** One or two ways that are good already: each side in turn is the best against the other. */
  private List<Pair> improve() {
    List<Pair> seen = new ArrayList<>();
    int[] picksA = SharedChoice.paths(a, null, null).best().picks();
    long before = Long.MAX_VALUE;
    for (int round = 0; round < ROUNDS; round++) {
      SidePaths pathsB = SharedChoice.paths(b, a, picksA);
      int[] picksB = pathsB.best().picks();
      SidePaths.Way otherB = pathsB.second();
      if (otherB != null) {
        add(seen, picksA, otherB.picks());
      }
      SidePaths pathsA = SharedChoice.paths(a, b, picksB);
      add(seen, picksA, picksB);
      picksA = pathsA.best().picks();
      add(seen, picksA, picksB);
      SidePaths.Way otherA = pathsA.second();
      if (otherA != null) {
        add(seen, otherA.picks(), picksB);
      }
      long now = cost(picksA, picksB);
      if (now >= before) {
        break;
      }
      before = now;
    }
    seen.sort(Comparator.comparingLong(p -> p.cost)); // stable
    return seen.subList(0, Math.min(2, seen.size()));
  }

  private void add(List<Pair> seen, int[] picksA, int[] picksB) {
    Pair pair = new Pair(picksA, picksB, cost(picksA, picksB));
    if (seen.stream().noneMatch(pair::sameAs)) {
      seen.add(pair);
    }
  }

  private long cost(int[] picksA, int[] picksB) {
    long sum = 0;
    for (int j = 0; j < crosses; j++) {
      sum += a.skew(picksA[j], b, picksB[j]);
      if (j > 0) {
        sum += a.unevenness(picksA[j - 1], picksA[j]) + b.unevenness(picksB[j - 1], picksB[j]);
      }
    }
    return sum;
  }

  /** A pair of holes for one cross, with its two best ways on to the last cross. */
  private static final class State {
    final int holeA;
    final int holeB;
    final long[] cost = {SidePaths.NEVER, SidePaths.NEVER};
    final @Nullable State[] next = new State[2];
    final int[] nextRank = new int[2];

    State(int holeA, int holeB) {
      this.holeA = holeA;
      this.holeB = holeB;
    }

    void offer(long total, @Nullable State to, int rank) {
      if (total < cost[0]) {
        cost[1] = cost[0];
        next[1] = next[0];
        nextRank[1] = nextRank[0];
        put(0, total, to, rank);
      } else if (total < cost[1]) {
        put(1, total, to, rank);
      }
    }

    private void put(int at, long total, @Nullable State to, int rank) {
      cost[at] = total;
      next[at] = to;
      nextRank[at] = rank;
    }
  }

  /** The two cheapest ways, none dearer than the bound; nothing when the limit ended the search. */
  private List<Pair> search(long bound) {
    SideBounds boundsA = new SideBounds(a);
    SideBounds boundsB = new SideBounds(b);
    Layer later = new Layer(a.size());
    for (int j = crosses - 1; j >= 0; j--) {
      Layer layer = new Layer(a.size());
      for (int i = 0; i < a.size(); i++) {
        if (!boundsA.possible(i, j)) {
          continue;
        }
        for (int k = 0; k < b.size(); k++) {
          steps++;
          if (!boundsB.possible(k, j)
              || boundsA.through(i, j) + boundsB.through(k, j) + a.skew(i, b, k) > bound) {
            continue;
          }
          State state = new State(i, k);
          long before = boundsA.upTo(i, j) + boundsB.upTo(k, j);
          fill(state, j, later);
          if (before + state.cost[0] <= bound) {
            layer.add(state);
            steps += STEPS_FOR_A_STATE;
          }
          if (steps > MAX_STEPS) {
            return List.of();
          }
        }
      }
      later = layer;
    }
    return ways(later);
  }

  private void fill(State state, int j, Layer after) {
    long skew = a.skew(state.holeA, b, state.holeB);
    if (j == crosses - 1) {
      state.offer(skew, null, 0);
      return;
    }
    for (int i = state.holeA + 1; i <= lastNext(a, state.holeA); i++) {
      long gapA = a.unevenness(state.holeA, i);
      int toB = lastNext(b, state.holeB);
      for (State next : after.row(i)) {
        steps++;
        if (next.holeB > state.holeB && next.holeB <= toB) {
          long own = skew + gapA + b.unevenness(state.holeB, next.holeB);
          for (int rank = 0; rank < 2; rank++) {
            if (next.cost[rank] < SidePaths.NEVER) {
              state.offer(own + next.cost[rank], next, rank);
            }
          }
        }
      }
    }
  }

  /** The last hole that the next cross can take: a hole that must be taken is not passed over. */
  private static int lastNext(ChoiceSide side, int hole) {
    int last = hole + 1;
    while (last < side.size() - 1 && !side.must(last)) {
      last++;
    }
    return Math.min(last, side.size() - 1);
  }

  private List<Pair> ways(Layer first) {
    State start = new State(-1, -1); // stands before the first cross
    for (State state : first.all()) {
      for (int rank = 0; rank < 2; rank++) {
        if (state.cost[rank] < SidePaths.NEVER) {
          start.offer(state.cost[rank], state, rank);
        }
      }
    }
    List<Pair> found = new ArrayList<>();
    for (int rank = 0; rank < 2; rank++) {
      State state = start.next[rank];
      if (state != null) {
        int[] picksA = new int[crosses];
        int[] picksB = new int[crosses];
        int at = start.nextRank[rank];
        for (int j = 0; j < crosses && state != null; j++) {
          picksA[j] = state.holeA;
          picksB[j] = state.holeB;
          State from = state;
          state = from.next[at];
          at = from.nextRank[at];
        }
        found.add(new Pair(picksA, picksB, start.cost[rank]));
      }
    }
    return found;
  }

  /** The kept states of one cross, by their hole on side a. */
  private static final class Layer {
    private final List<List<State>> rows;

    Layer(int size) {
      rows = new ArrayList<>(Collections.nCopies(size, List.of()));
    }

    List<State> row(int holeA) {
      return rows.get(holeA);
    }

    void add(State state) {
      if (rows.get(state.holeA).isEmpty()) {
        rows.set(state.holeA, new ArrayList<>());
      }
      rows.get(state.holeA).add(state);
    }

    List<State> all() {
      return rows.stream().flatMap(List::stream).toList();
    }
  }
}
