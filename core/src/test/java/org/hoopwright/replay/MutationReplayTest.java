package org.hoopwright.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.ClampSide;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.Planner;
import org.hoopwright.bench.Step;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.RouteSearch;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.Willowbank;
import org.hoopwright.units.Force;
import org.junit.jupiter.api.Test;

/** A plan with one thing changed is always found out. */
class MutationReplayTest {

  private static final List<BenchPlan> PLANS = plans();

  private static List<BenchPlan> plans() {
    List<BenchPlan> plans = new ArrayList<>();
    for (var layout :
        List.of(
            Willowbank.teaching().tieOff("1H", "2H", "1T", "2T").build(),
            Willowbank.hundred().build())) {
      Bed bed = SmallPlans.bed(layout);
      RouteSearch.search(bed, Job.standard().routes()).ranked().stream()
          .map(RankedRoute::route)
          .flatMap(r -> Planner.plan(bed, r, Job.standard()).stream())
          .forEach(plans::add);
    }
    return plans;
  }

  private static BenchPlan any(Draw draw) {
    return PLANS.get(draw.between(0, PLANS.size() - 1));
  }

  private static boolean matters(Step step) {
    return !(step instanceof Step.Check || step instanceof Step.Trim || step instanceof Step.Hold);
  }

  private static void found(BenchPlan plan, List<Step> steps, String what) {
    BenchPlan changed = PlannedReplayTest.with(plan, steps);
    assertThat(Replay.check(changed)).as("%s in %s", what, plan.route()).isNotEmpty();
    assertThat(ForceEstimate.of(changed, PARAMETERS).spanTension())
        .hasSize(plan.bed().spans().size());
  }

  private static final ForceParameters PARAMETERS =
      new ForceParameters(
          Interval.of(0.2),
          Interval.of(1),
          Interval.of(0.1),
          Interval.of(1),
          Interval.of(0.5),
          Interval.of(0.2),
          Interval.of(0.5),
          Interval.of(4000),
          Interval.of(4000));

  @Property
  void stepLeftOut(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    BenchPlan plan = any(draw);
    List<Step> steps = new ArrayList<>(plan.steps());
    int i;
    do {
      i = draw.between(0, steps.size() - 1);
    } while (!matters(steps.get(i)));
    Step gone = steps.remove(i);
    found(plan, steps, "step " + (i + 1) + " left out: " + gone);
  }

  @Property
  void stepsSwapped(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    BenchPlan plan = any(draw);
    List<Step> steps = new ArrayList<>(plan.steps());
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i + 1 < steps.size(); i++) {
      if (orderMatters(steps.get(i), steps.get(i + 1))) {
        places.add(i);
      }
    }
    int i = places.get(draw.between(0, places.size() - 1));
    Collections.swap(steps, i, i + 1);
    found(plan, steps, "steps " + (i + 1) + " and " + (i + 2) + " swapped");
  }

  /** Whether a step and the next one cannot change places. */
  private static boolean orderMatters(Step a, Step b) {
    if (a instanceof Step.Pull pull) {
      return pull.tails().size() == 1
          && (b instanceof Step.FreeClamp || b instanceof Step.SetClamp);
    }
    if (b instanceof Step.Pull) {
      return a instanceof Step.Lace || a instanceof Step.Weave || a instanceof Step.Release;
    }
    if (b instanceof Step.TieKnot knot) {
      return a instanceof Step.Release
          || (a instanceof Step.Weave w && w.end() == knot.end())
          || a instanceof Step.TieKnot;
    }
    return (a instanceof Step.TieKnot && b instanceof Step.FreeClamp)
        || (a instanceof Step.FreeClamp free
            && b instanceof Step.SetClamp set
            && free.clamp().equals(set.clamp()));
  }

  @Property
  void tensionChanged(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    BenchPlan plan = any(draw);
    List<Step> steps = new ArrayList<>(plan.steps());
    int i;
    do {
      i = draw.between(0, steps.size() - 1);
    } while (!(steps.get(i) instanceof Step.Pull));
    Step.Pull pull = (Step.Pull) steps.get(i);
    double by = draw.between(1, 500) / 10.0 * (draw.chance(50) ? 1 : -1);
    steps.set(
        i,
        new Step.Pull(
            pull.tails(), pull.at(), Force.ofNewtons(pull.tension().newtons() + by), pull.say()));
    found(plan, steps, "tension of step " + (i + 1) + " changed by " + by);
  }

  @Property
  void holeOrSpanChanged(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    BenchPlan plan = any(draw);
    List<Step> steps = new ArrayList<>(plan.steps());
    int i;
    Step changed;
    do {
      i = draw.between(0, steps.size() - 1);
      changed = changed(draw, plan.bed(), steps.get(i));
    } while (changed.equals(steps.get(i)));
    found(plan, steps(steps, i, changed), "step " + (i + 1) + " is " + changed);
  }

  /** Leaving out, swapping and altering steps breaks each of the ten rules somewhere. */
  @Test
  void everyRuleIsBrokenSomewhere() {
    Set<Invariant> broken = EnumSet.noneOf(Invariant.class);
    Draw draw = Draw.from(1);
    for (int tries = 0; tries < 3000 && broken.size() < Invariant.values().length; tries++) {
      BenchPlan plan = any(draw);
      List<Step> steps = new ArrayList<>(plan.steps());
      int i = draw.between(0, steps.size() - 2);
      switch (draw.between(0, 4)) {
        case 0 -> steps.remove(i);
        case 1 -> Collections.swap(steps, i, i + 1);
        case 2 -> steps.set(i, changed(draw, plan.bed(), steps.get(i)));
        case 3 -> Collections.rotate(steps.subList(i, Math.min(steps.size(), i + 10)), 5);
        default -> steps.set(i, outside(plan.bed(), steps.get(i)));
      }
      Replay.check(PlannedReplayTest.with(plan, steps)).forEach(b -> broken.add(b.invariant()));
    }
    assertThat(broken).containsExactly(Invariant.values());
  }

  /** A starting clamp set outside where the span goes out at the head. */
  private static Step outside(Bed bed, Step step) {
    return step instanceof Step.SetClamp s && s.side() == ClampSide.OUTSIDE && s.span().isMain()
        ? new Step.SetClamp(
            s.clamp(), s.span(), bed.span(s.span()).from(), s.distanceMm(), s.side(), s.say())
        : step;
  }

  private static List<Step> steps(List<Step> steps, int i, Step by) {
    List<Step> all = new ArrayList<>(steps);
    all.set(i, by);
    return all;
  }

  private static Step changed(Draw draw, Bed bed, Step step) {
    List<HoleId> holes = bed.ring().list(draw.chance(50) ? Side.LEFT : Side.RIGHT);
    HoleId hole = holes.get(draw.between(0, holes.size() - 1));
    List<Span> spans = bed.spans();
    SpanId span = spans.get(draw.between(0, spans.size() - 1)).id();
    boolean turn = draw.chance(50);
    if (step instanceof Step.Lace s) {
      return new Step.Lace(
          turn ? span : s.span(), turn ? s.from() : hole, s.to(), s.piece(), s.end(), s.say());
    } else if (step instanceof Step.Weave s) {
      return new Step.Weave(
          turn ? span : s.span(), s.from(), turn ? s.to() : hole, s.piece(), s.end(), s.say());
    } else if (step instanceof Step.Pull s && s.tails().size() == 1) {
      return turn
          ? new Step.Pull(List.of(span), s.at(), s.tension(), s.say())
          : new Step.Pull(s.tails(), List.of(hole), s.tension(), s.say());
    } else if (step instanceof Step.SetClamp s) {
      Span own = bed.span(s.span());
      return turn
          ? new Step.SetClamp(s.clamp(), span, s.near(), s.distanceMm(), s.side(), s.say())
          : new Step.SetClamp(
              s.clamp(), s.span(), own.other(s.near()), s.distanceMm(), s.side(), s.say());
    } else if (step instanceof Step.TieKnot s) {
      return new Step.TieKnot(
          turn ? s.hole() : hole, turn ? span : s.anchor(), s.kind(), s.piece(), s.end(), s.say());
    }
    return step;
  }
}
