package org.hoopwright.replay;

import java.util.Optional;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.Step;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Knot;
import org.hoopwright.route.StringEnd;

/** I7: knots. I8: what is left at the end. */
final class KnotCheck implements StepCheck {

  private final BenchPlan plan;
  private final Bed bed;

  KnotCheck(BenchPlan plan) {
    this.plan = plan;
    bed = plan.bed();
  }

  @Override
  public void before(BenchState state, Step step, Breaches breaches) {
    if (step instanceof Step.TieKnot s && state.path(s.piece(), s.end()).isPresent()) {
      breaches.addIf(
          state.knotted(s.end()),
          Invariant.I7_KNOT,
          "The %s end is knotted twice.".formatted(s.end().word()));
      breaches.addIf(
          state.busy(),
          Invariant.I7_KNOT,
          "The %s end is knotted before the tensioner has let go.".formatted(s.end().word()));
      if (s.kind() == Knot.Kind.STARTING) {
        startingKnot(s, breaches);
      } else {
        state
            .path(s.piece(), s.end())
            .ifPresent(path -> lastSpan(state, s, path.tail(s.end()), breaches));
      }
      hole(state, s, breaches);
      anchor(state, s, breaches);
    } else if (step instanceof Step.Trim s) {
      breaches.addIf(
          !state.knotted(s.end()),
          Invariant.I7_KNOT,
          "The tail of the %s end is trimmed before it is knotted.".formatted(s.end().word()));
      breaches.addIf(
          state.isTrimmed(s.end()),
          Invariant.I7_KNOT,
          "The tail of the %s end is trimmed twice.".formatted(s.end().word()));
    }
  }

  private void startingKnot(Step.TieKnot s, Breaches breaches) {
    breaches.addIf(
        s.end() != EndName.START,
        Invariant.I7_KNOT,
        "The %s end cannot be tied with a starting knot.".formatted(s.end().word()));
    breaches.addIf(
        firstCross().filter(s.anchor()::equals).isPresent(),
        Invariant.I7_KNOT,
        "The starting knot cannot be tied round %s, the cross that is pulled on it."
            .formatted(s.anchor()));
  }

  private Optional<SpanId> firstCross() {
    return plan.route()
        .end(EndName.FINISH)
        .map(StringEnd::passes)
        .filter(p -> !p.isEmpty())
        .map(p -> p.get(0).span());
  }

  private static void lastSpan(
      BenchState state, Step.TieKnot s, Optional<Grip> tail, Breaches breaches) {
    if (tail.isEmpty()) {
      breaches.add(
          Invariant.I7_KNOT,
          "The %s end is knotted before it runs through any span.".formatted(s.end().word()));
      return;
    }
    SpanId span = tail.get().span();
    HoleId at = tail.get().at();
    breaches.addIf(
        state.clampInside(span, at).isEmpty() && state.clampOutside(span, at).isEmpty(),
        Invariant.I7_KNOT,
        "The %s end is knotted while no clamp holds %s at %s.".formatted(s.end().word(), span, at));
    breaches.addIf(
        !state.pulled().contains(span),
        Invariant.I7_KNOT,
        "The %s end is knotted before its last span %s has had its own pull."
            .formatted(s.end().word(), span));
    breaches.addIf(
        s.anchor().equals(span),
        Invariant.I7_KNOT,
        "The %s end cannot be knotted round %s, its own last span."
            .formatted(s.end().word(), span));
  }

  private void hole(BenchState state, Step.TieKnot s, Breaches breaches) {
    HoleId hole = s.hole();
    if (!bed.ring().has(hole)) {
      breaches.add(Invariant.I7_KNOT, "The knot hole %s is none of the frame's.".formatted(hole));
      return;
    }
    breaches.addIf(
        !bed.ring().isTieOff(hole),
        Invariant.I7_KNOT,
        "The hole %s is no tie-off hole.".formatted(hole));
    breaches.addIf(
        state.hasKnot(hole), Invariant.I7_KNOT, "The hole %s has a knot already.".formatted(hole));
    int strings = bed.spansAt(hole).size() + 1;
    breaches.addIf(
        strings > bed.ring().bore(hole),
        Invariant.I7_KNOT,
        "The hole %s would take %s strings with the knot, but its bore is %s."
            .formatted(hole, strings, bed.ring().bore(hole)));
  }

  private void anchor(BenchState state, Step.TieKnot s, Breaches breaches) {
    boolean through =
        bed.find(s.anchor()).filter(span -> span.uses(s.hole())).isPresent()
            && state.isLaced(s.anchor());
    breaches.addIf(
        !through,
        Invariant.I7_KNOT,
        "The knot at %s is tied round %s, which does not run through that hole."
            .formatted(s.hole(), s.anchor()));
    breaches.addIf(
        through && !state.pulled().contains(s.anchor()),
        Invariant.I7_KNOT,
        "The knot at %s is tied round %s before that has had its own pull."
            .formatted(s.hole(), s.anchor()));
  }

  @Override
  public void end(BenchState state, Breaches breaches) {
    bed.spans().stream()
        .filter(s -> !state.isLaced(s.id()))
        .forEach(s -> breaches.add(Invariant.I8_END, s.id() + " is not strung at the end."));
    for (StringPath path : state.paths()) {
      for (EndName end : new EndName[] {path.lowEnd(), path.highEnd()}) {
        breaches.addIf(
            !state.knotted(end),
            Invariant.I8_END,
            "The %s end is not knotted at the end.".formatted(end.word()));
      }
    }
    for (PlacedClamp clamp : state.clamps()) {
      breaches.add(
          Invariant.I8_END,
          "The clamp %s is still on %s at the end.".formatted(clamp.name(), clamp.span()));
    }
    breaches.addIf(state.busy(), Invariant.I8_END, "The tensioner has not let go at the end.");
  }
}
