package org.hoopwright.bed;

import java.util.Set;
import org.hoopwright.geometry.Side;

/**
 * One list of labels to be chosen, with what each choice costs: the labels of one side, or those
 * that both sides have alike, with the costs of both.
 *
 * <p>A labelling is made hole by hole from the head to the throat. What a hole's label costs
 * depends on how many mains and crosses came before and on how far back the last of each lies; only
 * the skew of mains reaches farther, from the throat back to the head.
 */
final class Column {

  /**
   * Between neighbouring mains of an end, and between neighbouring crosses, fewer holes than this
   * that could take such a string are left out. Our choice: no frame comes near it, and it keeps
   * the programme small.
   */
  static final int REACH = 8;

  /** More than any sum of costs. */
  static final long NEVER = Long.MAX_VALUE / 4;

  // Codes of labels.
  static final int NONE = 0;
  static final int MAIN = 1;
  static final int CROSS = 2;
  static final int BOTH = 3;

  final int size;
  final int head;
  final int mains;
  final int crosses;
  final int[] mask; // a bit for each label allowed
  final long[][] node; // by place and label: empty, shared and changed holes
  final long[][] mainGap; // by place and how far back
  final long[][] crossGap;
  final long[] axis;
  final long[] mainBorder;
  final long[] firstBorder;
  final long[] lastBorder;
  final long[][] lean; // by place at the head and at the throat
  final long[] leanLeast; // by place at the head
  final long[][] skew; // by place; one number, or one for each cross where the other side is fixed

  private Column(LabelCosts costs, LabelQuestion question, int[] sides) {
    SideMeasure first = costs.measure(sides[0]);
    size = first.size;
    head = first.head;
    mains = question.layout().mainsPerSide();
    crosses = question.layout().crossesCount();
    mask = new int[size];
    node = new long[size][4];
    mainGap = new long[size][REACH + 1];
    crossGap = new long[size][REACH + 1];
    axis = new long[size];
    mainBorder = new long[size];
    firstBorder = new long[size];
    lastBorder = new long[size];
    skew = new long[size][];
    lean = new long[head][size];
    leanLeast = new long[head];
    for (int s : sides) {
      masks(question, LabelCosts.side(s), s == sides[0]);
    }
    for (int s : sides) {
      add(costs, LabelCosts.side(s), costs.measure(s));
    }
    leans(costs, sides);
  }

  private void masks(LabelQuestion question, Side side, boolean isFirst) {
    for (int p = 0; p < size; p++) {
      int bits = bits(question.allowed().of(side).get(p));
      mask[p] = isFirst ? bits : mask[p] & bits;
    }
  }

  private void add(LabelCosts costs, Side side, SideMeasure m) {
    for (int p = 0; p < size; p++) {
      for (HoleLabel label : HoleLabel.values()) {
        node[p][label.code()] += costs.changed(side, p, label);
      }
      node[p][NONE] += costs.empty(side, p);
      node[p][BOTH] += costs.shared(side, p);
      if (mayMain(p)) {
        axis[p] += m.axisGap(p);
        mainBorder[p] += m.mainBorder(p);
        int first = p < head ? 0 : head;
        int back = 0;
        for (int q = p - 1; q >= first && back < REACH; q--) {
          if (mayMain(q)) {
            mainGap[p][++back] += m.mainGap(q, p);
          }
        }
      }
      if (mayCross(p)) {
        firstBorder[p] += m.firstBorder(p);
        lastBorder[p] += m.lastBorder(p);
        int back = 0;
        for (int q = p - 1; q >= 0 && back < REACH; q--) {
          if (mayCross(q)) {
            crossGap[p][++back] += m.crossGap(q, p);
          }
        }
      }
    }
  }

  private static int bits(Set<HoleLabel> labels) {
    int bits = 0;
    for (HoleLabel label : labels) {
      bits |= 1 << label.code();
    }
    return bits;
  }

  private void leans(LabelCosts costs, int[] sides) {
    for (int i = 0; i < head; i++) {
      leanLeast[i] = NEVER;
      if (!mayMain(i)) {
        continue;
      }
      for (int j = head; j < size; j++) {
        if (mayMain(j) && mayBeOne(i, j)) {
          for (int s : sides) {
            lean[i][j] += costs.measure(s).mainSkew(i, j);
          }
          leanLeast[i] = Math.min(leanLeast[i], lean[i][j]);
        }
      }
    }
  }

  /** Whether a main of one number may have both holes, by how many holes there are about them. */
  private boolean mayBeOne(int atHead, int atThroat) {
    int t = size - 1 - atThroat;
    int least = Math.max(mains - (head - 1 - atHead), mains - (size - head - 1 - t));
    return Math.max(1, least) <= Math.min(mains, Math.min(atHead, t) + 1);
  }

  /** The labels that both sides have alike. */
  static Column same(LabelCosts costs, LabelQuestion question) {
    Column column = new Column(costs, question, new int[] {0, 1});
    for (int p = 0; p < column.size; p++) {
      column.skew[p] = new long[] {costs.measure(0).crossSkew(p, costs.measure(1), p)};
    }
    return column;
  }

  /**
   * The labels of one side, while the other is open: each cross costs at least the skew against the
   * other side's nearest hole, or nothing.
   */
  static Column alone(LabelCosts costs, LabelQuestion question, int side, boolean leastSkew) {
    Column column = new Column(costs, question, new int[] {side});
    SideMeasure here = costs.measure(side);
    SideMeasure there = costs.measure(1 - side);
    for (int p = 0; p < column.size; p++) {
      long least = leastSkew ? NEVER : 0;
      for (int q = 0; leastSkew && q < there.size; q++) {
        int bits = bits(question.allowed().of(LabelCosts.side(1 - side)).get(q));
        if ((bits & (1 << CROSS | 1 << BOTH)) != 0) {
          least = Math.min(least, here.crossSkew(p, there, q));
        }
      }
      column.skew[p] = new long[] {least};
    }
    return column;
  }

  /** The labels of one side against fixed labels of the other. */
  static Column against(LabelCosts costs, LabelQuestion question, int side, byte[] other) {
    Column column = new Column(costs, question, new int[] {side});
    SideMeasure here = costs.measure(side);
    SideMeasure there = costs.measure(1 - side);
    for (int p = 0; p < column.size; p++) {
      column.skew[p] = new long[column.crosses];
      int j = 0;
      for (int q = 0; q < other.length && j < column.crosses; q++) {
        if (isCross(other[q])) {
          column.skew[p][j++] = here.crossSkew(p, there, q);
        }
      }
    }
    return column;
  }

  boolean mayMain(int place) {
    return may(place, MAIN) || may(place, BOTH);
  }

  boolean mayCross(int place) {
    return may(place, CROSS) || may(place, BOTH);
  }

  boolean may(int place, int label) {
    return (mask[place] & 1 << label) != 0;
  }

  static boolean isMain(int label) {
    return (label & MAIN) != 0;
  }

  static boolean isCross(int label) {
    return (label & CROSS) != 0;
  }

  /** How many labellings there are at most, as a logarithm; to choose which side to open first. */
  double freedom() {
    double sum = 0;
    for (int bits : mask) {
      sum += StrictMath.log(Math.max(1, Integer.bitCount(bits)));
    }
    return sum;
  }

  /** The skew of crosses that a labelling of this column carries. */
  long skewOf(byte[] labels) {
    long sum = 0;
    int j = 0;
    for (int p = 0; p < size; p++) {
      if (isCross(labels[p])) {
        sum += skewAt(p, j++);
      }
    }
    return sum;
  }

  private long skewAt(int place, int cross) {
    long[] row = skew[place];
    return row.length == 1 ? row[0] : row[cross];
  }

  /**
   * What it costs to give a hole a label, or {@link #NEVER}.
   *
   * @param place the hole
   * @param k mains before it, of both ends
   * @param c crosses before it
   * @param am how far back the last main of its end lies, counted in holes that may take a main; 0
   *     for none, or when its end is done
   * @param ac how far back the last cross lies, counted in holes that may take one; 0 for none, or
   *     when all are done
   * @param label the label
   */
  long move(int place, int k, int c, int am, int ac, int label) {
    long cost = node[place][label];
    if (isMain(label)) {
      int number = place < head ? k + 1 : 2 * mains - k;
      if (number > mains || number < 1) {
        return NEVER;
      }
      cost += mainAt(place, k, am);
    }
    if (isCross(label)) {
      if (c >= crosses) {
        return NEVER;
      }
      cost += crossAt(place, c, ac);
    }
    return Math.min(cost, NEVER);
  }

  /** What a main in this hole costs after k mains, the last of them {@code am} back. */
  long mainAt(int place, int k, int am) {
    if (place < head) {
      long cost = k == 0 ? axis[place] : mainGap[place][am];
      return cost + (k == mains - 1 ? mainBorder[place] : 0) + leanLeast[place];
    }
    long cost = k == mains ? mainBorder[place] : mainGap[place][am];
    return cost + (k == 2 * mains - 1 ? axis[place] : 0);
  }

  /** What a cross in this hole costs after c crosses, the last of them {@code ac} back. */
  long crossAt(int place, int c, int ac) {
    long cost = c == 0 ? firstBorder[place] : crossGap[place][ac];
    return cost + (c == crosses - 1 ? lastBorder[place] : 0) + skewAt(place, c);
  }

  /** How far back the last main lies at the next hole; {@link #REACH} + 1 if too far. */
  int nextMainAge(int place, int kAfter, int am, int label) {
    if (kAfter == (place < head ? mains : 2 * mains)) {
      return 0;
    }
    return isMain(label) ? 1 : am == 0 ? 0 : am + (mayMain(place) ? 1 : 0);
  }

  /** How far back the last cross lies at the next hole; {@link #REACH} + 1 if too far. */
  int nextCrossAge(int place, int cAfter, int ac, int label) {
    if (cAfter == crosses) {
      return 0;
    }
    return isCross(label) ? 1 : ac == 0 ? 0 : ac + (mayCross(place) ? 1 : 0);
  }
}
