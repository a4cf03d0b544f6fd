package org.hoopwright.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hoopwright.bed.Bed;
import org.hoopwright.bench.Bench;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.Planner;
import org.hoopwright.bench.StartMethod;
import org.hoopwright.frame.Layout;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.Route;
import org.hoopwright.route.RouteSearch;
import org.hoopwright.testing.Willowbank;
import org.hoopwright.units.Force;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every plan that the planner writes is proven. */
class PlannedReplayTest {

  static Stream<Job> jobs() {
    return Stream.of(
        Job.standard(),
        Job.builder().lastPullExtra(Force.ofNewtons(24.5)).leadLimit(1).build(),
        Job.builder().crossesTension(Force.ofNewtons(230)).leadLimit(3).build(),
        Job.builder().startMethod(StartMethod.HAND_HELD).build(),
        Job.builder().bench(Bench.builder().startingClamps(0).build()).build(),
        Job.builder().bench(Bench.builder().clampLengthMm(20).clampDistanceMm(8).build()).build());
  }

  private static List<Layout> layouts() {
    return List.of(
        Willowbank.hundred().build(),
        Willowbank.hundred().noRun(List.of()).build(),
        Willowbank.teaching().build(),
        Willowbank.teaching().tieOff("1H", "2H", "1T", "2T").build());
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyPlanIsProven(Job job) {
    List<String> wrong = new ArrayList<>();
    int plans = 0;
    for (Layout layout : layouts()) {
      Bed bed = SmallPlans.bed(layout);
      for (RankedRoute ranked : RouteSearch.search(bed, job.routeRequest(bed.layout())).ranked()) {
        Route route = ranked.route();
        var plan = Planner.plan(bed, route, job);
        if (plan.isPresent()) {
          plans++;
          Replay.check(plan.get()).forEach(b -> wrong.add(layout.name() + " " + route + ": " + b));
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(plans).isGreaterThan(20);
  }

  /** A plan with other steps. */
  static BenchPlan with(BenchPlan plan, List<org.hoopwright.bench.Step> steps) {
    return new BenchPlan(
        plan.bed(),
        plan.route(),
        plan.job(),
        plan.start(),
        plan.lengths(),
        plan.cutLengthsMm(),
        steps,
        plan.findings());
  }
}
