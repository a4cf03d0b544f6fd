package org.hoopwright.route;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.finding.HoopwrightFault;
import org.jspecify.annotations.Nullable;

/**
 * Tells one variant in time order: what is done when, and which holes are covered by then. Used for
 * the routes that are shown; {@link VariantSearch} measures the many that are not.
 */
final class Timeline {

  private final RouteModel m;
  private final PassOrder o;
  private final Knots k;
  private final Strung strung;
  private final boolean[] pulled;
  private final List<CoveredHole> coveredHoles = new ArrayList<>();
  private final List<Moment> moments = new ArrayList<>();

  Timeline(RouteModel model, PassOrder order, Knots knots) {
    m = model;
    o = order;
    k = knots;
    strung = new Strung(model);
    pulled = new boolean[model.spans];
    play();
  }

  /** The time order. */
  List<Moment> moments() {
    return moments;
  }

  /** What the ranking looks at, and the covered holes. */
  RouteMeasures measures(int departures) {
    return new RouteMeasures(
        departures,
        strung.covered(),
        strung.doubled(),
        o.onePiece() ? 2 : 4,
        strung.longestRun(),
        strung.stringMm(),
        coveredHoles);
  }

  private void play() {
    strung.begin(m.centreLoopMm(o.start()));
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
      secondPiece();
    }
  }

  private void secondPiece() {
    int[] x = o.crossPasses();
    KnotChoice start = k.start();
    if (start == null) {
      throw new HoopwrightFault("A second piece of string was timed without its start.");
    }
    int entry = m.entry(x[0]);
    if (start.clamped()) {
      moments.add(new Moment(1, EndName.START, Moment.What.CLAMP, -1));
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
    covered(m.entry(passes[i]), passes[i]);
    covered(m.exit(passes[i]), passes[i]);
    strung.pass(passes, i);
    pulled[passes[i] >> 1] = true;
    moments.add(new Moment(piece, end, Moment.What.PASS, i));
  }

  private void covered(int hole, int pass) {
    CoveredHole.By by = strung.coveredBy(hole);
    if (by != null) {
      coveredHoles.add(new CoveredHole(m.hole(hole), m.span(pass >> 1), by));
    }
  }

  private void tie(@Nullable KnotChoice knot, int exit, int piece, EndName end) {
    if (knot == null) {
      throw new HoopwrightFault("The " + end.word() + " end was timed without its knot.");
    }
    strung.knot(exit, knot.hole());
    moments.add(new Moment(piece, end, Moment.What.KNOT, -1));
  }
}
