package org.hoopwright.replay;

import java.util.List;
import org.hoopwright.bed.Bed;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.HalfDone;
import org.hoopwright.bench.Step;
import org.hoopwright.bench.WayOn;

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
    return check(plan, HalfDone.nothing());
  }

  /**
   * Every breach of a plan that goes on from a half-done job.
   *
   * @param plan a plan for a bed and a route of that bed
   * @param from what is strung before the first step, in the names of the plan's bed; what is wrong
   *     with that is said as step 0
   */
  public static List<Breach> check(BenchPlan plan, HalfDone from) {
    OrderCheck order = new OrderCheck(plan);
    HeldCheck held = new HeldCheck();
    List<StepCheck> checks =
        List.of(
            order,
            new WeaveCheck(plan.bed()),
            new ClampCheck(plan),
            new PullCheck(plan),
            new KnotCheck(plan),
            held);
    BenchState state = new BenchState(plan, from);
    Breaches breaches = new Breaches();
    breaches.turnTo(0);
    order.begin(from, breaches);
    held.begin(state, breaches);
    replay(plan.steps(), state, checks, breaches);
    breaches.turnTo(plan.steps().size() + 1);
    checks.forEach(c -> c.end(state, breaches));
    return breaches.all();
  }

  /**
   * Every breach of a way on: while it is undone nothing that stays may go slack, the state that it
   * says to leave must be the one that its steps leave, and the plan from there obeys every rule.
   */
  public static List<Breach> check(WayOn way) {
    return UndoReplay.check(way);
  }

  /**
   * What cannot be in a half-done job: spans that the bed does not have or that are strung twice,
   * spans pulled and not laced, clamps on what is not there, and spans that nothing holds. Empty
   * when it is sound. A broken piece need not be held.
   */
  public static List<Breach> check(Bed bed, HalfDone state) {
    return StateCheck.check(bed, state);
  }

  static void replay(
      List<Step> steps, BenchState state, List<StepCheck> checks, Breaches breaches) {
    int number = 0;
    for (Step step : steps) {
      breaches.turnTo(++number);
      checks.forEach(c -> c.before(state, step, breaches));
      state.apply(step);
      checks.forEach(c -> c.after(state, step, breaches));
    }
  }
}
