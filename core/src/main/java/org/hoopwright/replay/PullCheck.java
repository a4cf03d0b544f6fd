package org.hoopwright.replay;

import java.util.Locale;
import java.util.Optional;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.Step;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Piece;
import org.hoopwright.route.StringEnd;

/** I3: only free tails are pulled. I4: the lead. I6: tensions. */
final class PullCheck implements StepCheck {

  /** Plans in files are rounded to 0.1 N. */
  static final double TOLERANCE_N = 0.05 + 1e-9;

  private final BenchPlan plan;
  private final double mains;
  private final double crosses;
  private boolean taken; // whether the pull at hand found the tensioner free

  PullCheck(BenchPlan plan) {
    this.plan = plan;
    Layout layout = plan.bed().layout();
    mains = plan.job().mainsTension(layout).newtons();
    crosses = plan.job().crossesTension(layout).newtons();
  }

  @Override
  public void before(BenchState state, Step step, Breaches breaches) {
    if (step instanceof Step.Pull s) {
      taken = !state.busy();
      breaches.addIf(
          state.busy(),
          Invariant.I3_FREE_TAIL,
          "The tail of %s is pulled before the tensioner has let go of the last one."
              .formatted(names(s)));
      for (String fault : PullReading.of(state, s).faults()) {
        breaches.add(Invariant.I3_FREE_TAIL, fault);
      }
    } else if (step instanceof Step.Release) {
      breaches.addIf(
          !state.busy(), Invariant.I3_FREE_TAIL, "The tensioner is let go, but it grips nothing.");
    } else if (step instanceof Step.Hold s) {
      breaches.addIf(
          state.tail(s.span(), s.at()).isEmpty(),
          Invariant.I3_FREE_TAIL,
          "No free tail comes out of %s at %s to be held by hand.".formatted(s.span(), s.at()));
    } else if (step instanceof Step.Lace s) {
      freeToLace(state, s.span(), s.piece(), s, breaches);
    } else if (step instanceof Step.Weave s) {
      freeToLace(state, s.span(), s.piece(), s, breaches);
    }
  }

  private static void freeToLace(
      BenchState state, SpanId span, int piece, Step step, Breaches breaches) {
    var end = step instanceof Step.Lace l ? l.end() : ((Step.Weave) step).end();
    if (state.path(piece, end).isEmpty()) {
      return; // said under I10
    }
    breaches.addIf(
        state.gripped(end),
        Invariant.I3_FREE_TAIL,
        "%s cannot be laced while the tensioner grips the %s end.".formatted(span, end.word()));
    breaches.addIf(
        state.knotted(end),
        Invariant.I3_FREE_TAIL,
        "%s cannot be laced, because the %s end is knotted.".formatted(span, end.word()));
  }

  @Override
  public void after(BenchState state, Step step, Breaches breaches) {
    if (!(step instanceof Step.Pull s) || !taken) {
      return;
    }
    for (Grip grip : state.grips()) {
      if (takesLoadOff(state, grip)) {
        continue;
      }
      state.obstacle(grip).ifPresent(why -> breaches.add(Invariant.I3_FREE_TAIL, why));
    }
    double tension = s.tension().newtons();
    if (state.grips().size() == 1) {
      ownPull(state, state.grips().get(0), tension, breaches);
    } else if (state.grips().size() == 2) {
      SpanId first = state.grips().get(0).span();
      breaches.addIf(
          !near(tension, reference(first)),
          Invariant.I6_OWN_PULL,
          "The shared pull of %s is %s N, but both tails together are pulled at %s N."
              .formatted(names(s), newtons(tension), newtons(reference(first))));
    }
  }

  /**
   * Whether a span that has had its own pull is pulled again at the clamp that holds it: the grip
   * then bears what the clamp has borne, and the clamp may come off.
   */
  private static boolean takesLoadOff(BenchState state, Grip grip) {
    return state.pulled().contains(grip.span())
        && state.clampInside(grip.span(), grip.at()).isPresent();
  }

  private void ownPull(BenchState state, Grip grip, double tension, Breaches breaches) {
    double reference = reference(grip.span());
    double extra = plan.job().lastPullExtra().newtons();
    boolean last = lastBeforeKnot(grip);
    if (!near(tension, reference) && !(last && near(tension, reference + extra))) {
      breaches.add(
          Invariant.I6_OWN_PULL,
          "%s is pulled at %s N, but its reference tension is %s N%s."
              .formatted(
                  grip.span(),
                  newtons(tension),
                  newtons(reference),
                  last && extra > 0
                      ? ", or " + newtons(reference + extra) + " N before its knot"
                      : ""));
    }
    int left = pulledMains(state, Side.LEFT);
    int right = pulledMains(state, Side.RIGHT);
    breaches.addIf(
        grip.span().isMain() && Math.abs(left - right) > plan.job().leadLimit(),
        Invariant.I4_LEAD,
        "%s left and %s right mains have had their own pull, a lead of %s, but the limit is %s."
            .formatted(left, right, Math.abs(left - right), plan.job().leadLimit()));
  }

  /** Whether this is the pull after which the end is knotted. */
  private boolean lastBeforeKnot(Grip grip) {
    if (grip.piece() >= plan.route().pieces().size()) {
      return false;
    }
    Piece piece = plan.route().pieces().get(grip.piece());
    Optional<StringEnd> end = piece.end(grip.end());
    if (end.isEmpty()) {
      return false;
    }
    if (piece.role() == Piece.Role.CROSSES && end.get().passes().isEmpty()) {
      return true; // the first cross is pulled again for the knot that replaces its starting clamp
    }
    Optional<SpanId> last = end.get().passes().stream().reduce((a, b) -> b).map(Pass::span);
    return last.filter(grip.span()::equals).isPresent();
  }

  private static String names(Step.Pull pull) {
    return String.join(" and ", pull.tails().stream().map(SpanId::toString).toList());
  }

  private double reference(SpanId span) {
    return span.isMain() ? mains : crosses;
  }

  private static int pulledMains(BenchState state, Side side) {
    return (int)
        state.pulled().stream().filter(s -> s.side().filter(side::equals).isPresent()).count();
  }

  private static boolean near(double a, double b) {
    return Math.abs(a - b) <= TOLERANCE_N;
  }

  private static String newtons(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  @Override
  public void end(BenchState state, Breaches breaches) {
    state.bed().spans().stream()
        .filter(s -> state.isLaced(s.id()) && !state.pulled().contains(s.id()))
        .forEach(
            s -> breaches.add(Invariant.I6_OWN_PULL, s.id() + " has never had a pull of its own."));
  }
}
