package org.hoopwright.route;

/**
 * What lies in the frame at one moment, and what it has cost so far: covered holes, doubled runs,
 * the longest run, string outside the hoop. Copied where ways part, so that what several variants
 * share is played once. Confined to one thread.
 *
 * <p>A run lies over the mouths of the holes strictly between its two ends. A pass meets a covered
 * hole when an earlier run lies over the mouth of its entry or exit, or an earlier pass or a knot's
 * tail lies in it. A run is doubled when it shares a stretch with an earlier one. The stretch from
 * an exit to its knot counts as a run; the centre loop crosses the axis, lies over no hole and is
 * one place long.
 */
final class Strung {

  private static final byte RUN_OVER = 1;
  private static final byte PASS_IN = 2;
  private static final byte KNOT_IN = 4;
  private static final byte COVERED = RUN_OVER | PASS_IN | KNOT_IN;

  /** A run lies on the stretch from this hole to the next of its list. */
  private static final byte STRETCH = 8;

  private final RouteModel m;

  // One byte a hole rather than four sets: the ways part often, and one copy is all that it takes.
  private final byte[] marks;

  private int covered;
  private int doubled;
  private int longestRun;
  private double runsMm;

  Strung(RouteModel model) {
    m = model;
    marks = new byte[model.holes];
  }

  int covered() {
    return covered;
  }

  int doubled() {
    return doubled;
  }

  int longestRun() {
    return longestRun;
  }

  double runsMm() {
    return runsMm;
  }

  /** An empty frame but for the centre loop. */
  void begin(double centreLoopMm) {
    java.util.Arrays.fill(marks, (byte) 0);
    covered = 0;
    doubled = 0;
    longestRun = 1;
    runsMm = centreLoopMm;
  }

  void copy(Strung other) {
    System.arraycopy(other.marks, 0, marks, 0, marks.length);
    covered = other.covered;
    doubled = other.doubled;
    longestRun = other.longestRun;
    runsMm = other.runsMm;
  }

  /** What closes this hole's mouth, or null when it is open. */
  CoveredHole.@org.jspecify.annotations.Nullable By coveredBy(int hole) {
    int mark = marks[hole];
    if ((mark & PASS_IN) != 0) {
      return CoveredHole.By.PASS;
    }
    if ((mark & KNOT_IN) != 0) {
      return CoveredHole.By.KNOT;
    }
    return (mark & RUN_OVER) != 0 ? CoveredHole.By.RUN : null;
  }

  /** Strings pass {@code i} of an end. */
  void pass(int[] passes, int i) {
    int entry = m.entry(passes[i]);
    int exit = m.exit(passes[i]);
    if (((marks[entry] | marks[exit]) & COVERED) != 0) {
      covered++;
    }
    if (i > 0) {
      run(m.exit(passes[i - 1]), entry);
    }
    marks[entry] |= PASS_IN;
    marks[exit] |= PASS_IN;
  }

  /** Strings these passes of an end, the last one excluded. */
  void passes(int[] passes, int from, int to) {
    for (int i = from; i < to; i++) {
      pass(passes, i);
    }
  }

  /** Leads an end from its exit to its knot. */
  void knot(int exit, int hole) {
    run(exit, hole);
    marks[hole] |= KNOT_IN;
  }

  private void run(int a, int b) {
    int low = Math.min(a, b);
    int high = Math.max(a, b);
    int before = 0;
    for (int h = low; h < high; h++) {
      before |= marks[h];
      marks[h] |= h > low ? STRETCH | RUN_OVER : STRETCH;
    }
    doubled += (before & STRETCH) != 0 ? 1 : 0;
    longestRun = Math.max(longestRun, high - low);
    runsMm += m.runMm(a, b);
  }

  /** As if an end had been led to its knot, without a mark: for the last knot of all. */
  void copyWithLastKnot(Strung other, int exit, int hole) {
    int low = Math.min(exit, hole);
    int high = Math.max(exit, hole);
    int before = 0;
    for (int h = low; h < high; h++) {
      before |= other.marks[h];
    }
    covered = other.covered;
    doubled = other.doubled + ((before & STRETCH) != 0 ? 1 : 0);
    longestRun = Math.max(other.longestRun, high - low);
    runsMm = other.runsMm + m.runMm(exit, hole);
  }

  /** String that lies in the finished frame, rounded to 1 mm. */
  long stringMm() {
    return Math.round(m.spansMm + runsMm + m.spans * 2 * RouteSearch.PASSAGE_MM);
  }
}
