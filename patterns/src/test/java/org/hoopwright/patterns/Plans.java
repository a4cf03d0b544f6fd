package org.hoopwright.patterns;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hoopwright.Plan;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.Planner;
import org.hoopwright.frame.Layout;
import org.hoopwright.replay.Estimates;
import org.hoopwright.replay.Interval;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteResult;
import org.hoopwright.route.RouteSearch;

/** Plans for tests of what is written from them; their estimates are made up. */
final class Plans {

  private Plans() {}

  static Job pieces(int pieces) {
    return Job.builder().routes(RouteRequest.builder().pieces(pieces).build()).build();
  }

  static Bed bed(Layout layout) {
    return StatedAssignment.assign(layout).bed().orElseThrow();
  }

  static RouteResult routes(Layout layout, Job job) {
    return RouteSearch.search(bed(layout), job.routes());
  }

  /** The plan of the best route. */
  static Plan best(Layout layout, Job job) {
    Bed bed = bed(layout);
    RankedRoute ranked = routes(layout, job).ranked().get(0);
    BenchPlan bench = Planner.plan(bed, ranked.route(), job).orElseThrow();
    Map<SpanId, Interval> tension = new TreeMap<>();
    bed.spans().forEach(s -> tension.put(s.id(), new Interval(180.04, 220.05)));
    Estimates estimates =
        new Estimates(
            Map.of("friction", new Interval(0.125, 0.2)),
            tension,
            Map.of("machine-1", new Interval(200, 245)),
            Map.of("along", new Interval(2000, 3000)));
    return new Plan(
        bench,
        ranked,
        estimates,
        List.of("String under tension can hurt.", "The maker's instructions come first."),
        bench.findings());
  }
}
