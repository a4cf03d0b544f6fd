package org.hoopwright.route;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;

/**
 * Plays an order of passes with its knots in time order and measures what the ranking looks at.
 * Reused for many variants of one model; confined to one thread.
 *
 * <p>A run lies over the mouths of the holes strictly between its two ends. A pass meets a covered
 * hole when an earlier run lies over the mouth of its entry or exit, or an earlier pass or a knot's
 * tail lies in it. A run is doubled when it shares a stretch with an earlier one. The stretch from
 * an exit to its knot counts as a run; the centre loop crosses the axis, lies over no hole and is
 * one place long.
 */
final class Timeline {

  private final RouteModel m;
  private final boolean[] runOver;
  private final boolean[] passIn;
  private final boolean[] knotIn;
  private final boolean[] stretchUsed; // the stretch from this hole to the next of its list
  private final boolean[] pulled; // spans that have been strung
  private final double spansMm;

  private int covered;
  private int doubled;
  private int longestRun;
  private double runsMm;
  private final List<CoveredHole> coveredHoles = new ArrayList<>();
  private final List<Moment> moments = new ArrayList<>();
  private boolean recording;

  Timeline(RouteModel model) {
    m = model;
    runOver = new boolean[m.holes];
    passIn = new boolean[m.holes];
    knotIn = new boolean[m.holes];
    stretchUsed = new boolean[m.holes];
    pulled = new boolean[m.spans];
    double sum = 0;
    for (int s = 0; s < m.spans; s++) {
      sum += m.spanMm(s);
    }
    spansMm = sum;
  }

  /** Departures of an order from the plain one; knots do not matter for it. */
  static int departures(RouteModel m, PassOrder order) {
    int[] rest = rest(order);
    int lastMain = -1;
    int firstCross = rest.length;
    for (int i = 0; i < rest.length; i++) {
      if (m.isCross(rest[i] >> 1)) {
        firstCross = Math.min(firstCross, i);
      } else {
        lastMain = i;
      }
    }
    int departures = 0;
    for (int i = 0; i < rest.length; i++) {
      boolean cross = m.isCross(rest[i] >> 1);
      if (cross && i < lastMain) {
        departures++;
      }
      if (!cross && i > firstCross) {
        departures++;
      }
    }
    for (int i = order.shortOpening(); i < order.shortPasses().length; i++) {
      departures += m.isCross(order.shortPasses()[i] >> 1) ? 1 : 0;
    }
    return departures;
  }

  /**
   * Whether a main goes in after a cross while the crosses run from the end where the mains do not
   * end.
   */
  static boolean aroundTheWorld(RouteModel m, PassOrder order) {
    int[] rest = rest(order);
    boolean cross = false;
    boolean mainAfterCross = false;
    for (int pass : rest) {
      if (m.isCross(pass >> 1)) {
        cross = true;
      } else if (cross) {
        mainAfterCross = true;
      }
    }
    End mainsEnd = m.n % 2 == 0 ? order.start() : order.start().other();
    return mainAfterCross && order.direction().from() != mainsEnd;
  }

  /** Whether crosses at both ends are strung before the outermost mains of both sides are in. */
  static boolean box(RouteModel m, PassOrder order) {
    int out = (order.shortOpening() < m.n ? 1 : 0) + (order.longOpening() < m.n ? 1 : 0);
    boolean front = false;
    boolean back = false;
    int atFront = 0;
    for (int pass : rest(order)) {
      if (out == 0) {
        break;
      }
      if (!m.isCross(pass >> 1)) {
        out--;
        continue;
      }
      int j = (pass >> 1) - 2 * m.n + 1;
      int index = order.direction() == Direction.HEAD_TO_THROAT ? j - 1 : m.crosses - j;
      if (index == atFront) {
        front = true;
        atFront++;
      } else {
        back = true;
      }
    }
    return front && back;
  }

  /**
   * What is strung after the openings by the piece with the mains, then by the second piece, in
   * time order.
   */
  private static int[] rest(PassOrder o) {
    int s = o.shortPasses().length - o.shortOpening();
    int l = o.longPasses().length - o.longOpening();
    int[] rest = new int[s + l + o.crossPasses().length];
    System.arraycopy(o.shortPasses(), o.shortOpening(), rest, 0, s);
    System.arraycopy(o.longPasses(), o.longOpening(), rest, s, l);
    System.arraycopy(o.crossPasses(), 0, rest, s + l, o.crossPasses().length);
    return rest;
  }

  /** Measures a variant. */
  Measured measure(PassOrder order, Knots knots) {
    return play(order, knots, false);
  }

  /** Measures a variant and says which holes are covered. */
  RouteMeasures measures(PassOrder order, Knots knots) {
    Measured v = play(order, knots, true);
    return new RouteMeasures(
        departures(m, order),
        v.covered(),
        v.doubled(),
        v.knots(),
        v.longestRun(),
        v.stringMm(),
        coveredHoles);
  }

  /** The time order of a variant. */
  List<Moment> moments(PassOrder order, Knots knots) {
    play(order, knots, true);
    return List.copyOf(moments);
  }

  /** Numbers of a variant. */
  record Measured(int covered, int doubled, int knots, int longestRun, long stringMm) {}

  private Measured play(PassOrder o, Knots k, boolean record) {
    Arrays.fill(runOver, false);
    Arrays.fill(passIn, false);
    Arrays.fill(knotIn, false);
    Arrays.fill(stretchUsed, false);
    Arrays.fill(pulled, false);
    covered = 0;
    doubled = 0;
    longestRun = 1; // the centre loop
    runsMm = m.centreLoopMm(o.start());
    recording = record;
    coveredHoles.clear();
    moments.clear();

    int[] s = o.shortPasses();
    int[] l = o.longPasses();
    for (int i = 0; i < Math.max(o.shortOpening(), o.longOpening()); i++) {
      if (i < o.shortOpening()) {
        pass(s, i, 0, EndName.SHORT);
      }
      if (i < o.longOpening()) {
        pass(l, i, 0, EndName.LONG);
      }
    }
    for (int i = o.shortOpening(); i < s.length; i++) {
      pass(s, i, 0, EndName.SHORT);
    }
    // The short end is tied as soon as its anchor has had its own pull: at once, or when the long
    // end has strung it.
    boolean shortTied = tieIfAnchored(k.shortKnot(), s, EndName.SHORT);
    for (int i = o.longOpening(); i < l.length; i++) {
      pass(l, i, 0, EndName.LONG);
      shortTied = shortTied || tieIfAnchored(k.shortKnot(), s, EndName.SHORT);
    }
    tie(k.longKnot(), m.exit(l[l.length - 1]), 0, EndName.LONG);
    if (!o.onePiece()) {
      secondPiece(o, k);
    }
    double mm = spansMm + runsMm + m.spans * 2 * RouteSearch.PASSAGE_MM;
    return new Measured(covered, doubled, o.onePiece() ? 2 : 4, longestRun, Math.round(mm));
  }

  private void secondPiece(PassOrder o, Knots k) {
    int[] x = o.crossPasses();
    KnotChoice start = k.start();
    if (start == null) {
      throw new IllegalStateException("a second piece without a start");
    }
    int entry = m.entry(x[0]);
    if (start.clamped()) {
      moment(1, EndName.START, Moment.What.CLAMP, -1);
    } else {
      tie(start, entry, 1, EndName.START);
    }
    int repull = Math.min(RouteSearch.CROSSES_BEFORE_REPULL, x.length);
    for (int i = 0; i < x.length; i++) {
      pass(x, i, 1, EndName.FINISH);
      if (start.clamped() && i + 1 == repull) {
        tie(start, entry, 1, EndName.START);
      }
    }
    tie(k.finish(), m.exit(x[x.length - 1]), 1, EndName.FINISH);
  }

  private boolean tieIfAnchored(KnotChoice knot, int[] passes, EndName end) {
    if (!pulled[knot.anchor()]) {
      return false;
    }
    tie(knot, m.exit(passes[passes.length - 1]), 0, end);
    return true;
  }

  private void pass(int[] passes, int i, int piece, EndName end) {
    int entry = m.entry(passes[i]);
    int exit = m.exit(passes[i]);
    boolean a = covers(entry, passes[i]);
    boolean b = covers(exit, passes[i]);
    if (a || b) {
      covered++;
    }
    if (i > 0) {
      run(m.exit(passes[i - 1]), entry);
    }
    passIn[entry] = true;
    passIn[exit] = true;
    pulled[passes[i] >> 1] = true;
    moment(piece, end, Moment.What.PASS, i);
  }

  private boolean covers(int hole, int pass) {
    if (!runOver[hole] && !passIn[hole] && !knotIn[hole]) {
      return false;
    }
    if (recording) {
      CoveredHole.By by =
          passIn[hole]
              ? CoveredHole.By.PASS
              : knotIn[hole] ? CoveredHole.By.KNOT : CoveredHole.By.RUN;
      coveredHoles.add(new CoveredHole(m.hole(hole), m.span(pass >> 1), by));
    }
    return true;
  }

  private void run(int a, int b) {
    int low = Math.min(a, b);
    int high = Math.max(a, b);
    boolean shares = false;
    for (int h = low; h < high; h++) {
      shares |= stretchUsed[h];
      stretchUsed[h] = true;
      if (h > low) {
        runOver[h] = true;
      }
    }
    doubled += shares ? 1 : 0;
    longestRun = Math.max(longestRun, high - low);
    runsMm += m.runMm(a, b);
  }

  private void tie(
      @org.jspecify.annotations.Nullable KnotChoice knot, int exit, int piece, EndName end) {
    if (knot == null) {
      throw new IllegalStateException("an end without a knot: " + end.word());
    }
    run(exit, knot.hole());
    knotIn[knot.hole()] = true;
    moment(piece, end, Moment.What.KNOT, -1);
  }

  private void moment(int piece, EndName end, Moment.What what, int pass) {
    if (recording) {
      moments.add(new Moment(piece, end, what, pass));
    }
  }
}
