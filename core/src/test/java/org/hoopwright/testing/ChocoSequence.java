package org.hoopwright.testing;

import static org.hoopwright.testing.ChocoReading.CUT;
import static org.hoopwright.testing.ChocoReading.OPEN;
import static org.hoopwright.testing.ChocoReading.TURN;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.constraints.nary.automata.FA.FiniteAutomaton;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Pass;
import org.hoopwright.testing.BruteForceRoutes.Found;

/**
 * The orders of passes of one reading as a constraint model: a sequence of directed spans in time
 * order, cut by marks into what the short end, the long end and a second piece string; a table of
 * neighbours, an inverse channel to the places of spans, a regular language for late mains and the
 * turns of the ends, and the order of the crosses as precedence. The opening mains are implied by
 * the rules and stand fixed before the sequence.
 */
final class ChocoSequence {

  // Kinds of items, after the marks; see kind().
  private static final int LATE = 3;
  private static final int FRONT = 5;
  private static final int BACK = 7;
  private static final int REST = 9;

  final Model model;
  final ChocoReading r;
  final int size;

  /** What stands at each place. */
  final IntVar[] code;

  /** Whether what stands at each place runs against its own sense. */
  final BoolVar[] against;

  /** The run that leads to each place; 0 for none. Empty unless runs are asked for. */
  final IntVar[] run;

  /** Where each item stands. */
  final IntVar[] pos;

  private final IntVar[] item;

  ChocoSequence(Model model, ChocoReading reading, Optional<ChocoRuns> runs) {
    this.model = model;
    this.r = reading;
    this.size = r.items();
    Tuples neighbours = neighbours(runs);
    int[] codes = r.codes().toArray();
    code = new IntVar[size];
    item = new IntVar[size];
    against = model.boolVarArray(size);
    pos = model.intVarArray(size, 0, size - 1);
    run = runs.isPresent() ? model.intVarArray(size, 0, runs.get().count() - 1) : new IntVar[0];
    IntVar[] kind = model.intVarArray(size, 0, REST);
    Tuples split = new Tuples(true);
    for (int c : codes) {
      split.add(c, c / 2, c % 2, kind(c / 2));
    }
    for (int i = 0; i < size; i++) {
      code[i] = i == 0 ? model.intVar(2 * OPEN) : model.intVar(codes);
      item[i] = model.intVar(0, size - 1);
      model.table(new IntVar[] {code[i], item[i], against[i], kind[i]}, split).post();
      if (i > 0 && runs.isPresent()) {
        model.table(new IntVar[] {code[i - 1], code[i], run[i]}, neighbours).post();
      } else if (i > 0) {
        model.table(code[i - 1], code[i], neighbours).post();
      }
    }
    if (runs.isPresent()) {
      model.arithm(run[0], "=", 0).post();
    }
    model.inverseChanneling(item, pos).post();
    model.regular(kind, turns()).post();
    crossesInTurn();
    pieces();
  }

  private Tuples neighbours(Optional<ChocoRuns> runs) {
    Tuples tuples = new Tuples(true);
    int[] codes = r.codes().toArray();
    for (int c : codes) {
      for (int d : codes) {
        if (r.follows(c, d)) {
          if (runs.isPresent()) {
            int id =
                r.joins(c, d) ? runs.get().id(r.pass(c).to(), r.pass(d).from()) : ChocoRuns.NONE;
            tuples.add(c, d, id);
          } else {
            tuples.add(c, d);
          }
        }
      }
    }
    return tuples;
  }

  private void pieces() {
    if (r.request.pieces().isPresent()) {
      model.arithm(pos[CUT], r.request.pieces().getAsInt() == 1 ? "=" : "<", size - 1).post();
    }
    if (r.request.crossesOfOtherString()) {
      model.arithm(pos[CUT], "=", 2).post();
    }
  }

  /** How far a sequence has come, as far as rules 4, 5, 7 and 8 remember it. */
  private record State(
      int section, boolean shortUsed, int shortCrosses, int front, int back, int out) {}

  private FiniteAutomaton turns() {
    FiniteAutomaton automaton = new FiniteAutomaton();
    Map<State, Integer> numbers = new HashMap<>();
    Deque<State> open = new ArrayDeque<>();
    State first = new State(-1, false, 0, 0, 0, (1 << r.late) - 1);
    numbers.put(first, automaton.addState());
    automaton.setInitialState(0);
    open.add(first);
    while (!open.isEmpty()) {
      State state = open.remove();
      int from = numbers.getOrDefault(state, 0);
      if (state.section == 2 && state.out == 0) {
        automaton.setFinal(from);
      }
      for (int kind = 0; kind <= REST; kind++) {
        State next = step(state, kind).orElse(null);
        if (next != null) {
          Integer known = numbers.get(next);
          int to = known != null ? known : automaton.addState();
          if (known == null) {
            numbers.put(next, to);
            open.add(next);
          }
          automaton.addTransition(from, to, kind);
        }
      }
    }
    return automaton;
  }

  /** What the rules of turns tell apart: marks, late mains, the four early crosses, the rest. */
  private int kind(int x) {
    if (r.isMark(x)) {
      return x;
    }
    if (r.isLate(x)) {
      return LATE + x - r.lateItem(0);
    }
    int index = r.index(x);
    return index < 2 ? FRONT + index : index >= r.crosses - 2 ? BACK + r.crosses - 1 - index : REST;
  }

  private Optional<State> step(State s, int kind) {
    if (kind < LATE) {
      boolean ok = s.section == kind - 1 && (kind != CUT || s.out == 0);
      return ok
          ? Optional.of(new State(kind, s.shortUsed, s.shortCrosses, s.front, s.back, s.out))
          : Optional.empty();
    }
    boolean isLate = kind < FRONT;
    if (s.section < 0 || (s.section == 2 && (s.shortUsed || isLate))) {
      return Optional.empty(); // a short end that strings crosses has one piece
    }
    boolean used = s.shortUsed || s.section == 0;
    if (isLate) {
      int bit = 1 << (kind - LATE);
      if ((s.out & bit) == 0 || s.front + s.back == 0) {
        return Optional.empty();
      }
      boolean in = s.out == bit; // what was early does not matter any more
      return Optional.of(
          new State(
              s.section, used, s.shortCrosses, in ? 0 : s.front, in ? 0 : s.back, s.out - bit));
    }
    if (s.section == 0 && (kind == REST || s.shortCrosses == 2)) {
      return Optional.empty();
    }
    int shortCrosses = s.shortCrosses + (s.section == 0 ? 1 : 0);
    if (s.out == 0) {
      return Optional.of(new State(s.section, used, shortCrosses, 0, 0, 0));
    }
    if (kind == FRONT + s.front && s.front < 2) {
      return Optional.of(new State(s.section, used, shortCrosses, s.front + 1, s.back, s.out));
    }
    if (kind == BACK + s.back && s.back < 2) {
      return Optional.of(new State(s.section, used, shortCrosses, s.front, s.back + 1, s.out));
    }
    return Optional.empty();
  }

  private void crossesInTurn() {
    IntVar[] cross =
        IntStream.range(0, r.crosses).mapToObj(j -> pos[r.crossItem(j)]).toArray(IntVar[]::new);
    int c = r.crosses;
    int chain = r.late == 0 ? c : c - 2;
    for (int j = 1; j < chain; j++) {
      model.arithm(cross[j - 1], "<", cross[j]).post();
    }
    if (r.late == 0) {
      return;
    }
    IntVar last = lastMain();
    if (c > 4) {
      model.arithm(cross[2], ">", last).post();
    }
    BoolVar backEarly = model.arithm(cross[c - 1], "<", last).reify();
    BoolVar nextEarly = model.arithm(cross[c - 2], "<", last).reify();
    model.ifThenElse(
        nextEarly,
        model.arithm(cross[c - 1], "<", cross[c - 2]),
        model.arithm(cross[c - 3], "<", cross[c - 2]));
    model.ifThen(backEarly.not(), model.arithm(cross[c - 2], "<", cross[c - 1]));
  }

  /** Where the last late main stands; only when there is one. */
  IntVar lastMain() {
    if (r.late == 1) {
      return pos[r.lateItem(0)];
    }
    IntVar last = model.intVar(0, size - 1);
    model.max(last, pos[r.lateItem(0)], pos[r.lateItem(1)]).post();
    return last;
  }

  /** The order of passes in the solution at hand, with these knots. */
  Found found(List<Knot> knots, boolean clamped) {
    List<Pass> s = new ArrayList<>(r.openings.shortOpens);
    List<Pass> l = new ArrayList<>(r.openings.longOpens);
    List<Pass> x = new ArrayList<>();
    List<Pass> to = s;
    for (IntVar v : code) {
      int c = v.getValue();
      if (c / 2 == TURN) {
        to = l;
      } else if (c / 2 == CUT) {
        to = x;
      } else if (c / 2 != OPEN) {
        to.add(r.pass(c));
      }
    }
    return new Found(
        r.openings.start,
        r.openings.direction,
        r.openings.shortSide,
        r.openings.shortOpening,
        r.openings.longOpening,
        s,
        l,
        x,
        knots,
        clamped ? Optional.of(x.get(0).from()) : Optional.empty(),
        List.of());
  }
}
