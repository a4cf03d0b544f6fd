package org.hoopwright.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;
import org.hoopwright.testing.BruteForceRoutes.Found;

/**
 * Orders of passes found by a constraint solver: what follows the opening mains is a sequence of
 * directed spans with a table of neighbours, an inverse channel to the spans' positions, and the
 * rules of early crosses on those positions. It shares no code with the search that it judges, and
 * knows nothing of knots.
 */
final class ChocoRoutes {

  private final Bed bed;
  private final RouteRequest request;
  private final int crosses;
  private final List<Found> found = new ArrayList<>();

  private ChocoRoutes(Bed bed, RouteRequest request) {
    this.bed = bed;
    this.request = request;
    this.crosses = bed.crossCount();
  }

  /** Every order of passes in every reading, without knots. */
  static List<Found> orders(Bed bed, RouteRequest request) {
    ChocoRoutes routes = new ChocoRoutes(bed, request);
    for (End start : End.values()) {
      for (Direction direction : Direction.values()) {
        if (request.mainsStart().orElse(start) == start
            && bed.layout().mainsStart().orElse(start) == start
            && request.direction().orElse(direction) == direction) {
          for (Side side : Side.values()) {
            routes.openings(start, direction, side);
          }
        }
      }
    }
    return routes.found;
  }

  private void openings(End start, Direction direction, Side side) {
    int n = bed.mainsPerSide();
    int least = n >= 4 && crosses >= 5 ? n - 1 : n;
    for (int s = least; s <= n; s++) {
      for (int l = least; l <= n; l++) {
        Reading r = new Reading(start, direction, side, s, l);
        boolean endsAtStart = n % 2 == 0;
        boolean goesRound =
            r.late() > 0 && direction.from() != (endsAtStart ? start : start.other());
        if (goesRound && !bed.layout().aroundTheWorld()) {
          continue;
        }
        int all = r.late() + crosses;
        if (request.pieces().orElse(1) == 1) {
          for (int a = 0; a <= Math.min(all, 2 + r.late()); a++) {
            solve(r, a, all);
          }
        }
        if (request.pieces().orElse(2) == 2) {
          for (int b = r.late() > 0 ? 1 : 0; b < all; b++) {
            solve(r, 0, b);
          }
        }
      }
    }
  }

  /** What is settled before the solver begins. */
  private final class Reading {
    final End start;
    final Direction direction;
    final Side shortSide;
    final int shortOpening;
    final int longOpening;
    final List<Span> items = new ArrayList<>(); // crosses in their order, then late mains

    Reading(End start, Direction direction, Side shortSide, int shortOpening, int longOpening) {
      this.start = start;
      this.direction = direction;
      this.shortSide = shortSide;
      this.shortOpening = shortOpening;
      this.longOpening = longOpening;
      for (int i = 0; i < crosses; i++) {
        items.add(bed.crosses().get(direction == Direction.HEAD_TO_THROAT ? i : crosses - 1 - i));
      }
      int n = bed.mainsPerSide();
      if (shortOpening < n) {
        items.add(bed.mains(shortSide).get(n - 1));
      }
      if (longOpening < n) {
        items.add(bed.mains(shortSide.other()).get(n - 1));
      }
    }

    int late() {
      return items.size() - crosses;
    }

    Pass pass(int code) {
      Span span = items.get(code / 2);
      return code % 2 == 0
          ? new Pass(span.id(), span.from(), span.to())
          : new Pass(span.id(), span.to(), span.from());
    }

    List<Pass> opening(Side side, int count) {
      List<Pass> passes = new ArrayList<>();
      for (int k = 0; k < count; k++) {
        Span main = bed.mains(side).get(k);
        boolean down = (k % 2 == 0) == (start == End.HEAD);
        passes.add(
            down
                ? new Pass(main.id(), main.from(), main.to())
                : new Pass(main.id(), main.to(), main.from()));
      }
      return passes;
    }
  }

  private boolean run(HoleId a, HoleId b) {
    return bed.ring().runAllowed(a, b)
        && Math.abs(bed.ring().place(a) - bed.ring().place(b)) <= request.runLimit();
  }

  private boolean trail(List<Pass> passes) {
    return IntStream.range(1, passes.size())
        .allMatch(i -> run(passes.get(i - 1).to(), passes.get(i).from()));
  }

  /** The short end strings the first {@code a} items, the long end up to {@code b}. */
  private void solve(Reading r, int a, int b) {
    List<Pass> shortOpen = r.opening(r.shortSide, r.shortOpening);
    List<Pass> longOpen = r.opening(r.shortSide.other(), r.longOpening);
    if (!trail(shortOpen) || !trail(longOpen)) {
      return;
    }
    int size = r.items.size();
    Model model = new Model();
    IntVar[] item = new IntVar[size];
    IntVar[] code = new IntVar[size];
    IntVar[] pos = model.intVarArray(size, 0, size - 1);
    for (int i = 0; i < size; i++) {
      boolean second = i >= b;
      boolean isShort = i < a;
      HoleId from =
          i == 0 && a > 0
              ? shortOpen.get(shortOpen.size() - 1).to()
              : i == a && i < b ? longOpen.get(longOpen.size() - 1).to() : null;
      int at = i;
      int[] codes =
          IntStream.range(0, 2 * size)
              .filter(c -> !second || c / 2 < crosses)
              .filter(c -> at > 0 || c / 2 < crosses) // a main only after a cross
              .filter(c -> !isShort || outer(c / 2))
              .filter(c -> from == null || run(from, r.pass(c).from()))
              .toArray();
      if (codes.length == 0) {
        return;
      }
      code[i] = model.intVar(codes);
      item[i] = model.intVar(0, size - 1);
      model.div(code[i], model.intVar(2), item[i]).post();
    }
    model.inverseChanneling(item, pos).post();
    Tuples neighbours = new Tuples(true);
    for (int c = 0; c < 2 * size; c++) {
      for (int d = 0; d < 2 * size; d++) {
        if (c / 2 != d / 2 && run(r.pass(c).to(), r.pass(d).from())) {
          neighbours.add(c, d);
        }
      }
    }
    for (int i = 1; i < size; i++) {
      if (i != a && i != b) {
        model.table(code[i - 1], code[i], neighbours).post();
      }
    }
    turns(model, r, pos);
    if (a > 2) {
      BoolVar[] mains =
          IntStream.range(crosses, size)
              .mapToObj(m -> model.arithm(pos[m], "<", a).reify())
              .toArray(BoolVar[]::new);
      model.sum(mains, ">=", a - 2).post(); // at most two crosses by the short end
    }
    model.getSolver().setSearch(Search.inputOrderLBSearch(code));
    while (model.getSolver().solve()) {
      keep(r, code, a, b, shortOpen, longOpen);
    }
  }

  private boolean outer(int item) {
    return item < 2 || item >= crosses - 2;
  }

  private void turns(Model model, Reading r, IntVar[] pos) {
    if (r.late() == 0) {
      for (int j = 1; j < crosses; j++) {
        model.arithm(pos[j - 1], "<", pos[j]).post();
      }
      return;
    }
    IntVar last = pos[crosses];
    if (r.late() > 1) {
      last = model.intVar(0, pos.length - 1);
      model.max(last, pos[crosses], pos[crosses + 1]).post();
    }
    int c = crosses;
    for (int j = 1; j <= c - 3; j++) {
      model.arithm(pos[j - 1], "<", pos[j]).post();
    }
    for (int j = 2; j <= c - 3; j++) {
      model.arithm(pos[j], ">", last).post();
    }
    BoolVar backEarly = model.arithm(pos[c - 1], "<", last).reify();
    BoolVar nextEarly = model.arithm(pos[c - 2], "<", last).reify();
    model.ifThenElse(
        nextEarly,
        model.arithm(pos[c - 1], "<", pos[c - 2]),
        model.arithm(pos[c - 3], "<", pos[c - 2]));
    model.ifThen(backEarly.not(), model.arithm(pos[c - 2], "<", pos[c - 1]));
  }

  private void keep(
      Reading r, IntVar[] code, int a, int b, List<Pass> shortOpen, List<Pass> longOpen) {
    List<Pass> s = new ArrayList<>(shortOpen);
    List<Pass> l = new ArrayList<>(longOpen);
    List<Pass> x = new ArrayList<>();
    for (int i = 0; i < code.length; i++) {
      (i < a ? s : i < b ? l : x).add(r.pass(code[i].getValue()));
    }
    found.add(
        new Found(
            r.start,
            r.direction,
            r.shortSide,
            r.shortOpening,
            r.longOpening,
            s,
            l,
            x,
            List.of(),
            Optional.empty(),
            List.of()));
  }
}
