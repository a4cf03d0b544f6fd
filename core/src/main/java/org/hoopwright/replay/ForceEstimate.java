package org.hoopwright.replay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;

/**
 * Estimates what strings, clamps and hoop bear while a plan is done.
 *
 * <p>A pull of T, times the share of it that the tensioner keeps up, is carried inwards from the
 * grip: past each bend and past each string that it crosses it is multiplied by e^(−friction ×
 * angle) (the capstan equation; the angles follow from where holes and crossings are). It never
 * lowers what is there, and never passes a clamp; a shared pull gives half of T to each tail. A
 * span counts with the mean along it. The tensioner keeps pulling while it grips. When it lets go,
 * the first clamp inwards takes the load and the string slips back by the drawback, which costs
 * drawback × stiffness ÷ length of that span. When a clamp comes off and a knot takes the load, the
 * stretch between clamp and knot, tied less tight than the span, takes its share and the knot gives
 * by the drawback. A clamp outside behind one inside bears any share of their load together. What
 * is held on one side only is slack.
 *
 * <p>Left out: what later strings do to those that they cross, creep (see {@link Relaxation}), and
 * the hoop's own give; so these numbers compare plans and do not foretell a bed's tension. Each
 * result is the range over every choice of lowest and highest parameters.
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
    List<HoopLoad.Share> shares = HoopLoad.shares(plan.bed());
    Peaks peaks = new Peaks();
    List<Tensions> last = new ArrayList<>();
    ForceWalk.through(
        plan,
        parameters,
        (n, state, tensions) -> {
          peaks.look(state, tensions, shares);
          last.clear();
          last.addAll(tensions);
        });
    Map<SpanId, Interval> spans = new TreeMap<>();
    for (Span span : plan.bed().spans()) {
      spans.put(span.id(), Interval.of(last.isEmpty() ? 0 : last.get(0).main(span.id())));
      last.forEach(t -> spans.merge(span.id(), Interval.of(t.main(span.id())), Interval::hull));
    }
    Map<String, Interval> hoop = new LinkedHashMap<>();
    hoop.put("along", peaks.along);
    hoop.put("across", peaks.across);
    hoop.put("imbalance", peaks.imbalance);
    return new Estimates(parameters.byName(), spans, peaks.clamps, hoop);
  }

  /**
   * The most that was seen so far. A peak is at least the greatest of all least values, and at most
   * the greatest of all. Confined to one estimate.
   */
  private static final class Peaks {
    private final Map<String, Interval> clamps = new TreeMap<>();
    private Interval along = Interval.of(0);
    private Interval across = Interval.of(0);
    private Interval imbalance = Interval.of(0);

    void look(BenchState state, List<Tensions> tensions, List<HoopLoad.Share> shares) {
      for (PlacedClamp clamp : state.clamps()) {
        Interval load = hull(tensions, t -> t.load(clamp)).magnitude();
        clamps.merge(clamp.name(), load, Peaks::most);
      }
      List<HoopLoad> loads = tensions.stream().map(t -> HoopLoad.of(shares, t::main)).toList();
      along = most(along, hull(loads, HoopLoad::along));
      across = most(across, hull(loads, HoopLoad::across));
      imbalance = most(imbalance, hull(loads, HoopLoad::rightMinusLeft).magnitude());
    }

    private static <T> Interval hull(List<T> all, ToDoubleFunction<T> value) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (T one : all) {
        double v = value.applyAsDouble(one);
        low = Math.min(low, v);
        high = Math.max(high, v);
      }
      return new Interval(low, high);
    }

    private static Interval most(Interval a, Interval b) {
      return new Interval(Math.max(a.low(), b.low()), Math.max(a.high(), b.high()));
    }
  }
}
