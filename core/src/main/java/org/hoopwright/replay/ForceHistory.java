package org.hoopwright.replay;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.route.EndName;

/**
 * What strings, clamps, knots and hoop are estimated to bear after each step of a plan; rests on
 * what {@link ForceEstimate} says. Immutable.
 */
public final class ForceHistory {

  private final ForceParameters parameters;
  private final List<StepForces> steps;

  private ForceHistory(ForceParameters parameters, List<StepForces> steps) {
    this.parameters = parameters;
    this.steps = List.copyOf(steps);
  }

  /**
   * With the default parameters for the bench and the strings of the plan.
   *
   * @param plan a plan for a bed and a route of that bed; also one that breaks rules
   */
  public static ForceHistory of(BenchPlan plan) {
    return of(plan, ForceParameters.of(plan));
  }

  /**
   * With other parameters.
   *
   * @param plan a plan for a bed and a route of that bed; also one that breaks rules
   * @param parameters the parameters and their ranges
   */
  public static ForceHistory of(BenchPlan plan, ForceParameters parameters) {
    List<HoopLoad.Share> shares = HoopLoad.shares(plan.bed());
    List<StepForces> steps = new ArrayList<>();
    ForceWalk.through(
        plan, parameters, (n, state, all) -> steps.add(forces(plan, shares, n, state, all)));
    return new ForceHistory(parameters, steps);
  }

  private static StepForces forces(
      BenchPlan plan, List<HoopLoad.Share> shares, int n, BenchState state, List<Tensions> all) {
    Map<SpanId, Interval> spans = new TreeMap<>();
    Map<String, Interval> clamps = new TreeMap<>();
    Map<String, Interval> together = new TreeMap<>();
    Map<EndName, Interval> knots = new EnumMap<>(EndName.class);
    Range along = new Range();
    Range across = new Range();
    Range rightMinusLeft = new Range();
    for (Tensions t : all) {
      for (Span span : plan.bed().spans()) {
        if (state.isLaced(span.id())) {
          spans.merge(span.id(), Interval.of(t.main(span.id())), Interval::hull);
        }
      }
      for (PlacedClamp clamp : state.clamps()) {
        clamps.merge(clamp.name(), Interval.of(t.load(clamp)), Interval::hull);
        t.together(clamp)
            .ifPresent(load -> together.merge(clamp.name(), Interval.of(load), Interval::hull));
      }
      for (StringPath path : state.paths()) {
        for (EndName end : List.of(path.lowEnd(), path.highEnd())) {
          if (state.knotted(end)) {
            knots.merge(end, Interval.of(t.knotLoad(path, end)), Interval::hull);
          }
        }
      }
      HoopLoad hoop = HoopLoad.of(shares, t::main);
      along.add(hoop.along());
      across.add(hoop.across());
      rightMinusLeft.add(hoop.rightMinusLeft());
    }
    clamps.replaceAll((name, i) -> i.magnitude());
    together.replaceAll((name, i) -> i.magnitude());
    return new StepForces(
        n,
        spans,
        clamps,
        together,
        knots,
        along.interval(),
        across.interval(),
        rightMinusLeft.interval());
  }

  /** Gathers the least and the most. */
  private static final class Range {
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    void add(double value) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }

    Interval interval() {
      return new Interval(low, high);
    }
  }

  /** What it rests on. */
  public ForceParameters parameters() {
    return parameters;
  }

  /** The steps after which something bears another load than before, in order. */
  public List<StepForces> steps() {
    return steps;
  }

  /**
   * What is borne after a step; empty before anything has been pulled.
   *
   * @param step the number of any step of the plan, from 1
   */
  public Optional<StepForces> after(int step) {
    Optional<StepForces> last = Optional.empty();
    for (StepForces s : steps) {
      if (s.step() > step) {
        break;
      }
      last = Optional.of(s);
    }
    return last;
  }
}
