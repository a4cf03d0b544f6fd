package org.hoopwright.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.Planner;
import org.hoopwright.bench.StartMethod;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.RouteSearch;
import org.hoopwright.testing.BedLayouts;
import org.hoopwright.testing.Draw;
import org.hoopwright.units.Force;

/** Plans for frames that are drawn at random are proven too. */
class RandomPlanReplayTest {

  private static Layout layout(Draw draw) {
    Layout plain =
        draw.chance(50)
            ? BedLayouts.uneven(draw, 7, draw.chance(30))
            : BedLayouts.even(draw, 7, draw.chance(30));
    Ring ring = Ring.of(plain);
    List<HoleRef> tieOff = new ArrayList<>();
    for (Side side : Side.values()) {
      for (int i = 0; i < 4; i++) {
        HoleRef hole = HoleRef.of(ring.at(side, draw.between(0, ring.size(side) - 1)));
        if (!tieOff.contains(hole)) {
          tieOff.add(hole);
        }
      }
    }
    return plain.toBuilder().tieOff(tieOff).build();
  }

  private static Job job(Draw draw) {
    Job.Builder job = Job.builder().leadLimit(draw.between(1, 3));
    if (draw.chance(30)) {
      job.startMethod(List.of(StartMethod.values()).get(draw.between(0, 2)));
    }
    if (draw.chance(30)) {
      job.anchorSide(draw.chance(50) ? Side.LEFT : Side.RIGHT);
    }
    if (draw.chance(30)) {
      job.lastPullExtra(Force.ofNewtons(draw.between(1, 30)));
    }
    return job.mainsTension(Force.ofNewtons(draw.between(80, 300)))
        .crossesTension(Force.ofNewtons(draw.between(80, 300)))
        .build();
  }

  @Property(tries = 60)
  void everyPlanIsProven(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    Layout layout = layout(draw);
    Job job = job(draw);
    Bed bed = StatedAssignment.assign(layout).bed().orElse(null);
    if (bed == null) {
      return;
    }
    List<RankedRoute> ranked =
        RouteSearch.search(bed, job.routes().toBuilder().runLimit(6).maxNodes(10_000).build())
            .ranked();
    for (RankedRoute one : ranked.subList(0, Math.min(6, ranked.size()))) {
      BenchPlan plan = Planner.plan(bed, one.route(), job).orElse(null);
      if (plan == null) {
        continue;
      }
      assertThat(Replay.check(plan)).as("%s", one.route()).isEmpty();
      double most =
          Math.max(job.mainsTension(layout).newtons(), job.crossesTension(layout).newtons())
              + job.lastPullExtra().newtons();
      Estimates e = ForceEstimate.of(plan);
      assertThat(e.spanTension().values())
          .as("%s", one.route())
          .allMatch(i -> i.low() >= 0 && i.high() <= most + 1e-9);
      assertThat(e.clampPeak().values()).allMatch(i -> i.high() <= most + 1e-9);
    }
  }
}
