package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/**
 * A question with the same labels on both sides as a model for a constraint solver: places of mains
 * and crosses as variables, costs as tables between them. It shares the written costs with the
 * search and nothing of the way it looks.
 */
final class ChocoLabels {

  private final Model model = new Model();
  private final LabelQuestion question;
  private final LabelCosts costs;
  private final SideMeasure left;
  private final SideMeasure right;
  private final int size;
  private final int most;
  private final List<IntVar> parts = new ArrayList<>();
  private final IntVar[] head;
  private final IntVar[] throat;
  private final IntVar[] cross;
  private final IntVar total;

  /**
   * Makes the model.
   *
   * @param most the most that a labelling may cost, in micrometres
   */
  ChocoLabels(LabelQuestion question, int most) {
    this.question = question;
    this.most = most;
    costs = new LabelCosts(question);
    left = costs.measure(0);
    right = costs.measure(1);
    size = left.size;
    int n = question.layout().mainsPerSide();
    head = model.intVarArray("head", n, 0, left.head - 1);
    throat = model.intVarArray("throat", n, left.head, size - 1);
    cross = model.intVarArray("cross", question.layout().crossesCount(), 0, size - 1);
    holes();
    strings();
    total = model.intVar("total", 0, most);
    model.sum(parts.toArray(new IntVar[0]), "=", total).post();
  }

  private void holes() {
    BoolVar[] main = model.boolVarArray("main", size);
    BoolVar[] crossed = model.boolVarArray("crossed", size);
    for (int p = 0; p < size; p++) {
      List<Integer> codes = new ArrayList<>();
      Tuples tuples = new Tuples(true);
      for (HoleLabel label : HoleLabel.values()) {
        if (question.allowed().left().get(p).contains(label)
            && question.allowed().right().get(p).contains(label)) {
          codes.add(label.code());
          tuples.add(label.main() ? 1 : 0, label.cross() ? 1 : 0, node(p, label));
        }
      }
      IntVar cost = part("hole" + p);
      model.table(new IntVar[] {main[p], crossed[p], cost}, tuples).post();
    }
    IntVar one = model.intVar(1);
    for (IntVar h : head) {
      model.element(one, main, h, 0).post();
    }
    for (IntVar t : throat) {
      model.element(one, main, t, 0).post();
    }
    for (IntVar x : cross) {
      model.element(one, crossed, x, 0).post();
    }
    model.sum(main, "=", head.length + throat.length).post();
    model.sum(crossed, "=", cross.length).post();
  }

  private int node(int p, HoleLabel label) {
    long sum = 0;
    for (int s = 0; s < 2; s++) {
      sum += costs.changed(LabelCosts.side(s), p, label);
      sum += label == HoleLabel.NONE ? costs.empty(LabelCosts.side(s), p) : 0;
      sum += label == HoleLabel.BOTH ? costs.shared(LabelCosts.side(s), p) : 0;
    }
    return Math.toIntExact(sum);
  }

  private void strings() {
    int n = head.length;
    for (int k = 1; k < n; k++) {
      gap("head gap" + k, head[k - 1], head[k], (a, b) -> left.mainGap(a, b) + right.mainGap(a, b));
      gap(
          "throat gap" + k,
          throat[k],
          throat[k - 1],
          (a, b) -> left.mainGap(b, a) + right.mainGap(b, a));
    }
    for (IntVar[] end : List.of(head, throat)) {
      own("axis", end[0], p -> left.axisGap(p) + right.axisGap(p));
      own("border", end[n - 1], p -> left.mainBorder(p) + right.mainBorder(p));
    }
    for (int k = 0; k < n; k++) {
      Tuples tuples = new Tuples(true);
      for (int a = 0; a < left.head; a++) {
        for (int b = left.head; b < size; b++) {
          add(tuples, a, b, left.mainSkew(a, b) + right.mainSkew(a, b));
        }
      }
      model.table(new IntVar[] {head[k], throat[k], part("skew" + k)}, tuples).post();
    }
    for (int j = 0; j < cross.length; j++) {
      own("cross skew" + j, cross[j], p -> left.crossSkew(p, right, p));
      if (j > 0) {
        gap(
            "gap" + j,
            cross[j - 1],
            cross[j],
            (a, b) -> left.crossGap(a, b) + right.crossGap(a, b));
      }
    }
    own("first", cross[0], p -> left.firstBorder(p) + right.firstBorder(p));
    own("last", cross[cross.length - 1], p -> left.lastBorder(p) + right.lastBorder(p));
  }

  private interface Gap {
    long cost(int a, int b);
  }

  private void gap(String name, IntVar from, IntVar to, Gap gap) {
    Tuples tuples = new Tuples(true);
    for (int a = from.getLB(); a <= from.getUB(); a++) {
      for (int b = a + 1; b <= Math.min(to.getUB(), a + Column.REACH); b++) {
        add(tuples, a, b, gap.cost(a, b));
      }
    }
    model.table(new IntVar[] {from, to, part(name)}, tuples).post();
  }

  private void own(String name, IntVar at, IntToLongFunction cost) {
    Tuples tuples = new Tuples(true);
    for (int p = at.getLB(); p <= at.getUB(); p++) {
      if (cost.applyAsLong(p) <= most) {
        tuples.add(p, Math.toIntExact(cost.applyAsLong(p)));
      }
    }
    model.table(new IntVar[] {at, part(name)}, tuples).post();
  }

  private void add(Tuples tuples, int a, int b, long cost) {
    if (cost <= most) {
      tuples.add(a, b, Math.toIntExact(cost));
    }
  }

  private IntVar part(String name) {
    IntVar part = model.intVar(name, 0, most);
    parts.add(part);
    return part;
  }

  /** The least cost in micrometres, or -1 when there is no labelling up to the given cost. */
  int least() {
    return least(0);
  }

  /**
   * The least cost that is found in the time, or -1.
   *
   * @param seconds the time; 0 for as long as it takes
   */
  int least(int seconds) {
    if (seconds > 0) {
      model.getSolver().limitTime(seconds + "s");
    }
    IntVar[] places =
        IntStream.range(0, head.length)
            .boxed()
            .flatMap(k -> Stream.of(head[k], throat[k]))
            .toArray(IntVar[]::new);
    model
        .getSolver()
        .setSearch(Search.inputOrderLBSearch(places), Search.inputOrderLBSearch(cross));
    Solution best = model.getSolver().findOptimalSolution(total, false);
    return best == null ? -1 : best.getIntVal(total);
  }
}
