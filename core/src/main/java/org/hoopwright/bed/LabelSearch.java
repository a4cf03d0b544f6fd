package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hoopwright.finding.HoopwrightFault;
import org.hoopwright.geometry.Side;

/**
 * The assignment engine: labels main, cross, both or none for every hole, at the least cost.
 *
 * <p>Exact. Where both sides have the same labels, or one side is fixed, a dynamic programme gives
 * bounds so close that the branch and bound after it has little left to do. Where each side is free
 * the labellings of one side are gone through, cheapest first, each with the best of the other side
 * against it; both sides' programmes bound that. The result says when the limit ended the search.
 */
public final class LabelSearch {

  /** Labellings that are kept at most; a question with more ends at its limit. */
  static final int MOST_KEPT = 2000;

  private static final int ROUNDS = 10;

  private final LabelQuestion question;
  private final LabelCosts costs;
  private final ColumnSearch.Budget budget;
  private final Collector found;

  private LabelSearch(LabelQuestion question) {
    this.question = question;
    costs = new LabelCosts(question);
    budget = new ColumnSearch.Budget(question.maxNodes());
    found = new Collector(Math.round(question.windowMm() * 1000), budget);
  }

  /** Answers the question; pure, and the same on every machine. */
  public static LabelResult search(LabelQuestion question) {
    return new LabelSearch(question).run();
  }

  private LabelResult run() {
    if (question.sameLabels()) {
      searchOf(Column.same(costs, question))
          .run(
              new ColumnSearch.Sink() {
                @Override
                public long threshold() {
                  return found.threshold();
                }

                @Override
                public void found(byte[] labels, long cost) {
                  found.add(labels, labels, cost);
                }
              });
    } else {
      free();
    }
    return result();
  }

  private ColumnSearch searchOf(Column column) {
    return new ColumnSearch(column, new ColumnBounds(column), budget);
  }

  private void free() {
    Column left = Column.alone(costs, question, 0, /* leastSkew= */ true);
    Column right = Column.alone(costs, question, 1, /* leastSkew= */ true);
    int outer = left.freedom() <= right.freedom() ? 0 : 1;
    Column first = outer == 0 ? left : right;
    ColumnBounds ownBounds = new ColumnBounds(first);
    ColumnBounds otherBounds =
        new ColumnBounds(Column.alone(costs, question, 1 - outer, /* leastSkew= */ false));
    if (!ownBounds.fits() || !otherBounds.fits()) {
      budget.ended = true;
      return;
    }
    long otherLeast = otherBounds.whole();
    if (otherLeast >= Column.NEVER) {
      return;
    }
    improve(first, outer);
    new ColumnSearch(first, ownBounds, budget)
        .run(
            new ColumnSearch.Sink() {
              @Override
              public long threshold() {
                return found.threshold() - otherLeast;
              }

              @Override
              public void found(byte[] labels, long cost) {
                others(outer, labels.clone(), cost - first.skewOf(labels));
              }
            });
  }

  /** All labellings of the other side that go well with these. */
  private void others(int outer, byte[] labels, long own) {
    searchOf(Column.against(costs, question, 1 - outer, labels))
        .run(
            new ColumnSearch.Sink() {
              @Override
              public long threshold() {
                return found.threshold() - own;
              }

              @Override
              public void found(byte[] other, long cost) {
                add(outer, labels, other, own + cost);
              }
            });
  }

  private void add(int outer, byte[] labels, byte[] other, long cost) {
    if (outer == 0) {
      found.add(labels, other, cost);
    } else {
      found.add(other, labels, cost);
    }
  }

  /** A good labelling to begin with: each side in turn is the best against the other. */
  private void improve(Column first, int outer) {
    ColumnSearch.Best best = new ColumnSearch.Best();
    searchOf(first).run(best);
    byte[] labels = best.labels;
    int side = outer;
    long before = Column.NEVER;
    for (int round = 0; round < ROUNDS && labels.length > 0; round++) {
      ColumnSearch.Best next = new ColumnSearch.Best();
      searchOf(Column.against(costs, question, 1 - side, labels)).run(next);
      if (next.labels.length == 0) {
        return;
      }
      byte[][] both = new byte[2][];
      both[side] = labels;
      both[1 - side] = next.labels;
      long cost = costs.of(Collector.labels(both[0], both[1])).totalUm();
      found.add(both[0], both[1], cost);
      if (cost >= before) {
        return;
      }
      before = cost;
      labels = next.labels;
      side = 1 - side;
    }
  }

  private LabelResult result() {
    List<Labelling> all = new ArrayList<>();
    for (Collector.Found one : found.sorted()) {
      LabelCost cost = costs.of(one.labels());
      if (cost.totalUm() != one.cost()) {
        throw new HoopwrightFault(
            "The cost that the search found ("
                + one.cost()
                + ") is not the labelling's ("
                + cost
                + ").");
      }
      all.add(new Labelling(one.labels(), cost));
    }
    if (all.isEmpty()) {
      return new LabelResult(
          budget.ended ? LabelResult.Status.LIMIT_REACHED : LabelResult.Status.PROVEN_ABSENT,
          List.of(),
          List.of(),
          Optional.empty(),
          budget.nodes);
    }
    long best = all.get(0).cost().totalUm();
    long window = best + Math.round(question.windowMm() * 1000);
    return new LabelResult(
        budget.ended ? LabelResult.Status.LIMIT_REACHED : LabelResult.Status.PROVEN,
        all.stream().filter(l -> l.cost().totalUm() == best).toList(),
        all.stream()
            .filter(l -> l.cost().totalUm() > best && l.cost().totalUm() <= window)
            .toList(),
        all.stream().filter(l -> l.cost().totalUm() > best).findFirst(),
        budget.nodes);
  }

  /** Keeps the labellings within the window, and the runner-up. */
  static final class Collector {

    /** A labelling and its cost. */
    record Found(Labels labels, long cost) {}

    private final long window;
    private final ColumnSearch.Budget budget;
    private List<Found> kept = new ArrayList<>();
    private long best = Column.NEVER;
    private long second = Column.NEVER;

    Collector(long window, ColumnSearch.Budget budget) {
      this.window = window;
      this.budget = budget;
    }

    long threshold() {
      return Math.max(best + window, second);
    }

    void add(byte[] left, byte[] right, long cost) {
      if (cost > threshold()) {
        return;
      }
      Found one = new Found(labels(left, right), cost);
      if (kept.contains(one)) {
        return; // the first guess, met again
      }
      kept.add(one);
      if (cost < best) {
        second = best;
        best = cost;
      } else if (cost > best && cost < second) {
        second = cost;
      }
      long most = threshold();
      if (kept.size() > 64) {
        kept.removeIf(f -> f.cost() > most);
      }
      if (kept.size() > MOST_KEPT) {
        budget.ended = true;
      }
    }

    List<Found> sorted() {
      List<Found> list = new ArrayList<>(kept);
      list.removeIf(f -> f.cost() > threshold());
      list.sort(
          Comparator.comparingLong(Found::cost)
              .thenComparing(f -> f.labels().of(Side.LEFT).toString())
              .thenComparing(f -> f.labels().of(Side.RIGHT).toString()));
      return list;
    }

    static Labels labels(byte[] left, byte[] right) {
      return new Labels(/* left= */ list(left), /* right= */ list(right));
    }

    private static List<HoleLabel> list(byte[] labels) {
      List<HoleLabel> list = new ArrayList<>(labels.length);
      for (byte label : labels) {
        list.add(HoleLabel.ofCode(label));
      }
      return list;
    }
  }
}
