package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.variables.IntVar;

/**
 * The question of labels that both sides have alike as a model for a constraint solver: an oracle
 * for frames that are too large for brute force, and what the engine's speed is compared with. It
 * takes the costs of single choices from {@link Column} and shares nothing of the search.
 */
final class ChocoLabels {

  private final Column column;
  private final Model model = new Model("labels");
  private final List<IntVar> costs = new ArrayList<>();
  private final IntVar[] labels;
  private int bound;

  private ChocoLabels(Column column) {
    this.column = column;
    labels = new IntVar[column.size];
  }

  /** The least cost in micrometres; negative when no labelling fits. */
  static long least(LabelQuestion question) {
    Column column = Column.same(new LabelCosts(question), question);
    return new ChocoLabels(column).solve();
  }

  private long solve() {
    for (int p = 0; p < column.size; p++) {
      List<Integer> values = new ArrayList<>();
      for (int label = 0; label < 4; label++) {
        if (column.may(p, label)) {
          values.add(label);
        }
      }
      labels[p] = model.intVar("label" + p, ints(values));
      long[] node = column.node[p];
      unary(labels[p], value -> true, value -> node[value]);
    }
    IntVar[] head = strings(column.mains, 0, column.head, true, true);
    IntVar[] throat = strings(column.mains, column.head, column.size, true, false);
    IntVar[] crosses = strings(column.crosses, 0, column.size, false, true);
    mains(head, true);
    mains(throat, false);
    for (int k = 0; k < column.mains; k++) {
      pair(head[k], throat[k], (i, j) -> column.lean[i][j]);
    }
    for (int j = 0; j < column.crosses; j++) {
      unary(crosses[j], p -> column.mayCross(p), p -> column.skew[p][0]);
      if (j > 0) {
        pair(
            crosses[j - 1],
            crosses[j],
            (a, b) -> {
              int back = back(a, b, column::mayCross);
              return a >= b || back > Column.REACH ? -1 : column.crossGap[b][back];
            });
      }
    }
    unary(crosses[0], p -> true, p -> column.firstBorder[p]);
    unary(crosses[column.crosses - 1], p -> true, p -> column.lastBorder[p]);
    IntVar total = model.intVar("total", 0, Math.min(bound, IntVar.MAX_INT_BOUND));
    model.sum(costs.toArray(new IntVar[0]), "=", total).post();
    model
        .getSolver()
        .setSearch(org.chocosolver.solver.search.strategy.Search.minDomLBSearch(labels));
    Solution best = model.getSolver().findOptimalSolution(total, false);
    return best == null ? -1 : best.getIntVal(total);
  }

  private static int back(int from, int to, IntPredicate may) {
    int back = 1;
    for (int p = from + 1; p < to; p++) {
      back += may.test(p) ? 1 : 0;
    }
    return back;
  }

  /** The holes of strings of one kind, in the order of the list or against it. */
  private IntVar[] strings(int count, int from, int to, boolean main, boolean forwards) {
    int[] places =
        java.util.stream.IntStream.range(from, to)
            .filter(p -> main ? column.mayMain(p) : column.mayCross(p))
            .toArray();
    IntVar[] strings = new IntVar[count];
    int[] carries = main ? new int[] {1, 3} : new int[] {2, 3};
    for (int k = 0; k < count; k++) {
      strings[k] = places.length == 0 ? model.intVar(0) : model.intVar("s", places);
      IntVar label = model.intVar("carries", carries);
      model.element(label, labels, strings[k], 0).post();
      if (k > 0) {
        model.arithm(strings[k], forwards ? ">" : "<", strings[k - 1]).post();
      }
    }
    IntVar[] zone = Arrays.copyOfRange(labels, from, to);
    model.among(model.intVar(count), zone, carries).post();
    return strings;
  }

  private void mains(IntVar[] mains, boolean atHead) {
    unary(mains[0], p -> true, p -> column.axis[p]);
    unary(mains[mains.length - 1], p -> true, p -> column.mainBorder[p]);
    for (int k = 1; k < mains.length; k++) {
      pair(
          mains[k - 1],
          mains[k],
          (a, b) -> {
            int low = Math.min(a, b);
            int high = Math.max(a, b);
            int back = back(low, high, column::mayMain);
            return a == b || (a < b) != atHead || back > Column.REACH
                ? -1
                : column.mainGap[high][back];
          });
    }
  }

  /** A cost of one choice. */
  private interface One {
    long of(int value);
  }

  /** A cost of two choices together; negative where they do not go together. */
  private interface Two {
    long of(int a, int b);
  }

  private void unary(IntVar of, IntPredicate fits, One cost) {
    Tuples tuples = new Tuples(true);
    List<Integer> values = new ArrayList<>();
    for (int v = of.getLB(); v <= of.getUB(); v = of.nextValue(v)) {
      if (fits.test(v)) {
        int c = (int) cost.of(v);
        tuples.add(v, c);
        values.add(c);
      }
    }
    add(new IntVar[] {of}, tuples, values);
  }

  private void pair(IntVar a, IntVar b, Two cost) {
    Tuples tuples = new Tuples(true);
    List<Integer> values = new ArrayList<>();
    for (int v = a.getLB(); v <= a.getUB(); v = a.nextValue(v)) {
      for (int w = b.getLB(); w <= b.getUB(); w = b.nextValue(w)) {
        long c = cost.of(v, w);
        if (c >= 0) {
          tuples.add(v, w, (int) c);
          values.add((int) c);
        }
      }
    }
    add(new IntVar[] {a, b}, tuples, values);
  }

  private void add(IntVar[] of, Tuples tuples, List<Integer> values) {
    if (values.isEmpty()) {
      model.falseConstraint().post();
      return;
    }
    IntVar cost = model.intVar("cost", ints(values));
    IntVar[] all = Arrays.copyOf(of, of.length + 1);
    all[of.length] = cost;
    model.table(all, tuples, "CT+").post();
    costs.add(cost);
    bound += cost.getUB();
  }

  private static int[] ints(List<Integer> values) {
    return values.stream().mapToInt(Integer::intValue).distinct().sorted().toArray();
  }
}
