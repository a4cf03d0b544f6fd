package org.hoopwright.patterns;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.Hoopwright;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.HalfDone;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.Planner;
import org.hoopwright.bench.StartMethod;
import org.hoopwright.bench.Step;
import org.hoopwright.bench.WayOn;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;
import org.hoopwright.replay.ForceHistory;
import org.hoopwright.replay.ForceParameters;
import org.hoopwright.replay.Interval;
import org.hoopwright.replay.Replay;
import org.hoopwright.replay.StepForces;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Piece;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.Route;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteSearch;
import org.hoopwright.route.StringEnd;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Laws of forces, on every bundled layout, with every start, in one piece and in two. */
class SampleForcesTest {

  private static final double NEAR = 1e-6;

  static List<String> names() {
    return Samples.list().stream().map(Sample::name).toList();
  }

  /** A way to start, and in how many pieces. */
  private static List<Job> jobs() {
    List<Job> jobs = new ArrayList<>();
    for (int pieces = 1; pieces <= 2; pieces++) {
      RouteRequest routes = RouteRequest.builder().pieces(pieces).build();
      for (StartMethod method : StartMethod.values()) {
        jobs.add(Job.builder().routes(routes).startMethod(method).build());
      }
      for (int main = 1; main <= 2; main++) {
        jobs.add(Job.builder().routes(routes).anchorMain(main).anchorSide(Side.RIGHT).build());
      }
    }
    return jobs;
  }

  private static Job onSide(Job job, Side side) {
    Job.Builder same = Job.builder().routes(job.routes()).anchorSide(side);
    job.startMethod().ifPresent(same::startMethod);
    job.anchorMain().ifPresent(same::anchorMain);
    return same.build();
  }

  private static Bed bed(Layout layout) {
    return Hoopwright.assign(layout).bed().orElseThrow();
  }

  /** The first route of a job that has a plan. */
  private static Optional<BenchPlan> plan(Bed bed, Job job) {
    RouteRequest request = job.routeRequest(bed.layout());
    for (RankedRoute r : RouteSearch.search(bed, request).ranked()) {
      Optional<BenchPlan> plan = Planner.plan(bed, r.route(), job);
      if (plan.isPresent()) {
        return plan;
      }
    }
    return Optional.empty();
  }

  /** Ranges of friction alone: few choices, so that many plans can be looked at. */
  private static ForceParameters friction(BenchPlan plan) {
    ForceParameters usual = ForceParameters.of(plan);
    Interval half = Interval.of(0.5);
    return new ForceParameters(
        usual.friction(),
        Interval.of(1),
        usual.weaveFriction(),
        Interval.of(1),
        half,
        half,
        half,
        Interval.of(usual.mainsStiffness().low()),
        Interval.of(usual.crossesStiffness().low()));
  }

  private interface Look {
    void at(BenchPlan plan, ForceHistory history);
  }

  private static void each(String name, Look look) {
    Bed bed = bed(Samples.layout(name));
    int plans = 0;
    for (Job job : jobs()) {
      Optional<BenchPlan> plan = plan(bed, job);
      if (plan.isPresent()) {
        plans++;
        assertThat(Replay.check(plan.get())).isEmpty();
        look.at(plan.get(), ForceHistory.of(plan.get(), friction(plan.get())));
      }
    }
    assertThat(plans).isGreaterThanOrEqualTo(5);
  }

  // Statics: a tensioner that pulls two tails with one force gives each the half of it; a bend
  // takes
  // of it (capstan equation), so the mains next to the axis get less.
  @ParameterizedTest
  @MethodSource("names")
  void aSharedPullIsSharedHalfAndHalf(String name) {
    each(
        name,
        (plan, history) -> {
          int n = 0;
          while (!(plan.steps().get(n) instanceof Step.Pull p && p.tails().size() == 2)) {
            n++;
          }
          Step.Pull pull = (Step.Pull) plan.steps().get(n);
          Map<SpanId, Interval> spans = history.after(n + 1).orElseThrow().spans();
          double half = pull.tension().newtons() / 2;
          assertThat(pull.tension()).isEqualTo(plan.job().mainsTension(plan.bed().layout()));
          for (SpanId tail : pull.tails()) {
            assertThat(spans.get(tail).low()).isEqualTo(half);
            assertThat(spans.get(tail).high()).isEqualTo(half);
          }
          for (SpanId laced : spans.keySet()) {
            if (!pull.tails().contains(laced)) {
              assertThat(spans.get(laced).high()).as("%s", laced).isLessThan(half);
              assertThat(spans.get(laced).low()).as("%s", laced).isPositive();
            }
          }
        });
  }

  @ParameterizedTest
  @MethodSource("names")
  void aStartingClampNeverBearsMoreThanHalfTheReferenceInAStart(String name) {
    each(
        name,
        (plan, history) -> {
          double half = plan.job().mainsTension(plan.bed().layout()).newtons() / 2;
          int last = -1;
          for (int i = 0; i < plan.steps().size(); i++) {
            if (plan.steps().get(i) instanceof Step.Weave) {
              break; // a start is over before any cross; a later one may hold the first cross
            }
            if (plan.steps().get(i) instanceof Step.SetClamp s
                && s.clamp().startsWith("starting")) {
              last = i;
            }
          }
          assertThat(last >= 0)
              .isEqualTo(plan.start().orElseThrow().method() == StartMethod.ANCHOR_MAIN);
          boolean woven = false;
          int next = 0;
          for (StepForces s : history.steps()) {
            for (; next < s.step(); next++) {
              woven |= plan.steps().get(next) instanceof Step.Weave;
            }
            if (!woven) {
              s.clamps()
                  .forEach(
                      (clamp, load) -> {
                        if (clamp.startsWith("starting")) {
                          assertThat(load.high()).isLessThanOrEqualTo(half + NEAR);
                        }
                      });
            }
          }
        });
  }

  /**
   * No span carries more than the largest pull, and one that was never gripped no more than the
   * least bend of the route leaves of it; nor does any clamp or knot.
   */
  @ParameterizedTest
  @MethodSource("names")
  void noForceComesFromNothing(String name) {
    each(name, SampleForcesTest::noMoreThanPulled);
  }

  /** The same of plans that go on from a half-done job. */
  @ParameterizedTest
  @MethodSource("names")
  void noForceComesFromNothingOnTheWayOn(String name) {
    Bed bed = bed(Samples.layout(name));
    Job job = Job.standard();
    BenchPlan plan = plan(bed, job).orElseThrow();
    int ways = 0;
    for (int share : new int[] {3, 5, 8}) {
      int n = plan.steps().size() * share / 10;
      while (!(plan.steps().get(n - 1) instanceof Step.Release)) {
        n++;
      }
      HalfDone state = HalfDone.after(plan, n);
      for (WayOn way : Hoopwright.waysOn(bed, state, bed, job, 1)) {
        ways++;
        BenchPlan on = way.goOn();
        noMoreThanPulled(on, ForceHistory.of(on, friction(on)));
      }
    }
    assertThat(ways).isGreaterThanOrEqualTo(3);
  }

  private static void noMoreThanPulled(BenchPlan plan, ForceHistory history) {
    double most = 0;
    for (Step step : plan.steps()) {
      if (step instanceof Step.Pull pull) {
        most = Math.max(most, pull.tension().newtons());
      }
    }
    double bound = most * Math.exp(-history.parameters().friction().low() * leastBend(plan));
    Set<SpanId> gripped = new HashSet<>();
    int next = 0;
    for (StepForces s : history.steps()) {
      for (; next < s.step(); next++) {
        if (plan.steps().get(next) instanceof Step.Pull pull) {
          gripped.addAll(pull.tails());
        }
      }
      for (Map.Entry<SpanId, Interval> e : s.spans().entrySet()) {
        double limit = gripped.contains(e.getKey()) ? most : bound;
        assertThat(e.getValue().high())
            .as("%s step %s", e, s.step())
            .isLessThanOrEqualTo(limit + NEAR);
        assertThat(e.getValue().low()).isGreaterThanOrEqualTo(0);
      }
      double all = most + NEAR;
      assertThat(s.clamps().values()).allMatch(i -> i.low() >= 0 && i.high() <= all);
      assertThat(s.knots().values()).allMatch(i -> i.low() >= 0 && i.high() <= all);
    }
  }

  /** The least angle by which string bends from one pass into the next, from the holes' places. */
  private static double leastBend(BenchPlan plan) {
    double least = Math.PI;
    for (Piece piece : plan.route().pieces()) {
      List<Pass> line = new ArrayList<>();
      List<StringEnd> ends = piece.ends();
      for (int i = ends.get(0).passes().size() - 1; i >= 0; i--) {
        Pass p = ends.get(0).passes().get(i);
        line.add(new Pass(p.span(), p.to(), p.from()));
      }
      line.addAll(ends.get(1).passes());
      for (int i = 0; i + 1 < line.size(); i++) {
        Pass a = line.get(i);
        Pass b = line.get(i + 1);
        least =
            Math.min(
                least,
                turn(plan, a.from(), a.to(), b.from()) + turn(plan, a.to(), b.from(), b.to()));
      }
    }
    return least;
  }

  private static double turn(BenchPlan plan, HoleId a, HoleId b, HoleId c) {
    double in = angle(plan.bed().position(a), plan.bed().position(b));
    double out = angle(plan.bed().position(b), plan.bed().position(c));
    return Math.abs(Math.IEEEremainder(out - in, 2 * Math.PI));
  }

  private static double angle(Point from, Point to) {
    return Math.atan2(to.y() - from.y(), to.x() - from.x());
  }

  /**
   * Plain statics, worked out from the ends of the strings: each string pulls the hoop at both of
   * its holes along itself. What pulls down anywhere and what pulls up are the same, and that is
   * what squeezes the hoop along; likewise across; and nothing is left over.
   */
  @ParameterizedTest
  @MethodSource("names")
  void theHoopIsInEquilibrium(String name) {
    each(
        name,
        (plan, ignored) -> {
          for (StepForces s : ForceHistory.of(plan, oneChoice(plan)).steps()) {
            double down = 0;
            double up = 0;
            double leftwards = 0;
            double rightwards = 0;
            double leftMains = 0;
            double rightMains = 0;
            for (Map.Entry<SpanId, Interval> e : s.spans().entrySet()) {
              Span span = plan.bed().span(e.getKey());
              double t = e.getValue().high();
              for (HoleId at : List.of(span.from(), span.to())) {
                double way = angle(plan.bed().position(at), plan.bed().position(span.other(at)));
                up += Math.max(0, t * Math.sin(way));
                down += Math.max(0, -t * Math.sin(way));
                rightwards += Math.max(0, t * Math.cos(way));
                leftwards += Math.max(0, -t * Math.cos(way));
              }
              if (e.getKey().isMain()) {
                boolean left = e.getKey().side().orElseThrow() == Side.LEFT;
                leftMains += left ? t : 0;
                rightMains += left ? 0 : t;
              }
            }
            assertThat(down).isCloseTo(up, within(NEAR));
            assertThat(leftwards).isCloseTo(rightwards, within(NEAR));
            assertThat(s.along().high()).isCloseTo(up, within(NEAR));
            assertThat(s.across().high()).isCloseTo(rightwards, within(NEAR));
            assertThat(s.rightMinusLeft().high()).isCloseTo(rightMains - leftMains, within(NEAR));
          }
        });
  }

  private static ForceParameters oneChoice(BenchPlan plan) {
    ForceParameters p = friction(plan);
    return new ForceParameters(
        Interval.of(0.2),
        p.wrapFactor(),
        Interval.of(0.1),
        p.tensionerShare(),
        p.drawbackMm(),
        p.knotShare(),
        p.backUpShare(),
        p.mainsStiffness(),
        p.crossesStiffness());
  }

  /** The mirrored layout strung by the mirrored route has the mirrored forces, step by step. */
  @ParameterizedTest
  @MethodSource("names")
  void aMirroredJobHasMirroredForces(String name) {
    Bed bed = bed(Samples.layout(name));
    Bed other = bed(Samples.layout(name).mirrored());
    Map<Integer, Integer> plans = new HashMap<>();
    for (Job job : jobs()) {
      Job left = onSide(job, Side.LEFT);
      Optional<BenchPlan> plan = plan(bed, left);
      if (plan.isEmpty()) {
        continue;
      }
      Route route = plan.get().route().mirrored();
      BenchPlan mirrored = Planner.plan(other, route, onSide(job, Side.RIGHT)).orElseThrow();
      List<StepForces> a = ForceHistory.of(plan.get(), friction(plan.get())).steps();
      List<StepForces> b = ForceHistory.of(mirrored, friction(mirrored)).steps();
      assertThat(b).hasSameSizeAs(a);
      for (int i = 0; i < a.size(); i++) {
        same(a.get(i), b.get(i));
      }
      plans.merge(route.pieces().size(), 1, Integer::sum);
    }
    assertThat(plans.values()).allMatch(n -> n >= 5);
    assertThat(plans).isNotEmpty();
  }

  private static void same(StepForces a, StepForces b) {
    assertThat(b.step()).isEqualTo(a.step());
    a.spans().forEach((span, i) -> near(i, b.spans().get(mirror(span)), span + " " + a.step()));
    a.clamps().forEach((clamp, i) -> near(i, b.clamps().get(clamp), clamp + " " + a.step()));
    a.knots().forEach((end, i) -> near(i, b.knots().get(end), end + " " + a.step()));
    near(a.along(), b.along(), "along");
    near(a.across(), b.across(), "across");
    near(
        a.rightMinusLeft(),
        new Interval(-b.rightMinusLeft().high(), -b.rightMinusLeft().low()),
        "right minus left");
  }

  private static SpanId mirror(SpanId span) {
    return span.isMain()
        ? SpanId.main(
            span.side().orElseThrow() == Side.LEFT ? Side.RIGHT : Side.LEFT, span.number())
        : span;
  }

  private static void near(Interval a, Interval b, String what) {
    assertThat(b.low()).as(what).isCloseTo(a.low(), within(NEAR));
    assertThat(b.high()).as(what).isCloseTo(a.high(), within(NEAR));
  }
}
