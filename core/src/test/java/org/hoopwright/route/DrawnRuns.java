package org.hoopwright.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Ring;

/**
 * Runs as lines in the plane: along the frame in places, across it from the back (-1) to the face
 * (1). A run leaves its hole where its string lies in it, is in the middle of its half soon after,
 * and ends likewise. Of two in the same half one lies upon the other along the whole stretch. Knows
 * nothing of how an arrangement came about.
 */
final class DrawnRuns {

  private static final double SOON = 0.25;

  private final Ring ring;
  private final LaidRuns laid;
  private final Map<HoleId, List<LaidRuns.InHole>> holes;

  DrawnRuns(Ring ring, LaidRuns laid, Map<HoleId, List<LaidRuns.InHole>> instead) {
    this.ring = ring;
    this.laid = laid;
    holes = new HashMap<>(laid.holes());
    holes.putAll(instead);
  }

  /** Each pair of runs that cross, once for each point where they do. */
  List<String> crossings() {
    List<String> found = new ArrayList<>();
    for (LaidRuns.Laid a : laid.runs()) {
      for (LaidRuns.Laid b : laid.runs()) {
        if (a.run().name().compareTo(b.run().name()) < 0
            && !a.run().isCentreLoop()
            && !b.run().isCentreLoop()
            && a.run().side() == b.run().side()) {
          count(a, b, found);
        }
      }
    }
    return found;
  }

  private void count(LaidRuns.Laid a, LaidRuns.Laid b, List<String> found) {
    double low = Math.max(low(a.run()), low(b.run()));
    double high = Math.min(high(a.run()), high(b.run()));
    if (low >= high) {
      return;
    }
    // Straight between these, so that lines cross where the sign of their distance changes.
    TreeSet<Double> corners = new TreeSet<>();
    for (Run run : List.of(a.run(), b.run())) {
      for (double x : new double[] {low(run), low(run) + SOON, high(run) - SOON, high(run)}) {
        corners.add(x);
      }
    }
    if (a.half() == b.half()) {
      // One lies upon the other: they are side by side only in holes at which both end.
      corners.removeIf(x -> ends(a.run(), x) + ends(b.run(), x) < 2);
    }
    double before = 0;
    for (double x : corners.subSet(low, true, high, true)) {
      double sign = Math.signum(Math.rint((across(a, x) - across(b, x)) * 1e6));
      if (sign * before < 0) {
        found.add(a.run() + " and " + b.run() + " near " + x);
      }
      before = sign == 0 ? before : sign;
    }
  }

  private double across(LaidRuns.Laid l, double x) {
    double half = l.half() == Half.FACE ? 0.9 : -0.9;
    HoleId near = low(l.run()) == ring.place(l.run().from()) ? l.run().from() : l.run().to();
    HoleId far = near.equals(l.run().from()) ? l.run().to() : l.run().from();
    double there = Math.min((x - low(l.run())) / SOON, (high(l.run()) - x) / SOON);
    HoleId hole = x - low(l.run()) < high(l.run()) - x ? near : far;
    double mouth = mouth(hole, l.run());
    return there >= 1 ? half : mouth + (half - mouth) * there;
  }

  private double mouth(HoleId hole, Run run) {
    List<LaidRuns.InHole> in = holes.getOrDefault(hole, List.of());
    for (int i = 0; i < in.size(); i++) {
      if (in.get(i).run().equals(run)) {
        return 0.4 - 0.8 * i / (in.size() - 1);
      }
    }
    return 0;
  }

  private int ends(Run run, double x) {
    return x == low(run) || x == high(run) ? 1 : 0;
  }

  private double low(Run run) {
    return Math.min(ring.place(run.from()), ring.place(run.to()));
  }

  private double high(Run run) {
    return Math.max(ring.place(run.from()), ring.place(run.to()));
  }
}
