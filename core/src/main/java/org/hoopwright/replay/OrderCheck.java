package org.hoopwright.replay;

import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.ClampSide;
import org.hoopwright.bench.HalfDone;
import org.hoopwright.bench.Start;
import org.hoopwright.bench.StartMethod;
import org.hoopwright.bench.Step;
import org.hoopwright.bench.StrungEnd;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Moment;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Route;
import org.hoopwright.route.StringEnd;

/**
 * I10: steps and route agree. Opening mains of both ends may be strung in any turns; all else
 * follows the route's time order. A starting clamp on the first cross may be set before or after
 * that is woven: what counts is that it holds when the cross is pulled, which I3 sees to.
 */
final class OrderCheck implements StepCheck {

  private static final double TOLERANCE_MM = 0.05 + 1e-9; // plans in files are rounded to 0.1 mm

  private final BenchPlan plan;
  private final Route route;
  private final List<Moment> order;
  private final boolean[] done;
  private boolean clampedStart;
  private boolean mainsClamped;

  OrderCheck(BenchPlan plan) {
    this.plan = plan;
    route = plan.route();
    order = route.order().stream().filter(m -> m.what() != Moment.What.CLAMP).toList();
    done = new boolean[order.size()];
  }

  /**
   * Takes over what was done before the first step. A knot may come late: what is strung hangs on
   * its clamp until then.
   */
  void begin(HalfDone from, Breaches breaches) {
    for (int i = 0; i < from.pieces().size(); i++) {
      for (StrungEnd end : from.pieces().get(i).ends()) {
        List<Pass> wanted = end(i, end.name()).map(StringEnd::passes).orElse(List.of());
        for (int p = 0; p < end.passes().size(); p++) {
          int index = find(i, end.name(), Moment.What.PASS, p);
          boolean agrees = index >= 0 && wanted.get(p).equals(end.passes().get(p));
          breaches.addIf(
              !agrees,
              Invariant.I10_ROUTE,
              "The %s end has strung %s, which the route does not have there."
                  .formatted(end.name().word(), end.passes().get(p)));
          if (index >= 0) {
            done[index] = true;
          }
        }
        if (end.knot().isPresent()) {
          int index = find(i, end.name(), Moment.What.KNOT, -1);
          breaches.addIf(
              index < 0 || !end(i, end.name()).orElseThrow().finish().equals(end.knot().get()),
              Invariant.I10_ROUTE,
              "The %s end is knotted at %s, which the route does not have."
                  .formatted(end.name().word(), end.knot().get()));
          if (index >= 0) {
            done[index] = true;
          }
        }
      }
    }
    clampedStart |=
        route
            .end(EndName.START)
            .flatMap(StringEnd::startingClamp)
            .filter(
                h ->
                    from.clamps().stream()
                        .anyMatch(c -> c.side() == ClampSide.OUTSIDE && c.near().equals(h)))
            .isPresent();
    clampedStart |=
        from.pieces().size() > 1 && from.pieces().get(1).ends().get(0).knot().isPresent();
    inOrder(breaches);
  }

  private void inOrder(Breaches breaches) {
    for (int i = 0; i < order.size(); i++) {
      if (!done[i] || order.get(i).what() != Moment.What.PASS) {
        continue;
      }
      for (int j = 0; j < i; j++) {
        Moment earlier = order.get(j);
        boolean counts =
            earlier.what() == Moment.What.PASS
                && (!isOpening(order.get(i)) || sameOpening(earlier, order.get(i)));
        if (counts && !done[j]) {
          breaches.add(
              Invariant.I10_ROUTE,
              "The %s is strung, but the %s, which the route has first, is not."
                  .formatted(describe(order.get(i)), describe(earlier)));
          break;
        }
      }
    }
  }

  @Override
  public void before(BenchState state, Step step, Breaches breaches) {
    if (step instanceof Step.Cut s) {
      cut(state, s, breaches);
    } else if (step instanceof Step.Lace s) {
      pass(state, new Pass(s.span(), s.from(), s.to()), s.piece(), s.end(), breaches);
    } else if (step instanceof Step.Weave s) {
      pass(state, new Pass(s.span(), s.from(), s.to()), s.piece(), s.end(), breaches);
    } else if (step instanceof Step.Unlace s) {
      unlace(state, s);
    } else if (step instanceof Step.TieKnot s) {
      knot(s, breaches);
    } else if (step instanceof Step.SetClamp s) {
      clamp(s, breaches);
    } else if (step instanceof Step.Trim s) {
      breaches.addIf(
          end(s.piece(), s.end()).isEmpty(), Invariant.I10_ROUTE, noSuchEnd(s.piece(), s.end()));
    }
  }

  private void cut(BenchState state, Step.Cut s, Breaches breaches) {
    if (s.piece() < 0 || s.piece() >= route.pieces().size()) {
      breaches.add(
          Invariant.I10_ROUTE,
          "Piece %s is cut, but the route has %s pieces."
              .formatted(s.piece(), route.pieces().size()));
      return;
    }
    breaches.addIf(
        state.isCut(s.piece()), Invariant.I10_ROUTE, "Piece %s is cut twice.".formatted(s.piece()));
    boolean agrees =
        s.piece() < plan.cutLengthsMm().size()
            && Math.abs(plan.cutLengthsMm().get(s.piece()) - s.lengthMm()) <= TOLERANCE_MM;
    breaches.addIf(
        !agrees,
        Invariant.I10_ROUTE,
        "Piece %s is cut at %s mm, but the plan's cut lengths are %s mm."
            .formatted(s.piece(), s.lengthMm(), plan.cutLengthsMm()));
  }

  private void pass(BenchState state, Pass pass, int piece, EndName name, Breaches breaches) {
    Optional<StringEnd> end = end(piece, name);
    if (end.isEmpty()) {
      breaches.add(Invariant.I10_ROUTE, noSuchEnd(piece, name));
      return;
    }
    breaches.addIf(
        !state.isCut(piece),
        Invariant.I10_ROUTE,
        "%s is laced before piece %s is cut.".formatted(pass.span(), piece));
    breaches.addIf(
        !state.joins(pass.span(), pass.from(), pass.to()),
        Invariant.I10_ROUTE,
        "No span %s runs from %s to %s.".formatted(pass.span(), pass.from(), pass.to()));
    breaches.addIf(
        state.isLaced(pass.span()),
        Invariant.I10_ROUTE,
        "%s is laced while it is in already.".formatted(pass.span()));
    int index = state.path(piece, name).map(p -> p.passes(name).size()).orElse(0);
    List<Pass> passes = end.get().passes();
    if (index >= passes.size()) {
      breaches.add(
          Invariant.I10_ROUTE,
          "The %s end goes on to %s, but the route gives it %s spans only."
              .formatted(name.word(), pass.span(), passes.size()));
      return;
    }
    breaches.addIf(
        !passes.get(index).equals(pass),
        Invariant.I10_ROUTE,
        "The %s end goes through %s, but the route has %s next."
            .formatted(name.word(), pass, passes.get(index)));
    arrive(find(piece, name, Moment.What.PASS, index), "pass " + pass, breaches);
  }

  private void unlace(BenchState state, Step.Unlace s) {
    state
        .path(s.piece(), s.end())
        .filter(p -> BenchState.outermost(p, s.end(), s.span()))
        .ifPresent(
            p -> {
              int i = find(s.piece(), s.end(), Moment.What.PASS, p.passes(s.end()).size() - 1);
              if (i >= 0) {
                done[i] = false;
              }
            });
  }

  private void knot(Step.TieKnot s, Breaches breaches) {
    Optional<StringEnd> end = end(s.piece(), s.end());
    if (end.isEmpty()) {
      breaches.add(Invariant.I10_ROUTE, noSuchEnd(s.piece(), s.end()));
      return;
    }
    Knot knot = new Knot(s.kind(), s.hole(), s.anchor());
    breaches.addIf(
        !end.get().finish().equals(knot),
        Invariant.I10_ROUTE,
        "The %s end is knotted at %s, but the route has %s."
            .formatted(s.end().word(), knot, end.get().finish()));
    arrive(
        find(s.piece(), s.end(), Moment.What.KNOT, -1),
        "knot of the " + s.end().word() + " end",
        breaches);
  }

  private void clamp(Step.SetClamp s, Breaches breaches) {
    if (s.side() != ClampSide.OUTSIDE) {
      return;
    }
    if (s.span().isMain()) {
      Optional<Start> start = plan.start().filter(p -> p.method() == StartMethod.ANCHOR_MAIN);
      Optional<HoleId> stated = start.flatMap(Start::clampOutside);
      if (!mainsClamped && start.isPresent() && stated.isPresent()) {
        SpanId anchor = start.get().anchor();
        breaches.addIf(
            !(stated.get().equals(s.near()) && anchor.equals(s.span())),
            Invariant.I10_ROUTE,
            "The starting clamp is set on %s outside %s, but the start has it on %s outside %s."
                .formatted(s.span(), s.near(), anchor, stated.get()));
      }
      mainsClamped = true;
      return;
    }
    clampedStart |=
        route
            .end(EndName.START)
            .flatMap(StringEnd::startingClamp)
            .filter(s.near()::equals)
            .isPresent();
  }

  private void arrive(int index, String what, Breaches breaches) {
    if (index < 0) {
      breaches.add(
          Invariant.I10_ROUTE, "The route's time order has no place for the " + what + ".");
      return;
    }
    boolean opening = isOpening(order.get(index));
    for (int i = 0; i < order.size(); i++) {
      Moment earlier = order.get(i);
      boolean before = opening ? sameOpening(earlier, order.get(index)) && i < index : i < index;
      if (!before && !opening && isOpening(earlier)) {
        before = true;
      }
      if (before && !done[i]) {
        breaches.add(
            Invariant.I10_ROUTE,
            "The %s comes before the %s, which the route has first."
                .formatted(what, describe(earlier)));
        break;
      }
    }
    done[index] = true;
  }

  private boolean isOpening(Moment m) {
    return m.what() == Moment.What.PASS && m.pass() < route.opening(m.end());
  }

  private boolean sameOpening(Moment a, Moment b) {
    return isOpening(a) && a.piece() == b.piece() && a.end() == b.end();
  }

  private int find(int piece, EndName end, Moment.What what, int pass) {
    for (int i = 0; i < order.size(); i++) {
      Moment m = order.get(i);
      if (m.piece() == piece && m.end() == end && m.what() == what && m.pass() == pass) {
        return i;
      }
    }
    return -1;
  }

  private Optional<StringEnd> end(int piece, EndName name) {
    return piece < 0 || piece >= route.pieces().size()
        ? Optional.empty()
        : route.pieces().get(piece).end(name);
  }

  private static String noSuchEnd(int piece, EndName name) {
    return "The route has no %s end of piece %s.".formatted(name.word(), piece);
  }

  private String describe(Moment m) {
    if (m.what() == Moment.What.KNOT) {
      return "knot of the " + m.end().word() + " end";
    }
    Optional<SpanId> span =
        end(m.piece(), m.end())
            .map(StringEnd::passes)
            .filter(p -> m.pass() >= 0 && m.pass() < p.size())
            .map(p -> p.get(m.pass()).span());
    return "pass " + span.map(SpanId::toString).orElse("unknown");
  }

  @Override
  public void end(BenchState state, Breaches breaches) {
    for (int i = 0; i < order.size(); i++) {
      breaches.addIf(
          !done[i],
          Invariant.I10_ROUTE,
          "The route's %s is never done.".formatted(describe(order.get(i))));
    }
    breaches.addIf(
        !clampedStart && route.end(EndName.START).flatMap(StringEnd::startingClamp).isPresent(),
        Invariant.I10_ROUTE,
        "The route begins the crosses with a starting clamp, but none is set.");
  }
}
