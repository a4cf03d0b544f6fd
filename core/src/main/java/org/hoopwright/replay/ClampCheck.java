package org.hoopwright.replay;

import java.util.Locale;
import java.util.Optional;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Crossing;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.Bench;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.ClampSide;
import org.hoopwright.bench.Step;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.route.EndName;
import org.hoopwright.route.StringEnd;

/** I2: clamps are at hand, where they can sit, and out of the weave's way. I5: the head zone. */
final class ClampCheck implements StepCheck {

  /** How far from a clamp's jaws a string can still be woven, in mm: our choice. */
  static final double WEAVE_MARGIN_MM = 4.0;

  private static final double ROUNDING_MM = 1e-6; // below any drilling, above arithmetic noise

  private final BenchPlan plan;
  private final Bed bed;
  private final Bench bench;

  ClampCheck(BenchPlan plan) {
    this.plan = plan;
    bed = plan.bed();
    bench = plan.job().bench();
  }

  @Override
  public void before(BenchState state, Step step, Breaches breaches) {
    if (step instanceof Step.SetClamp s) {
      atHand(state, s, breaches);
      place(state, s, breaches);
      headZone(s, breaches);
    } else if (step instanceof Step.FreeClamp s) {
      breaches.addIf(
          state.clamp(s.clamp()).isEmpty(),
          Invariant.I2_CLAMPS,
          "The clamp %s is taken off, but it is not set.".formatted(s.clamp()));
    } else if (step instanceof Step.Lace s) {
      roomToWeave(state, s.span(), breaches);
    } else if (step instanceof Step.Weave s) {
      roomToWeave(state, s.span(), breaches);
    }
  }

  private void atHand(BenchState state, Step.SetClamp s, Breaches breaches) {
    Optional<ClampKind> kind = ClampKind.of(s.clamp());
    if (kind.isEmpty()) {
      breaches.add(
          Invariant.I2_CLAMPS,
          "\"%s\" is no clamp's name, which is such as machine-1 or starting-1."
              .formatted(s.clamp()));
      return;
    }
    int count = kind.get().count(bench);
    breaches.addIf(
        ClampKind.number(s.clamp()) > count,
        Invariant.I2_CLAMPS,
        "The clamp %s is not at hand, because the bench has %s %s clamps."
            .formatted(s.clamp(), count, kind.get().word()));
    state
        .clamp(s.clamp())
        .ifPresent(
            old ->
                breaches.add(
                    Invariant.I2_CLAMPS,
                    "The clamp %s is set on %s while it is still on %s."
                        .formatted(s.clamp(), s.span(), old.span())));
    breaches.addIf(
        kind.get() == ClampKind.MACHINE && s.side() == ClampSide.OUTSIDE,
        Invariant.I2_CLAMPS,
        "The clamp %s is set outside the frame, but machine clamps sit inside only."
            .formatted(s.clamp()));
  }

  private void place(BenchState state, Step.SetClamp s, Breaches breaches) {
    Optional<Span> span = bed.find(s.span());
    if (span.isEmpty() || !span.get().uses(s.near())) {
      breaches.add(
          Invariant.I2_CLAMPS,
          "The clamp %s is set on %s near %s, but no such span runs through that hole."
              .formatted(s.clamp(), s.span(), s.near()));
      return;
    }
    double d = s.distanceMm();
    breaches.addIf(
        !(d >= 0.0 && d <= Double.MAX_VALUE),
        Invariant.I2_CLAMPS,
        "The clamp %s is set %s mm from %s, but a distance is 0 mm or more."
            .formatted(s.clamp(), d, s.near()));
    if (s.side() == ClampSide.INSIDE) {
      breaches.addIf(
          !state.isLaced(s.span()),
          Invariant.I2_CLAMPS,
          "The clamp %s is set on %s, which is not laced.".formatted(s.clamp(), s.span()));
      breaches.addIf(
          d + bench.clampLengthMm() > span.get().lengthMm() + ROUNDING_MM,
          Invariant.I2_CLAMPS,
          "The clamp %s at %s mm from %s does not fit into %s, which is %s mm long."
              .formatted(s.clamp(), mm(d), s.near(), s.span(), mm(span.get().lengthMm())));
    } else {
      breaches.addIf(
          state.tail(s.span(), s.near()).isEmpty() && !firstCross(state, s),
          Invariant.I2_CLAMPS,
          "The clamp %s is set outside %s, but no free tail of %s comes out there."
              .formatted(s.clamp(), s.near(), s.span()));
    }
    for (PlacedClamp other : state.clamps()) {
      breaches.addIf(
          !other.name().equals(s.clamp()) && overlap(s, other, span.get()),
          Invariant.I2_CLAMPS,
          "The clamps %s and %s overlap on %s.".formatted(other.name(), s.clamp(), s.span()));
    }
  }

  /**
   * Whether the clamp holds the tail of a crosses' piece whose first cross is still to be woven.
   */
  private boolean firstCross(BenchState state, Step.SetClamp s) {
    return !state.isLaced(s.span())
        && plan.route()
            .end(EndName.FINISH)
            .map(StringEnd::passes)
            .filter(p -> !p.isEmpty())
            .map(p -> p.get(0))
            .filter(p -> p.span().equals(s.span()) && p.from().equals(s.near()))
            .isPresent();
  }

  private boolean overlap(Step.SetClamp s, PlacedClamp other, Span span) {
    if (!other.span().equals(s.span()) || other.side() != s.side()) {
      return false;
    }
    double a = s.distanceMm();
    double b = other.distanceMm();
    if (!other.near().equals(s.near())) {
      if (s.side() == ClampSide.OUTSIDE) {
        return false;
      }
      b = span.lengthMm() - b - bench.clampLengthMm();
    }
    return Math.abs(a - b) < bench.clampLengthMm() - ROUNDING_MM;
  }

  private void headZone(Step.SetClamp s, Breaches breaches) {
    if (s.side() != ClampSide.OUTSIDE || !bed.ring().has(s.near()) || !bed.inHeadZone(s.near())) {
      return;
    }
    if (!plan.job().clampInHeadZoneAllowed()) {
      breaches.add(
          Invariant.I5_HEAD_ZONE,
          "The clamp %s is set outside %s, which lies in the head zone (1H to %s)."
              .formatted(s.clamp(), s.near(), bed.headZone(s.near().side())));
    } else if (plan.findings().stream()
        .noneMatch(f -> f.code() == FindingCode.START_CLAMP_HEAD_ZONE)) {
      breaches.add(
          Invariant.I5_HEAD_ZONE,
          "The clamp %s is set outside %s in the head zone without a warning."
              .formatted(s.clamp(), s.near()));
    }
  }

  private void roomToWeave(BenchState state, SpanId woven, Breaches breaches) {
    for (Crossing c : bed.crossings(woven)) {
      SpanId met = c.main().equals(woven) ? c.cross() : c.main();
      Optional<Span> span = bed.find(met);
      if (!state.isLaced(met) || span.isEmpty()) {
        continue;
      }
      double fromFirstHole = met.isMain() ? c.fromHeadMm() : c.fromLeftMm();
      for (PlacedClamp clamp : state.clamps()) {
        if (!clamp.inside() || !clamp.span().equals(met)) {
          continue;
        }
        double at =
            clamp.near().equals(span.get().from())
                ? fromFirstHole
                : span.get().lengthMm() - fromFirstHole;
        double gap =
            Math.max(clamp.distanceMm() - at, at - (clamp.distanceMm() + bench.clampLengthMm()));
        breaches.addIf(
            gap < WEAVE_MARGIN_MM - ROUNDING_MM,
            Invariant.I2_CLAMPS,
            gap <= 0
                ? "%s cannot be woven, because the clamp %s covers its crossing with %s."
                    .formatted(woven, clamp.name(), met)
                : "%s cannot be woven, because the clamp %s is %s mm from its crossing with %s."
                    .formatted(woven, clamp.name(), mm(gap), met));
      }
    }
  }

  private static String mm(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
