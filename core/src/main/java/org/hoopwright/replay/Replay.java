package org.hoopwright.replay;

import java.util.List;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.Step;

/**
 * Replays a bench plan from an empty frame and reports every breach of the {@linkplain Invariant
 * invariants} I1 to I10.
 *
 * <p>The replay keeps each piece of string as a line through the frame, with the tensioner's grip,
 * clamps and knots where they hold it. It uses the values of bed, route and plan and nothing of
 * what made them. It goes on after a breach; what cannot be done at all, such as a pull at a hole
 * where no tail comes out, is a breach of the nearest invariant and changes nothing.
 *
 * <p>Stateless, deterministic and safe to call from any thread. The cost grows with the number of
 * steps times the number of spans.
 */
public final class Replay {

  private Replay() {}

  /**
   * Every breach of a plan, in the order of the steps; empty when the plan is proven.
   *
   * @param plan a plan for a bed and a route of that bed
   */
  public static List<Breach> check(BenchPlan plan) {
    List<StepCheck> checks =
        List.of(
            new OrderCheck(plan),
            new WeaveCheck(plan.bed()),
            new ClampCheck(plan),
            new PullCheck(plan),
            new KnotCheck(plan),
            new HeldCheck());
    BenchState state = new BenchState(plan);
    Breaches breaches = new Breaches();
    int number = 0;
    for (Step step : plan.steps()) {
      breaches.turnTo(++number);
      checks.forEach(c -> c.before(state, step, breaches));
      state.apply(step);
      checks.forEach(c -> c.after(state, step, breaches));
    }
    breaches.turnTo(number + 1);
    checks.forEach(c -> c.end(state, breaches));
    return breaches.all();
  }
}
