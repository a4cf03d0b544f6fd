package org.hoopwright.replay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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
    List<Peaks> all = new ArrayList<>();
    List<Tensions> last = new ArrayList<>();
    ForceWalk.through(
        plan,
        parameters,
        (n, state, tensions) -> {
          while (all.size() < tensions.size()) {
            all.add(new Peaks());
          }
          for (int i = 0; i < all.size(); i++) {
            all.get(i).look(state, tensions.get(i), shares);
          }
          last.clear();
          last.addAll(tensions);
        });
    Map<SpanId, Interval> spans = new TreeMap<>();
    for (Span span : plan.bed().spans()) {
      spans.put(span.id(), Interval.of(last.isEmpty() ? 0 : last.get(0).main(span.id())));
      last.forEach(t -> spans.merge(span.id(), Interval.of(t.main(span.id())), Interval::hull));
    }
    Map<String, Interval> clamps = new TreeMap<>();
    all.forEach(p -> p.clamps.forEach((n, v) -> clamps.merge(n, Interval.of(v), Interval::hull)));
    Map<String, Interval> hoop = new LinkedHashMap<>();
    if (all.isEmpty()) {
      all.add(new Peaks()); // nothing was ever pulled
    }
    for (Peaks p : all) {
      hoop.merge("along", Interval.of(p.along), Interval::hull);
      hoop.merge("across", Interval.of(p.across), Interval::hull);
      hoop.merge("imbalance", Interval.of(p.imbalance), Interval::hull);
    }
    return new Estimates(parameters.byName(), spans, clamps, hoop);
  }

  /** The most that was seen so far, for one choice of parameters. Confined to one estimate. */
  private static final class Peaks {
    private final Map<String, Double> clamps = new TreeMap<>();
    private double along;
    private double across;
    private double imbalance;

    void look(BenchState state, Tensions tensions, List<HoopLoad.Share> shares) {
      for (PlacedClamp clamp : state.clamps()) {
        clamps.merge(clamp.name(), tensions.load(clamp), Math::max);
      }
      HoopLoad load = HoopLoad.of(shares, tensions::main);
      along = Math.max(along, load.along());
      across = Math.max(across, load.across());
      imbalance = Math.max(imbalance, Math.abs(load.rightMinusLeft()));
    }
  }
}
