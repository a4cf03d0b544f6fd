package org.hoopwright.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.bench.Bench;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.ClampUse;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.Planner;
import org.hoopwright.bench.StartMethod;
import org.hoopwright.bench.Step;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Piece;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.RouteSearch;
import org.hoopwright.route.StringEnd;
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
    if (draw.chance(50)) {
      job.backUp(List.of(ClampUse.values()).get(draw.between(0, 2)))
          .thirdClamp(List.of(ClampUse.values()).get(draw.between(0, 2)))
          .bench(Bench.builder().startingClamps(draw.between(1, 2)).build());
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
      noForceComesFromNothing(plan, most);
    }
  }

  /**
   * After no step does a span carry more than the largest pull; and one that was not gripped yet
   * carries no more than the bend of least angle leaves of it.
   */
  private static void noForceComesFromNothing(BenchPlan plan, double most) {
    ForceParameters p = ForceParameters.of(plan);
    double bound =
        most * Math.exp(-p.friction().low() * p.wrapFactor().low() * leastBend(plan)) + 1e-9;
    Set<SpanId> gripped = new HashSet<>();
    int next = 0;
    for (StepForces s : ForceHistory.of(plan).steps()) {
      for (; next < s.step(); next++) {
        if (plan.steps().get(next) instanceof Step.Pull pull) {
          gripped.addAll(pull.tails());
        }
      }
      s.spans()
          .forEach(
              (span, t) ->
                  assertThat(t.high())
                      .as("%s after step %d of %s", span, s.step(), plan.route())
                      .isLessThanOrEqualTo(gripped.contains(span) ? most + 1e-9 : bound));
      assertThat(s.clamps().values()).allMatch(i -> i.low() >= 0 && i.high() <= most + 1e-9);
      assertThat(s.knots().values()).allMatch(i -> i.low() >= 0 && i.high() <= most + 1e-9);
    }
  }

  /** The least angle by which string bends from one pass into the next, worked out here. */
  private static double leastBend(BenchPlan plan) {
    double least = Math.PI;
    for (Piece piece : plan.route().pieces()) {
      List<Pass> line = new ArrayList<>();
      for (StringEnd end : piece.ends()) {
        for (int i = 0; i + 1 < end.passes().size(); i++) {
          least = Math.min(least, bend(plan, end.passes().get(i), end.passes().get(i + 1)));
        }
        end.passes().stream().findFirst().ifPresent(line::add);
      }
      if (line.size() == 2) {
        Pass back = new Pass(line.get(0).span(), line.get(0).to(), line.get(0).from());
        least = Math.min(least, bend(plan, back, line.get(1)));
      }
    }
    return least;
  }

  private static double bend(BenchPlan plan, Pass a, Pass b) {
    double first = turn(plan, a.from(), a.to(), a.to(), b.from());
    return first + turn(plan, a.to(), b.from(), b.from(), b.to());
  }

  private static double turn(BenchPlan plan, HoleId a, HoleId b, HoleId c, HoleId d) {
    double ax = plan.bed().position(b).x() - plan.bed().position(a).x();
    double ay = plan.bed().position(b).y() - plan.bed().position(a).y();
    double bx = plan.bed().position(d).x() - plan.bed().position(c).x();
    double by = plan.bed().position(d).y() - plan.bed().position(c).y();
    double cos = (ax * bx + ay * by) / (Math.hypot(ax, ay) * Math.hypot(bx, by));
    return Math.acos(Math.max(-1, Math.min(1, cos)));
  }
}
