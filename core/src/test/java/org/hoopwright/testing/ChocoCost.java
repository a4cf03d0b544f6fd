package org.hoopwright.testing;

import static org.hoopwright.testing.ChocoReading.CUT;
import static org.hoopwright.testing.ChocoReading.OPEN;
import static org.hoopwright.testing.ChocoReading.TURN;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.hoopwright.bed.Span;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.hoopwright.testing.BruteForceRoutes.Found;

/**
 * The usual ranking of routes as cost variables on a sequence with knots: maker's wishes missed,
 * direction, departures, covered holes, doubled runs, knots, longest run, string in mm.
 *
 * <p>Time is the place in the sequence. A run is laid when the span that it leads to is strung; it
 * covers what is strung later. Only runs that can meet something become variables: those that can
 * share a stretch with another one, or that lie over a hole of a span still to come.
 */
final class ChocoCost {

  /** A run that one code after another asks for. */
  private record Arc(int from, int to, int run) {
    int x() {
      return from / 2;
    }

    int y() {
      return to / 2;
    }
  }

  private final Model model = new Model();
  private final ChocoReading r;
  private final ChocoRuns runs;
  private final ChocoOpening opening;
  private final ChocoSequence q;
  private final ChocoKnots knots;
  private final BoolVar two;
  private final List<Arc> arcs = new ArrayList<>();
  private final Map<Arc, BoolVar> laid = new HashMap<>();
  private final Map<Integer, BoolVar> orders = new HashMap<>();
  private final Map<Integer, BoolVar> next = new HashMap<>();
  private final Map<Integer, BoolVar> tiedBefore = new HashMap<>();
  private final Map<Integer, BoolVar> senses = new HashMap<>();

  /** The cost, most important first. */
  final IntVar[] cost;

  ChocoCost(Openings openings) {
    r = new ChocoReading(openings);
    runs = new ChocoRuns(r.bed);
    opening = new ChocoOpening(r.openings, runs);
    arcs();
    q = new ChocoSequence(model, r, Optional.of(runs));
    two =
        r.request.pieces().isPresent()
            ? model.boolVar(r.request.pieces().getAsInt() == 2)
            : model.arithm(q.pos[CUT], "<", q.size - 1).reify();
    knots = ChocoKnots.post(q, runs, two);
    cost =
        new IntVar[] {
          makersWishesMissed(),
          model.intVar(r.openings.direction == Direction.HEAD_TO_THROAT ? 0 : 1),
          departures(),
          covered(),
          doubled(),
          knotCount(),
          longestRun(),
          stringMm()
        };
  }

  /** A solver that tries the sequence in time order, then the knots. */
  Solver solver() {
    List<IntVar> decide = new ArrayList<>(List.of(q.code));
    decide.addAll(knots.tie);
    model.getSolver().setSearch(Search.inputOrderLBSearch(decide.toArray(IntVar[]::new)));
    return model.getSolver();
  }

  Model model() {
    return model;
  }

  Found found() {
    return q.found(knots.knots(), knots.clamped());
  }

  private void arcs() {
    int[] codes = r.codes().toArray();
    for (int c : codes) {
      for (int d : codes) {
        if (r.follows(c, d) && r.joins(c, d)) {
          arcs.add(new Arc(c, d, runs.id(r.pass(c).to(), r.pass(d).from())));
        }
      }
    }
  }

  private BoolVar all(BoolVar... of) {
    BoolVar is = model.boolVar();
    model.addClausesBoolAndArrayEqVar(of, is);
    return is;
  }

  private BoolVar any(List<BoolVar> of) {
    if (of.isEmpty()) {
      return model.boolVar(false);
    }
    BoolVar is = model.boolVar();
    model.addClausesBoolOrArrayEqVar(of.toArray(BoolVar[]::new), is);
    return is;
  }

  /** Whether an item is strung before another. */
  private BoolVar before(int x, int y) {
    boolean ordered = r.isCross(x) && r.isCross(y) && (r.late == 0 || chained(x, y));
    if (ordered) {
      return model.boolVar(x < y);
    }
    return orders.computeIfAbsent(
        x * q.size + y, k -> model.arithm(q.pos[x], "<", q.pos[y]).reify());
  }

  private boolean chained(int x, int y) {
    return Math.max(r.index(x), r.index(y)) <= r.crosses - 3;
  }

  private BoolVar laid(Arc arc) {
    return laid.computeIfAbsent(
        arc,
        a -> {
          BoolVar follows =
              next.computeIfAbsent(
                  a.x() * q.size + a.y(),
                  k -> model.arithm(q.pos[a.y()], "-", q.pos[a.x()], "=", 1).reify());
          return a.x() == OPEN || a.x() == TURN
              ? all(follows, sense(a.to))
              : all(follows, sense(a.from), sense(a.to));
        });
  }

  /** Whether a span is run in the sense of this code. */
  private BoolVar sense(int code) {
    BoolVar against =
        senses.computeIfAbsent(
            code / 2,
            x -> {
              BoolVar is = model.boolVar();
              model.element(is, q.against, q.pos[x], 0).post();
              return is;
            });
    return code % 2 == 0 ? against.not() : against;
  }

  /** Whether an end is tied before an item is strung. */
  private BoolVar tied(int end, int y) {
    return tiedBefore.computeIfAbsent(
        end * q.size + y, k -> model.arithm(knots.after.get(end), "<", q.pos[y]).reify());
  }

  private boolean mayExclude(Arc a, Arc b) {
    return a.y() == b.y() || a.x() == b.x();
  }

  private IntVar makersWishesMissed() {
    Layout layout = r.bed.layout();
    List<BoolVar> missed = new ArrayList<>();
    layout.pieces().ifPresent(p -> missed.add(p == 1 ? two : two.not()));
    layout
        .startSide()
        .ifPresent(
            side -> {
              BoolVar fromRight = sense(2 * r.crossItem(0) + 1);
              BoolVar wrong = side == Side.LEFT ? fromRight : fromRight.not();
              missed.add(wrong);
              if (r.bed.symmetric() && Openings.startSideDecides(layout)) {
                model.arithm(wrong, "=", 0).post(); // else its mirror image is meant
              }
            });
    int constant =
        (layout.direction().orElse(r.openings.direction) != r.openings.direction ? 1 : 0)
            + (layout.shortSide().orElse(r.openings.shortSide) != r.openings.shortSide ? 1 : 0);
    return plus(missed, constant);
  }

  private IntVar plus(List<BoolVar> of, int constant) {
    IntVar total = model.intVar(constant, constant + of.size());
    IntVar[] terms = new IntVar[of.size() + 1];
    for (int i = 0; i < of.size(); i++) {
      terms[i] = of.get(i);
    }
    terms[of.size()] = model.intVar(constant);
    model.sum(terms, "=", total).post();
    return total;
  }

  private IntVar departures() {
    List<BoolVar> departures = new ArrayList<>();
    int c = r.crosses;
    if (r.late > 0) {
      IntVar last = q.lastMain();
      for (int j : new int[] {0, 1, c - 2, c - 1}) {
        departures.add(model.arithm(q.pos[r.crossItem(j)], "<", last).reify());
      }
    }
    IntStream.range(0, c)
        .filter(r::outermost)
        .forEach(
            j -> departures.add(model.arithm(q.pos[r.crossItem(j)], "<", q.pos[TURN]).reify()));
    return plus(departures, r.late); // a late main is always strung after a cross
  }

  private IntVar covered() {
    List<BoolVar> covered = new ArrayList<>();
    int constant = opening.covered;
    for (int x = r.lateItem(0); x < q.size; x++) {
      Span span = r.span(x);
      int[] holes = {runs.hole(span.from()), runs.hole(span.to())};
      if (opening.closed.contains(holes[0]) || opening.closed.contains(holes[1])) {
        constant++;
        continue;
      }
      List<BoolVar> reasons = new ArrayList<>();
      for (int hole : holes) {
        for (int y = r.lateItem(0); y < q.size; y++) {
          Span other = r.span(y);
          if (y != x && (runs.hole(other.from()) == hole || runs.hole(other.to()) == hole)) {
            reasons.add(before(y, x));
          }
        }
        for (Arc arc : arcs) {
          if (arc.y() != x && runs.over(arc.run, hole)) {
            reasons.add(all(laid(arc), before(arc.y(), x)));
          }
        }
        for (int e = 0; e < knots.run.size() && e < ChocoKnots.FINISH; e++) {
          int[] over = runsOf(knots.run.get(e), id -> runs.over(id, hole));
          if (over.length > 0) {
            reasons.add(all(model.member(knots.run.get(e), over).reify(), tied(e, x)));
          }
          if (knots.hole.get(e).contains(hole)) {
            reasons.add(all(model.arithm(knots.hole.get(e), "=", hole).reify(), tied(e, x)));
          }
        }
      }
      if (!reasons.isEmpty()) {
        covered.add(any(reasons));
      }
    }
    return plus(covered, constant);
  }

  private static int[] runsOf(IntVar run, IntPredicate which) {
    return run.stream().filter(which).toArray();
  }

  private IntVar doubled() {
    List<BoolVar> doubled = new ArrayList<>();
    for (Arc arc : arcs) {
      if (opening.runs.stream().anyMatch(o -> runs.share(o, arc.run))) {
        doubled.add(laid(arc));
        continue;
      }
      List<BoolVar> reasons = new ArrayList<>();
      for (Arc other : arcs) {
        if (!mayExclude(arc, other) && runs.share(arc.run, other.run)) {
          reasons.add(all(laid(other), before(other.y(), arc.y())));
        }
      }
      for (int e = 0; e < knots.run.size() && e < ChocoKnots.FINISH; e++) {
        int[] sharing = runsOf(knots.run.get(e), id -> runs.share(id, arc.run));
        if (sharing.length > 0) {
          reasons.add(all(model.member(knots.run.get(e), sharing).reify(), tied(e, arc.y())));
        }
      }
      if (!reasons.isEmpty()) {
        doubled.add(all(laid(arc), any(reasons)));
      }
    }
    for (int e = 0; e < knots.run.size(); e++) {
      doubled.add(doubledKnot(e));
    }
    return plus(doubled, opening.doubled);
  }

  private BoolVar doubledKnot(int e) {
    IntVar run = knots.run.get(e);
    List<BoolVar> reasons = new ArrayList<>();
    int[] opened = runsOf(run, id -> opening.runs.stream().anyMatch(o -> runs.share(o, id)));
    if (opened.length > 0) {
      reasons.add(model.member(run, opened).reify());
    }
    for (Arc arc : arcs) {
      int[] sharing = runsOf(run, id -> runs.share(id, arc.run));
      if (sharing.length > 0) {
        reasons.add(all(laid(arc), model.member(run, sharing).reify(), tied(e, arc.y()).not()));
      }
    }
    for (int other = 0; other < e; other++) {
      IntVar earlier = knots.run.get(other);
      Tuples tuples = new Tuples(true);
      for (int a : runsOf(earlier, id -> true)) {
        for (int b : runsOf(run, id -> true)) {
          tuples.add(a, b, runs.share(a, b) ? 1 : 0);
        }
      }
      BoolVar share = model.boolVar();
      model.table(new IntVar[] {earlier, run, share}, tuples).post();
      reasons.add(share);
    }
    return any(reasons);
  }

  private IntVar knotCount() {
    IntVar count = model.intVar(new int[] {2, 4});
    IntVar extra = model.intVar(new int[] {0, 2});
    model.times(two, 2, extra).post();
    model.arithm(count, "-", extra, "=", 2).post();
    return count;
  }

  /** The runs of the sequence and those to the knots. */
  private List<IntVar> allRuns() {
    List<IntVar> all = new ArrayList<>(List.of(q.run));
    all.addAll(knots.run);
    return all;
  }

  private IntVar longestRun() {
    int[] places = runs.places();
    int most = Math.max(IntStream.of(places).max().orElse(1), opening.longest);
    List<IntVar> lengths = new ArrayList<>();
    lengths.add(model.intVar(opening.longest));
    for (IntVar run : allRuns()) {
      IntVar length = model.intVar(0, most);
      model.element(length, places, run).post();
      lengths.add(length);
    }
    IntVar longest = model.intVar(opening.longest, most);
    model.max(longest, lengths.toArray(IntVar[]::new)).post();
    return longest;
  }

  private IntVar stringMm() {
    int[] units = runs.units();
    int most = IntStream.of(units).max().orElse(0);
    int whole = (int) Math.floor(opening.mm);
    int rest = (int) Math.round((opening.mm - whole) * ChocoRuns.UNITS_PER_MM);
    List<IntVar> terms = new ArrayList<>();
    terms.add(model.intVar(rest + ChocoRuns.UNITS_PER_MM / 2)); // rounds to the nearest
    for (IntVar run : allRuns()) {
      IntVar length = model.intVar(0, most);
      model.element(length, units, run).post();
      terms.add(length);
    }
    IntVar sum = model.intVar(0, IntVar.MAX_INT_BOUND);
    model.sum(terms.toArray(IntVar[]::new), "=", sum).post();
    IntVar mm = model.intVar(0, IntVar.MAX_INT_BOUND / ChocoRuns.UNITS_PER_MM);
    model.div(sum, model.intVar(ChocoRuns.UNITS_PER_MM), mm).post();
    IntVar total = model.intVar(whole, whole + IntVar.MAX_INT_BOUND / ChocoRuns.UNITS_PER_MM);
    model.arithm(total, "-", mm, "=", whole).post();
    return total;
  }
}
