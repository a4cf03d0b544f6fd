package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;

/**
 * Every labelling of a small frame with its cost, worked out from what {@code docs/bed.md} says and
 * without any code of the search: no programme, no bound, no table.
 */
final class BruteForceLabels {

  private final LabelQuestion q;
  private final Ring ring;
  private final int n;
  private final int crosses;

  private BruteForceLabels(LabelQuestion question) {
    q = question;
    ring = Ring.of(question.layout());
    n = question.layout().mainsPerSide();
    crosses = question.layout().crossesCount();
  }

  /** All labellings by their cost in micrometres, cheapest first. */
  static NavigableMap<Long, List<Labels>> all(LabelQuestion question) {
    return new BruteForceLabels(question).run();
  }

  private NavigableMap<Long, List<Labels>> run() {
    NavigableMap<Long, List<Labels>> found = new TreeMap<>();
    List<List<HoleLabel>> left = valid(Side.LEFT);
    List<List<HoleLabel>> right = valid(Side.RIGHT);
    for (List<HoleLabel> l : left) {
      long ownLeft = own(Side.LEFT, l);
      for (List<HoleLabel> r : right) {
        if (q.sameLabels() && !l.equals(r)) {
          continue;
        }
        long cost = ownLeft + own(Side.RIGHT, r) + between(l, r);
        found
            .computeIfAbsent(cost, c -> new ArrayList<>())
            .add(new Labels(/* left= */ l, /* right= */ r));
      }
    }
    return found;
  }

  private List<List<HoleLabel>> valid(Side side) {
    List<List<HoleLabel>> found = new ArrayList<>();
    extend(side, new ArrayList<>(), found);
    return found;
  }

  private void extend(Side side, List<HoleLabel> soFar, List<List<HoleLabel>> found) {
    if (soFar.size() == ring.size(side)) {
      int head = q.layout().headHoles().of(side);
      boolean fits =
          soFar.subList(0, head).stream().filter(HoleLabel::main).count() == n
              && soFar.subList(head, soFar.size()).stream().filter(HoleLabel::main).count() == n
              && soFar.stream().filter(HoleLabel::cross).count() == crosses;
      if (fits) {
        found.add(List.copyOf(soFar));
      }
      return;
    }
    for (HoleLabel label : q.allowed().of(side).get(soFar.size())) {
      soFar.add(label);
      extend(side, soFar, found);
      soFar.remove(soFar.size() - 1);
    }
  }

  private long um(double mm) {
    return Math.round(mm * 1000);
  }

  private long x(Side side, int place) {
    Point p = q.positions().get(ring.at(side, place));
    return um(side == Side.LEFT ? -p.x() : p.x());
  }

  private long y(Side side, int place) {
    return um(q.positions().get(ring.at(side, place)).y());
  }

  private List<Integer> places(List<HoleLabel> labels, boolean main, int from, int to) {
    List<Integer> places = new ArrayList<>();
    for (int p = from; p < to; p++) {
      if (main ? labels.get(p).main() : labels.get(p).cross()) {
        places.add(p);
      }
    }
    return places;
  }

  private static long square(double weight, double off, double pitch) {
    return Math.round(weight * off * (off / pitch));
  }

  /** What one side costs by itself. */
  private long own(Side side, List<HoleLabel> labels) {
    LabelWeights w = q.weights();
    int size = labels.size();
    int head = q.layout().headHoles().of(side);
    long widest = 0;
    for (int p = 0; p < size; p++) {
      widest = Math.max(widest, x(side, p));
    }
    List<Integer> atHead = places(labels, true, 0, head);
    List<Integer> atThroat = new ArrayList<>(places(labels, true, head, size));
    java.util.Collections.reverse(atThroat);
    int inner = Math.max(1, n / 2);
    int innerHead = Math.min(inner, head);
    int innerThroat = Math.min(inner, size - head);
    double pitchHead = Math.max(1000, Math.round(x(side, innerHead - 1) / (innerHead - 0.5)));
    double pitchThroat =
        Math.max(1000, Math.round(x(side, size - innerThroat) / (innerThroat - 0.5)));
    long cost = 0;
    for (int k = 0; k < n; k++) {
      double fan = x(side, atHead.get(k)) * (pitchThroat / pitchHead);
      cost += Math.round(w.mainSkew() * Math.abs(x(side, atThroat.get(k)) - fan));
    }
    cost += mains(side, atHead, pitchHead, widest) + mains(side, atThroat, pitchThroat, widest);
    cost += crosses(side, places(labels, false, 0, size));
    for (int p = 0; p < size; p++) {
      HoleId hole = ring.at(side, p);
      HoleLabel label = labels.get(p);
      if (label == HoleLabel.NONE && usable(side, p)) {
        cost += um(w.empty());
      }
      if (label == HoleLabel.BOTH) {
        cost += um(w.shared() + (q.doubtful().contains(hole) ? w.doubtful() : 0));
      }
      if (q.stated().isPresent() && q.stated().get().of(side).get(p) != label) {
        cost += um(w.changed());
      }
    }
    return cost;
  }

  private boolean usable(Side side, int place) {
    return !q.allowed().of(side).get(place).equals(Set.of(HoleLabel.NONE));
  }

  private long mains(Side side, List<Integer> mains, double pitch, long widest) {
    LabelWeights w = q.weights();
    long cost = square(w.unevenness() / 2, 2.0 * x(side, mains.get(0)) - pitch, pitch);
    for (int k = 1; k < mains.size(); k++) {
      int a = mains.get(k - 1);
      int b = mains.get(k);
      cost += square(w.unevenness(), Math.abs(x(side, a) - x(side, b)) - pitch, pitch);
      int out = 0;
      for (int p = Math.min(a, b) + 1; p < Math.max(a, b); p++) {
        out += usable(side, p) ? 1 : 0;
      }
      cost += Math.round(1000 * (w.skip() * out + w.doubleSkip() * Math.max(0, out - 1)));
    }
    double target = 2.2 * pitch;
    return cost
        + square(w.border(), widest - x(side, mains.get(mains.size() - 1)) - target, target);
  }

  private long crosses(Side side, List<Integer> crosses) {
    LabelWeights w = q.weights();
    int size = ring.size(side);
    int from = size / 4;
    int to = size - 1 - from;
    double pitch =
        to <= from
            ? 1000
            : Math.max(1000, Math.round((y(side, from) - y(side, to)) / (double) (to - from)));
    if (q.crossPitchMm().isPresent()) {
      pitch = Math.max(1000, um(q.crossPitchMm().get().of(side)));
    }
    long cost = 0;
    for (int j = 1; j < crosses.size(); j++) {
      double gap = y(side, crosses.get(j - 1)) - y(side, crosses.get(j));
      cost += square(w.unevenness(), gap - pitch, pitch);
    }
    double target = 1.7 * pitch;
    int last = crosses.get(crosses.size() - 1);
    cost += square(w.border(), y(side, 0) - y(side, crosses.get(0)) - target, target);
    return cost + square(w.border(), y(side, last) - y(side, size - 1) - target, target);
  }

  /** The skew of crosses. */
  private long between(List<HoleLabel> left, List<HoleLabel> right) {
    List<Integer> l = places(left, false, 0, left.size());
    List<Integer> r = places(right, false, 0, right.size());
    long cost = 0;
    for (int j = 0; j < l.size(); j++) {
      cost +=
          Math.round(
              q.weights().crossSkew() * Math.abs(y(Side.LEFT, l.get(j)) - y(Side.RIGHT, r.get(j))));
    }
    return cost;
  }
}
