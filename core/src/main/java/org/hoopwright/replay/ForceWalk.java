package org.hoopwright.replay;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hoopwright.bed.Bed;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.Step;
import org.hoopwright.frame.Layout;
import org.hoopwright.material.Gauge;

/** Goes through a plan's steps once and follows every choice of parameters beside each other. */
final class ForceWalk {

  /** Looks at what is carried after a step. */
  interface Look {
    /**
     * After a step that can change what string or clamps bear.
     *
     * @param step the step's number, from 1
     * @param state the frame after it
     * @param all one for each choice of parameters, in an order that stays
     */
    void after(int step, BenchState state, List<Tensions> all);
  }

  private ForceWalk() {}

  /** Goes through all steps. */
  static void through(BenchPlan plan, ForceParameters parameters, Look look) {
    BenchState state = new BenchState(plan);
    Bends bends = new Bends(plan.bed(), separationMm(plan));
    List<Tensions> all =
        parameters.corners(backsUp(plan)).stream().map(c -> new Tensions(state, bends, c)).toList();
    int n = 0;
    for (Step step : plan.steps()) {
      n++;
      List<Grip> before = state.grips();
      Optional<PlacedClamp> old =
          step instanceof Step.FreeClamp s
              ? state.clamp(s.clamp())
              : step instanceof Step.SetClamp s ? state.clamp(s.clamp()) : Optional.empty();
      state.apply(step);
      bends.lacedAnew();
      if (!changesLoads(step)) {
        continue;
      }
      List<Slack> slack = Slack.of(state);
      all.forEach(t -> t.follow(step, before, old, slack));
      look.after(n, state, all);
    }
  }

  /** Whether a clamp ever sits outside behind one inside. */
  private static boolean backsUp(BenchPlan plan) {
    Map<String, Step.SetClamp> on = new HashMap<>(); // only asked whether there is any
    for (Step step : plan.steps()) {
      if (step instanceof Step.FreeClamp free) {
        on.remove(free.clamp());
      } else if (step instanceof Step.SetClamp set) {
        if (on.values().stream().anyMatch(set::pairsWith)) {
          return true;
        }
        on.put(set.clamp(), set);
      }
    }
    return false;
  }

  /** How far apart the axes of a main and a cross are: half of both diameters, in mm. */
  private static double separationMm(BenchPlan plan) {
    Bed bed = plan.bed();
    Layout layout = bed.layout();
    return (diameter(plan.job().mainsString(layout).gauge())
            + diameter(plan.job().crossesString(layout).gauge()))
        / 2;
  }

  private static double diameter(Gauge gauge) {
    return (gauge.minMm() + gauge.maxMm()) / 2;
  }

  /** Whether a step can change what string or clamps bear. */
  private static boolean changesLoads(Step step) {
    return step instanceof Step.Pull
        || step instanceof Step.Release
        || step instanceof Step.SetClamp
        || step instanceof Step.FreeClamp
        || step instanceof Step.Unlace;
  }
}
