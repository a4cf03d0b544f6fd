package org.hoopwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.frame.End;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.hoopwright.replay.Replay;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteSearch;
import org.hoopwright.testing.LayoutArbitraries;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the trade knows about work at the bench, with the source of each fact. */
class BenchTradeFactsTest {

  private static List<BenchPlan> plans(Layout layout, Job job) {
    Bed bed = StatedAssignment.assign(layout).bed().orElseThrow();
    RouteRequest request =
        job.routes().toBuilder().startingClamps(job.bench().startingClamps()).build();
    List<BenchPlan> plans = new ArrayList<>();
    for (RankedRoute ranked : RouteSearch.search(bed, request).ranked()) {
      Planner.plan(bed, ranked.route(), job).ifPresent(plans::add);
    }
    return plans;
  }

  private static List<BenchPlan> sixteen(End start, Job job) {
    return plans(Willowbank.hundred().noRun(List.of()).mainsStart(start).build(), job);
  }

  /** The order in which mains had their first pull of their own. */
  private static List<SpanId> ownPulls(BenchPlan plan) {
    return plan.steps().stream()
        .filter(s -> s instanceof Step.Pull)
        .map(Step.Pull.class::cast)
        .filter(p -> p.tails().size() == 1)
        .map(p -> p.tails().get(0))
        .filter(SpanId::isMain)
        .distinct()
        .toList();
  }

  private static int mostLead(List<SpanId> pulls) {
    Map<Side, Integer> done = new EnumMap<>(Map.of(Side.LEFT, 0, Side.RIGHT, 0));
    int most = 0;
    for (SpanId main : pulls) {
      done.merge(main.side().orElseThrow(), 1, Integer::sum);
      most = Math.max(most, Math.abs(done.get(Side.LEFT) - done.get(Side.RIGHT)));
    }
    return most;
  }

  /**
   * One side is at most 2 mains ahead of the other, or 3 (US association as reported by a stringer
   * blog, 2009/11; European association, Pro Stringer no. 4, 2017: two then two), or 1 for those
   * who alternate strictly (the same blog).
   */
  @ParameterizedTest
  @CsvSource({"THROAT,1", "THROAT,2", "THROAT,3", "HEAD,1", "HEAD,2", "HEAD,3"})
  void noSideIsFurtherAheadThanTheLimit(End start, int limit) {
    List<BenchPlan> plans = sixteen(start, Job.builder().leadLimit(limit).build());
    assertThat(plans).hasSizeGreaterThan(10);
    for (BenchPlan plan : plans) {
      List<SpanId> pulls = ownPulls(plan);
      assertThat(pulls).hasSize(16);
      assertThat(mostLead(pulls)).as("%s %s", plan.route(), pulls).isLessThanOrEqualTo(limit);
    }
  }

  /**
   * The starting clamp goes outside at the throat, never at the head (common practice, no source):
   * a start at the throat holds main 2, one at the head main 1.
   */
  @ParameterizedTest
  @CsvSource({"THROAT,2", "HEAD,1"})
  void startAtTheThroatHoldsMainTwoAndAtTheHeadMainOne(End start, int k) {
    for (BenchPlan plan : sixteen(start, Job.standard())) {
      assertThat(plan.start().orElseThrow().anchor().number()).isEqualTo(k);
      assertThat(plan.start().orElseThrow().clampOutside().orElseThrow().end())
          .isEqualTo(End.THROAT);
    }
  }

  /** Own pulls of the start: a1 b1 b2 a2, or b1 b2 a1 (common practice, no source). */
  @ParameterizedTest
  @CsvSource({"THROAT,L1 R1 R2 L2", "HEAD,R1 R2 L1"})
  void startPullsFromTheAxisOutwards(End start, String pulls) {
    BenchPlan plan = sixteen(start, Job.builder().anchorSide(Side.LEFT).build()).get(0);
    List<String> first = ownPulls(plan).stream().map(SpanId::toString).toList();
    assertThat(String.join(" ", first)).startsWith(pulls);
  }

  /**
   * The starting clamp on the first cross gives way to a knot after three crosses (Racquet Sports
   * Industry, "Starting clamp", 2004/03).
   */
  @org.junit.jupiter.api.Test
  void startingClampOnTheFirstCrossIsReplacedAfterThree() {
    int clamped = 0;
    for (BenchPlan plan : sixteen(End.HEAD, Job.standard())) {
      int weaves = 0;
      boolean set = false;
      for (Step step : plan.steps()) {
        if (step instanceof Step.SetClamp s
            && s.clamp().startsWith("starting")
            && s.span().isCross()) {
          set = true;
          weaves = 1; // the cross that it holds
        } else if (set && step instanceof Step.Weave) {
          weaves++;
        } else if (set && step instanceof Step.FreeClamp f && f.clamp().startsWith("starting")) {
          assertThat(weaves).isEqualTo(3);
          clamped++;
          break;
        }
      }
    }
    assertThat(clamped).isPositive();
  }

  /** Every plan of every drawn layout is proven. */
  @Property(tries = 60)
  @Domain(LayoutArbitraries.class)
  @Domain(DomainContext.Global.class)
  void everyPlanIsProven(@ForAll Layout layout, @ForAll @IntRange(min = 1, max = 3) int lead) {
    for (BenchPlan plan : plans(layout, Job.builder().leadLimit(lead).build())) {
      assertThat(Replay.check(plan)).as("%s", plan.route()).isEmpty();
      assertThat(mostLead(ownPulls(plan))).isLessThanOrEqualTo(lead);
    }
  }
}
