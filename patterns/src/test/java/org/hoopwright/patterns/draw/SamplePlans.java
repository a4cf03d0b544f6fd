package org.hoopwright.patterns.draw;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.Planner;
import org.hoopwright.patterns.Sample;
import org.hoopwright.patterns.Samples;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteSearch;

/** A plan of every bundled layout, made once. */
final class SamplePlans {

  private static final List<BenchPlan> ALL = make();

  private SamplePlans() {}

  static List<BenchPlan> all() {
    return ALL;
  }

  static BenchPlan of(String name) {
    int i = Samples.list().stream().map(Sample::name).toList().indexOf(name);
    return ALL.get(i);
  }

  private static List<BenchPlan> make() {
    List<BenchPlan> plans = new ArrayList<>();
    for (Sample sample : Samples.list()) {
      plans.add(plan(StatedAssignment.assign(Samples.layout(sample.name())).bed().orElseThrow()));
    }
    return Collections.unmodifiableList(plans);
  }

  private static BenchPlan plan(Bed bed) {
    for (RankedRoute ranked : RouteSearch.search(bed, RouteRequest.defaults()).ranked()) {
      var plan = Planner.plan(bed, ranked.route(), Job.standard());
      if (plan.isPresent()) {
        return plan.get();
      }
    }
    throw new AssertionError("No plan for " + bed.layout());
  }
}
