package org.hoopwright.testing;

import static org.hoopwright.testing.ChocoReading.CUT;
import static org.hoopwright.testing.ChocoReading.TURN;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Pass;

/**
 * The knots of a sequence as variables: for each end a tie, which is a tie-off hole with a span
 * round which the knot goes. A table joins it to the end's last span and to the run between them.
 */
final class ChocoKnots {

  static final int SHORT = 0;
  static final int LONG = 1;
  static final int START = 2;
  static final int FINISH = 3;

  private static final int REPULL = 3;

  private record Tie(HoleId hole, SpanId anchor) {}

  private final ChocoSequence q;
  private final ChocoReading r;
  private final ChocoRuns runs;
  private final Model model;
  private final List<Tie> ties = new ArrayList<>();

  /** Which tie each end has; ties held by a starting clamp first count on; then none. */
  final List<IntVar> tie = new ArrayList<>();

  /** The hole of each knot, as a number; negative for none. */
  final List<IntVar> hole = new ArrayList<>();

  /** The run from each end's exit to its knot. */
  final List<IntVar> run = new ArrayList<>();

  /** At which place of the sequence each knot is tied: after what stands there. */
  final List<IntVar> after = new ArrayList<>();

  private ChocoKnots(ChocoSequence sequence, ChocoRuns runs) {
    this.q = sequence;
    this.r = sequence.r;
    this.runs = runs;
    this.model = sequence.model;
  }

  /** Adds the knots to a model; {@code two} is whether there are two pieces. */
  static ChocoKnots post(ChocoSequence sequence, ChocoRuns runs, BoolVar two) {
    ChocoKnots knots = new ChocoKnots(sequence, runs);
    knots.post(two);
    return knots;
  }

  private void post(BoolVar two) {
    for (HoleId hole : r.bed.positions().keySet()) {
      if (r.bed.knotPlace(hole)) {
        r.bed.spansAt(hole).forEach(span -> ties.add(new Tie(hole, span)));
      }
    }
    int last = q.size - 1;
    IntVar turn = q.pos[TURN];
    IntVar cut = q.pos[CUT];

    end(before(turn), Pass::to, false);
    IntVar anchor = anchor(SHORT);
    IntVar tied = model.intVar(0, last);
    model.max(tied, anchor, turn).post();
    after.add(tied);
    // In two pieces the short end does not wait; in one it waits for what the long end strings.
    model.ifThen(two, model.arithm(anchor, "<", turn));

    end(before(cut), Pass::to, false);
    model.arithm(anchor(LONG), "<", cut).post();
    after.add(cut);

    if (!two.isInstantiatedTo(0)) {
      secondPiece(cut, last);
    }
    model.allDifferent(hole.toArray(IntVar[]::new)).post();
  }

  private void secondPiece(IntVar cut, int last) {
    IntVar[] padded = Arrays.copyOf(q.code, q.size + 1);
    padded[q.size] = model.intVar(2 * CUT);
    IntVar first = code();
    model.element(first, padded, cut, -1).post();
    end(first, Pass::from, true);
    IntVar repull = model.intVar(0, last);
    IntVar third = model.intVar(0, last + REPULL);
    model.arithm(third, "=", cut, "+", REPULL).post();
    model.min(repull, third, model.intVar(last)).post();
    IntVar tied = model.intVar(0, last);
    BoolVar clamped = model.arithm(tie.get(START), ">=", ties.size()).reify();
    model.arithm(tie.get(START), "<=", 2 * ties.size()).post();
    BoolVar none = model.arithm(tie.get(START), "=", 2 * ties.size()).reify();
    model.ifThenElse(
        model.and(clamped, none.not()).reify(),
        model.arithm(tied, "=", repull),
        model.arithm(tied, "=", cut));
    model.ifThen(none.not(), model.arithm(anchor(START), "<=", tied));
    after.add(tied);

    end(q.code[last], Pass::to, false);
    after.add(model.intVar(last));
  }

  private IntVar code() {
    return model.intVar(0, 2 * q.size);
  }

  private IntVar before(IntVar place) {
    IntVar code = code();
    model.element(code, q.code, place, 1).post();
    return code;
  }

  private interface Exit {
    HoleId of(Pass pass);
  }

  /** The tie of an end whose last span has this code; no tie where that is the cut. */
  private void end(IntVar lastCode, Exit exit, boolean mayClamp) {
    int n = ties.size();
    Tuples tuples = new Tuples(true);
    r.codes()
        .forEach(
            c -> {
              if (c / 2 == CUT) {
                tuples.add(c, 2 * n, ChocoRuns.NONE);
                return;
              }
              HoleId from = exit.of(r.pass(c));
              for (int i = 0; i < n; i++) {
                Tie t = ties.get(i);
                if (r.bed.ring().runAllowed(from, t.hole)
                    && r.openings.apart(from, t.hole) <= r.request.knotLimit()
                    && !t.anchor.equals(r.pass(c).span())) {
                  int id = runs.id(from, t.hole);
                  tuples.add(c, i, id);
                  if (mayClamp && r.request.startingClamps() > 0 && !r.bed.inHeadZone(from)) {
                    tuples.add(c, n + i, id);
                  }
                }
              }
            });
    IntVar own = model.intVar(0, 2 * n);
    IntVar along = model.intVar(0, runs.count() - 1);
    model.table(new IntVar[] {lastCode, own, along}, tuples).post();
    tie.add(own);
    run.add(along);
    int end = hole.size();
    hole.add(ofTie(own, i -> runs.hole(ties.get(i).hole), -1 - end));
  }

  /** The place in the sequence of the span round which an end is tied; 0 for the openings. */
  private IntVar anchor(int end) {
    IntVar[] places = Arrays.copyOf(q.pos, q.size + 1);
    places[q.size] = model.intVar(0);
    IntVar item = ofTie(tie.get(end), i -> r.item(ties.get(i).anchor).orElse(q.size), q.size);
    IntVar at = model.intVar(0, q.size - 1);
    model.element(at, places, item, 0).post();
    return at;
  }

  private IntVar ofTie(IntVar tie, IntUnaryOperator value, int none) {
    int n = ties.size();
    int[] values =
        IntStream.rangeClosed(0, 2 * n)
            .map(i -> i == 2 * n ? none : value.applyAsInt(i % n))
            .toArray();
    IntVar is = model.intVar(Arrays.stream(values).distinct().sorted().toArray());
    model.element(is, values, tie).post();
    return is;
  }

  /** Whether the second piece of the solution at hand starts with a starting clamp. */
  boolean clamped() {
    int n = ties.size();
    return tie.size() > START
        && tie.get(START).getValue() >= n
        && tie.get(START).getValue() < 2 * n;
  }

  /** The knots of the solution at hand. */
  List<Knot> knots() {
    List<Knot> knots = new ArrayList<>();
    int n = ties.size();
    for (int e = 0; e < tie.size(); e++) {
      int value = tie.get(e).getValue();
      if (value < 2 * n) {
        Tie t = ties.get(value % n);
        knots.add(
            new Knot(
                e == START && value < n ? Knot.Kind.STARTING : Knot.Kind.TIE_OFF,
                t.hole,
                t.anchor));
      }
    }
    return knots;
  }
}
