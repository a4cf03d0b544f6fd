package org.hoopwright.replay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.Step;
import org.hoopwright.geometry.Side;

/**
 * Estimates what strings, clamps and hoop bear while a plan is done.
 *
 * <p>A pull of T gives T in the span next to the grip and T × e^(−friction × wrap) past each bend
 * (the capstan equation), never lowers what is there, and never passes a clamp; a shared pull gives
 * half of T to each tail. The tensioner keeps pulling while it grips. When it lets go, the first
 * clamp inwards takes the load and the string slips back by the drawback, which costs drawback ×
 * stiffness ÷ length of that span. When a clamp comes off and a knot takes the load, the stretch
 * between clamp and knot, tied less tight than the span, takes its share and the knot gives by the
 * drawback. What is held on one side only is slack.
 *
 * <p>Left out: friction between the strings of the weave, creep, and the hoop's own give; so these
 * numbers compare plans and do not foretell a bed's tension. Each result is the range over every
 * choice of lowest and highest parameters.
 *
 * <p>Stateless, deterministic and safe to call from any thread. It takes any plan, also one that
 * the {@link Replay} finds wrong: what cannot be done changes nothing.
 */
public final class ForceEstimate {

  private ForceEstimate() {}

  /**
   * Estimates with the default parameters for the strings of the plan.
   *
   * @param plan a plan for a bed and a route of that bed
   */
  public static Estimates of(BenchPlan plan) {
    return of(plan, ForceParameters.of(plan));
  }

  /**
   * Estimates with other parameters.
   *
   * @param plan a plan for a bed and a route of that bed
   * @param parameters the parameters and their ranges
   */
  public static Estimates of(BenchPlan plan, ForceParameters parameters) {
    BenchState state = new BenchState(plan);
    List<Squeeze> squeezes = plan.bed().spans().stream().map(Squeeze::of).toList();
    List<Peaks> all =
        parameters.corners().stream()
            .map(c -> new Peaks(new Tensions(state, c), squeezes))
            .toList();
    for (Step step : plan.steps()) {
      List<Grip> before = state.grips();
      Optional<PlacedClamp> old =
          step instanceof Step.FreeClamp s
              ? state.clamp(s.clamp())
              : step instanceof Step.SetClamp s ? state.clamp(s.clamp()) : Optional.empty();
      state.apply(step);
      if (!changesLoads(step)) {
        continue;
      }
      List<Holding> holdings = new ArrayList<>();
      state.paths().forEach(p -> holdings.add(new Holding(state, p)));
      for (Peaks peaks : all) {
        peaks.tensions.follow(step, before, old, holdings);
        peaks.look(state);
      }
    }
    Map<SpanId, Interval> spans = new TreeMap<>();
    for (Span span : plan.bed().spans()) {
      all.forEach(
          p -> spans.merge(span.id(), Interval.of(p.tensions.main(span.id())), Interval::hull));
    }
    Map<String, Interval> clamps = new TreeMap<>();
    all.forEach(p -> p.clamps.forEach((n, v) -> clamps.merge(n, Interval.of(v), Interval::hull)));
    Map<String, Interval> hoop = new LinkedHashMap<>();
    for (Peaks p : all) {
      hoop.merge("along", Interval.of(p.along), Interval::hull);
      hoop.merge("across", Interval.of(p.across), Interval::hull);
      hoop.merge("imbalance", Interval.of(p.imbalance), Interval::hull);
    }
    return new Estimates(parameters.byName(), spans, clamps, hoop);
  }

  /** Whether a step can change what string or clamps bear. */
  private static boolean changesLoads(Step step) {
    return step instanceof Step.Pull
        || step instanceof Step.Release
        || step instanceof Step.SetClamp
        || step instanceof Step.FreeClamp
        || step instanceof Step.Unlace;
  }

  /**
   * How a span squeezes the hoop.
   *
   * @param span the span
   * @param along share of its tension along the long axis
   * @param across share of its tension across it
   * @param side -1 for a left main, 1 for a right main, 0 for a cross
   */
  private record Squeeze(SpanId span, double along, double across, int side) {
    static Squeeze of(Span span) {
      double length = span.lengthMm();
      double dx = Math.abs(span.fromPoint().x() - span.toPoint().x());
      double dy = Math.abs(span.fromPoint().y() - span.toPoint().y());
      return new Squeeze(
          span.id(),
          length > 0 ? dy / length : 0,
          length > 0 ? dx / length : 0,
          span.id().side().map(Side::sign).orElse(0));
    }
  }

  /** The most that was seen so far, for one choice of parameters. Confined to one estimate. */
  private static final class Peaks {
    private final Tensions tensions;
    private final List<Squeeze> squeezes;
    private final Map<String, Double> clamps = new TreeMap<>();
    private double along;
    private double across;
    private double imbalance;

    Peaks(Tensions tensions, List<Squeeze> squeezes) {
      this.tensions = tensions;
      this.squeezes = squeezes;
    }

    void look(BenchState state) {
      for (PlacedClamp clamp : state.clamps()) {
        clamps.merge(clamp.name(), tensions.load(clamp), Math::max);
      }
      double nowAlong = 0;
      double nowAcross = 0;
      double rightMinusLeft = 0;
      for (Squeeze s : squeezes) {
        double tension = tensions.main(s.span());
        nowAlong += tension * s.along();
        nowAcross += tension * s.across();
        rightMinusLeft += tension * s.side();
      }
      along = Math.max(along, nowAlong);
      across = Math.max(across, nowAcross);
      imbalance = Math.max(imbalance, Math.abs(rightMinusLeft));
    }
  }
}
