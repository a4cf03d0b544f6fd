package org.hoopwright.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.bench.Bench;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.BenchTest;
import org.hoopwright.bench.ClampRating.Verdict;
import org.hoopwright.bench.ClampSide;
import org.hoopwright.bench.JawDepth;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.MachineClampKind;
import org.hoopwright.bench.Planner;
import org.hoopwright.bench.StartMark;
import org.hoopwright.bench.StartMethod;
import org.hoopwright.bench.Step;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Point;
import org.hoopwright.material.Gauge;
import org.hoopwright.material.Material;
import org.hoopwright.material.StringSpec;
import org.hoopwright.replay.ForceHistory;
import org.hoopwright.route.Piece;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteSearch;
import org.hoopwright.testing.Willowbank;
import org.hoopwright.units.Force;
import org.hoopwright.units.ForceUnit;
import org.junit.jupiter.api.Test;

class JudgementTest {

  private static final StringSpec THIN = new StringSpec(Gauge.G18, Material.NYLON);

  private static BenchPlan plan(Job job) {
    return plan(Willowbank.hundred().build(), job);
  }

  private static BenchPlan plan(Layout layout, Job job) {
    Bed bed = StatedAssignment.assign(layout).bed().orElseThrow();
    RouteRequest request = RouteRequest.builder().pieces(2).build();
    return RouteSearch.search(bed, request).ranked().stream()
        .filter(r -> r.route().pieces().get(0).role() == Piece.Role.MAINS)
        .flatMap(r -> RouteSearch.knotVariants(bed, request, r.route()).stream())
        .flatMap(r -> Planner.plan(bed, r, job).stream())
        .findFirst()
        .orElseThrow();
  }

  private static Judgement judge(BenchPlan plan) {
    return Judgement.of(plan, ForceHistory.of(plan));
  }

  private static List<FindingCode> codes(List<Finding> findings) {
    return findings.stream().map(Finding::code).distinct().toList();
  }

  private static BenchTest test(double pounds, boolean held) {
    return new BenchTest.Pull(THIN, Force.of(pounds, ForceUnit.POUND_FORCE), JawDepth.DEEP, held);
  }

  private static ClampJudgement clamp(Judgement judgement, String name) {
    return judgement.clamps().stream()
        .filter(c -> c.clamp().equals(name))
        .findFirst()
        .orElseThrow();
  }

  // A clamp rated 40 lbf for an 18 gauge string, which lets it go above, holds its part of a shared
  // pull of 60 lbf, and not a full one of 50 (common practice, no source).
  @Test
  void aRatingOfFortyPoundsHoldsASharedPullAndNotAFullOne() {
    List<BenchTest> tests = List.of(test(40, true), test(41, false));
    for (double reference : new double[] {50, 60}) {
      BenchPlan plan =
          plan(
              Job.builder()
                  .string(THIN)
                  .mainsTension(Force.of(reference, ForceUnit.POUND_FORCE))
                  .bench(Bench.builder().machineClampTests(tests).startingClampTests(tests).build())
                  .build());
      assertThat(plan.start().orElseThrow().method()).isEqualTo(StartMethod.ANCHOR_MAIN);
      Judgement judgement = judge(plan);
      assertThat(clamp(judgement, "starting-1").verdict()).isEqualTo(Verdict.HOLDS);
      ClampJudgement machine = clamp(judgement, "machine-1");
      assertThat(machine.verdict()).isEqualTo(Verdict.SLIPS);
      assertThat(codes(judgement.findings()))
          .contains(FindingCode.CLAMP_MAY_SLIP, FindingCode.CLAMP_NOT_CLEANED);
      assertThat(judgement.findings().get(0).message())
          .contains("at step " + machine.worstStep() + ":");
      assertThat(codes(Judgement.findings(plan))).isEqualTo(codes(judgement.findings()));
    }
  }

  @Test
  void whatWasNotTestedIsSaidOnlyWhereTestsExist() {
    BenchPlan none = plan(Job.standard());
    assertThat(codes(judge(none).findings())).isEmpty();
    assertThat(judge(none).clamps()).allMatch(c -> c.verdict() == Verdict.UNTESTED);
    BenchPlan some =
        plan(
            Job.builder()
                .string(THIN)
                .bench(Bench.builder().machineClampTests(List.of(test(30, true))).build())
                .build());
    assertThat(codes(judge(some).findings())).containsExactly(FindingCode.CLAMP_UNTESTED);
    BenchPlan enough =
        plan(
            Job.builder()
                .string(THIN)
                .bench(Bench.builder().machineClampTests(List.of(test(70, true))).build())
                .build());
    assertThat(codes(judge(enough).findings())).isEmpty();
  }

  @Test
  void floatingClampsNeedATightNeighbour() {
    BenchPlan plan =
        plan(
            Job.builder()
                .bench(Bench.builder().machineClampKind(MachineClampKind.FLOATING).build())
                .build());
    List<Finding> alone =
        Judgement.findings(plan).stream().filter(f -> f.code() == FindingCode.CLAMP_ALONE).toList();
    // The first main of all, and the first cross, have no neighbour; every later one has.
    assertThat(alone).isNotEmpty().hasSizeLessThanOrEqualTo(4);
    assertThat(alone.get(0).message()).contains("goes on L2");
    assertThat(alone.get(alone.size() - 1).message()).contains("goes on X1");
  }

  @Test
  void knotsRoundTheWeakerStringAreWarnedOf() {
    StringSpec gut = new StringSpec(Gauge.G16, Material.NATURAL_GUT);
    StringSpec polyester = new StringSpec(Gauge.G17, Material.POLYESTER);
    BenchPlan onGut = plan(Job.builder().strings(gut, polyester).build());
    BenchPlan onPolyester = plan(Job.builder().strings(polyester, gut).build());
    assertThat(codes(Judgement.findings(onGut))).containsExactly(FindingCode.ANCHOR_WEAKER);
    assertThat(Judgement.findings(onGut).get(0).source()).isPresent();
    // Gut of 16 is thicker than polyester of 17 by more than either's range.
    assertThat(codes(Judgement.findings(onPolyester))).containsExactly(FindingCode.ANCHOR_WEAKER);
    StringSpec nylon = new StringSpec(Gauge.G16, Material.NYLON);
    assertThat(Judgement.findings(plan(Job.builder().strings(nylon, gut).build()))).isEmpty();
  }

  @Test
  void aMarkOnABendInTheHeadZoneIsWarnedOf() {
    Job atHead = Job.builder().anchorMain(1).build();
    // Its runs are long enough for a mark to end on them.
    Layout board =
        Willowbank.teaching()
            .tieOff("1H", "1T", "2T")
            .at(
                Map.of(
                    HoleRef.of("1H"), new Point(9, 59),
                    HoleRef.of("2H"), new Point(27, 50.5)))
            .mainsStart(End.THROAT)
            .build();
    assertThat(spots(plan(board, atHead))).contains(StartMark.Spot.BEND);
    assertThat(codes(Judgement.findings(plan(board, atHead)))).contains(FindingCode.MARK_ON_BEND);
    BenchPlan usual = plan(board, Job.standard());
    assertThat(spots(usual)).doesNotContain(StartMark.Spot.BEND);
    assertThat(codes(Judgement.findings(usual))).doesNotContain(FindingCode.MARK_ON_BEND);
    // On this frame it is the next hole that the mark ends in.
    assertThat(spots(plan(atHead))).containsExactly(StartMark.Spot.HOLE);
    assertThat(codes(Judgement.findings(plan(atHead)))).doesNotContain(FindingCode.MARK_ON_BEND);
  }

  private static List<StartMark.Spot> spots(BenchPlan plan) {
    return plan.start().orElseThrow().mark().orElseThrow().at();
  }

  @Test
  void countsBitesAtOnePlace() {
    BenchPlan plan = plan(Job.standard());
    List<Bites> bites = judge(plan).bites();
    for (Bites b : bites) {
      assertThat(b.times()).isEqualTo(bitesAt(plan, b.span(), (b.fromMm() + b.toMm()) / 2));
      assertThat(b.times()).isGreaterThan(1);
      assertThat(b.toMm() - b.fromMm()).isBetween(1e-9, plan.job().bench().clampLengthMm() + 1e-9);
    }
    for (SpanId span : plan.bed().spans().stream().map(s -> s.id()).toList()) {
      int most = 0;
      for (double at = 0; at < plan.bed().span(span).lengthMm(); at += 0.5) {
        most = Math.max(most, bitesAt(plan, span, at));
      }
      boolean listed = bites.stream().anyMatch(b -> b.span().equals(span));
      assertThat(listed).as("%s bitten %d times", span, most).isEqualTo(most > 1);
    }
    assertThat(Sensitivity.of(Material.POLYESTER)).isEqualTo(Sensitivity.SHOWS_MARKS);
    assertThat(Sensitivity.of(Material.MULTIFILAMENT)).isEqualTo(Sensitivity.FLATTENS);
  }

  private static int bitesAt(BenchPlan plan, SpanId span, double at) {
    double length = plan.job().bench().clampLengthMm();
    double whole = plan.bed().span(span).lengthMm();
    List<Double> starts = new ArrayList<>();
    for (Step step : plan.steps()) {
      if (step instanceof Step.SetClamp s
          && s.span().equals(span)
          && s.side() == ClampSide.INSIDE) {
        starts.add(
            plan.bed().span(span).from().equals(s.near())
                ? s.distanceMm()
                : whole - length - s.distanceMm());
      }
    }
    return (int)
        Stream.of(starts.toArray(Double[]::new)).filter(x -> at >= x && at < x + length).count();
  }

  @Test
  void saysWhenTheHoopIsSqueezedMost() {
    BenchPlan plan = plan(Job.standard());
    Judgement judgement = judge(plan);
    ForceHistory history = ForceHistory.of(plan);
    history
        .steps()
        .forEach(
            s -> {
              assertThat(s.along().high()).isLessThanOrEqualTo(judgement.along().newtons().high());
              assertThat(s.across().high())
                  .isLessThanOrEqualTo(judgement.across().newtons().high());
              assertThat(Math.abs(s.rightMinusLeft().high()))
                  .isLessThanOrEqualTo(
                      Math.max(
                              Math.abs(judgement.imbalance().newtons().high()),
                              Math.abs(judgement.imbalance().newtons().low()))
                          + 1e-9);
            });
    int mainsDone = judgement.along().step();
    assertThat(plan.steps().get(mainsDone - 1)).isInstanceOf(Step.Pull.class);
    assertThat(judgement.across().step()).isGreaterThan(mainsDone);
  }
}
