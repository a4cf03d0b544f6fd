package org.hoopwright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.judgement.ClampJudgement;
import org.hoopwright.judgement.Judgement;
import org.hoopwright.material.Gauge;
import org.hoopwright.material.Material;
import org.hoopwright.material.StringSpec;
import org.hoopwright.replay.Breach;
import org.hoopwright.replay.ForceHistory;
import org.hoopwright.replay.Interval;
import org.hoopwright.replay.Invariant;
import org.hoopwright.replay.Replay;
import org.hoopwright.replay.StepForces;
import org.hoopwright.route.Family;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.Route;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteSearch;
import org.hoopwright.testing.Willowbank;
import org.hoopwright.units.Force;
import org.hoopwright.units.ForceUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A starting clamp also backs up a machine clamp and serves as the third clamp in around-the-world
 * (Racquet Sports Industry, "Starting clamp", 2004/03).
 */
class StartingClampUseTest {

  private static final StringSpec THIN = new StringSpec(Gauge.G18, Material.NYLON);
  private static final Layout HUNDRED = Willowbank.hundred().noRun(List.of()).build();

  private static BenchTest test(double pounds, boolean held) {
    return new BenchTest.Pull(THIN, Force.of(pounds, ForceUnit.POUND_FORCE), JawDepth.DEEP, held);
  }

  /** A bench whose clamps were tested so, with two starting clamps. */
  private static Bench bench(List<BenchTest> machine, List<BenchTest> starting) {
    return Bench.builder()
        .startingClamps(2)
        .machineClampTests(machine)
        .startingClampTests(starting)
        .build();
  }

  private static Job job(Bench bench, int pieces) {
    return Job.builder()
        .string(THIN)
        .mainsTension(Force.of(55, ForceUnit.POUND_FORCE))
        .bench(bench)
        .routes(RouteRequest.builder().pieces(pieces).build())
        .build();
  }

  private static List<BenchPlan> plans(Layout layout, Job job) {
    Bed bed = StatedAssignment.assign(layout).bed().orElseThrow();
    List<BenchPlan> plans = new ArrayList<>();
    RouteRequest request = job.routeRequest(layout);
    for (RankedRoute ranked : RouteSearch.search(bed, request).ranked()) {
      for (Route variant : RouteSearch.knotVariants(bed, request, ranked.route())) {
        Planner.plan(bed, variant, job).ifPresent(plans::add);
      }
    }
    assertThat(plans).isNotEmpty();
    return plans;
  }

  private static BenchPlan best(Job job) {
    BenchPlan plan = plans(HUNDRED, job).get(0);
    assertThat(Replay.check(plan)).isEmpty();
    return plan;
  }

  /** The steps that set a starting clamp behind a machine clamp. */
  private static List<Step.SetClamp> behind(BenchPlan plan) {
    Map<String, Step.SetClamp> on = new HashMap<>();
    List<Step.SetClamp> behind = new ArrayList<>();
    for (Step step : plan.steps()) {
      if (step instanceof Step.SetClamp set) {
        boolean second =
            on.values().stream()
                .anyMatch(o -> o.span().equals(set.span()) && o.near().equals(set.near()));
        if (second && set.side() == ClampSide.OUTSIDE) {
          behind.add(set);
        }
        on.put(set.clamp(), set);
      } else if (step instanceof Step.FreeClamp free) {
        on.remove(free.clamp());
      }
    }
    return behind;
  }

  /** Where an end waits for its knot with a starting clamp alone. */
  private static List<Step.SetClamp> thirds(BenchPlan plan) {
    return plan.steps().stream()
        .filter(s -> s instanceof Step.SetClamp)
        .map(Step.SetClamp.class::cast)
        .filter(s -> s.say().contains("until its knot, and the machine clamps are free"))
        .toList();
  }

  private static List<FindingCode> codes(List<Finding> findings) {
    return findings.stream().map(Finding::code).distinct().toList();
  }

  @Test
  void aMachineClampTestedTooLowIsBackedUpWhereAStartingClampMaySit() {
    List<BenchTest> low = List.of(test(40, true), test(50, false));
    BenchPlan plan = best(job(bench(low, List.of(test(30, true))), 2));
    List<Step.SetClamp> behind = behind(plan);
    assertThat(behind).hasSizeGreaterThan(10);
    assertThat(behind).noneMatch(s -> plan.bed().inHeadZone(s.near()));
    assertThat(behind).allMatch(s -> s.say().contains("it backs machine clamp"));
    // Every pull that is clamped outside the head zone is backed up.
    for (Step step : plan.steps()) {
      if (step instanceof Step.Pull p
          && p.tails().size() == 1
          && !plan.bed().inHeadZone(p.at().get(0))) {
        boolean other = p.at().get(0).end() == End.THROAT && p.tails().get(0).number() <= 2;
        assertThat(other || behind.stream().anyMatch(s -> s.span().equals(p.tails().get(0))))
            .as("%s", p)
            .isTrue();
      }
    }
    Finding refused =
        plan.findings().stream()
            .filter(f -> f.code() == FindingCode.START_CLAMP_REFUSED)
            .findFirst()
            .orElseThrow();
    assertThat(refused.message()).contains("L3H").contains("in the head zone");
  }

  @Test
  void aClampThatHoldsOrWasNeverTestedIsNotBackedUp() {
    for (List<BenchTest> tests : List.of(List.<BenchTest>of(), List.of(test(60, true)))) {
      BenchPlan plan = best(job(bench(tests, List.of()), 2));
      assertThat(behind(plan)).isEmpty();
      assertThat(codes(plan.findings())).doesNotContain(FindingCode.START_CLAMP_REFUSED);
    }
    Job never =
        Job.builder()
            .string(THIN)
            .bench(bench(List.of(test(40, false)), List.of()))
            .backUp(ClampUse.NEVER)
            .build();
    assertThat(behind(best(never))).isEmpty();
  }

  @Test
  void oneStartingClampBacksUpOneEndAtATime() {
    Bench one =
        Bench.builder().startingClamps(1).machineClampTests(List.of(test(40, false))).build();
    BenchPlan plan = best(job(one, 2));
    assertThat(behind(plan)).isNotEmpty().allMatch(s -> s.clamp().equals("starting-1"));
    assertThat(plan.findings())
        .filteredOn(f -> f.code() == FindingCode.START_CLAMP_REFUSED)
        .anyMatch(f -> f.message().contains("no starting clamp is free then"));
    Bench none =
        Bench.builder().startingClamps(0).machineClampTests(List.of(test(40, false))).build();
    BenchPlan without = best(job(none, 2));
    assertThat(behind(without)).isEmpty();
    assertThat(codes(without.findings())).contains(FindingCode.START_CLAMP_REFUSED);
  }

  @Test
  void aFloatingClampWithoutATightNeighbourIsBackedUp() {
    // Crosses from the throat up begin outside the head zone.
    Bench bench =
        Bench.builder().startingClamps(2).machineClampKind(MachineClampKind.FLOATING).build();
    Job up =
        Job.builder()
            .bench(bench)
            .routes(RouteRequest.builder().pieces(2).direction(Direction.THROAT_TO_HEAD).build())
            .build();
    BenchPlan plan = best(up);
    assertThat(behind(plan)).anyMatch(s -> s.span().equals(SpanId.of("X19")));
    assertThat(Judgement.findings(plan))
        .filteredOn(f -> f.code() == FindingCode.CLAMP_ALONE)
        .noneMatch(f -> f.message().contains("goes on X19"));
    Job never = Job.builder().bench(bench).routes(up.routes()).backUp(ClampUse.NEVER).build();
    assertThat(Judgement.findings(best(never)))
        .filteredOn(f -> f.code() == FindingCode.CLAMP_ALONE)
        .anyMatch(f -> f.message().contains("goes on X19"));
  }

  /** Each of the two may bear any part; what they bear together is the pull, less the drawback. */
  @Test
  void theTwoClampsShareTheLoad() {
    BenchPlan plan = best(job(bench(List.of(test(40, false)), List.of()), 2));
    double pull = plan.job().mainsTension(HUNDRED).newtons();
    int shared = 0;
    for (StepForces s : ForceHistory.of(plan).steps()) {
      for (Map.Entry<String, Interval> e : s.together().entrySet()) {
        if (!(plan.steps().get(s.step() - 1) instanceof Step.Release)) {
          continue;
        }
        Interval machine = s.clamps().get(e.getKey());
        assertThat(machine.low()).isCloseTo(0, within(0.2 * pull));
        assertThat(machine.high()).isLessThanOrEqualTo(pull + 1e-9);
        assertThat(e.getValue().low()).isGreaterThan(0);
        assertThat(e.getValue().high()).isLessThanOrEqualTo(pull + 1e-9);
        assertThat(machine.high()).isLessThanOrEqualTo(e.getValue().high() + 1e-9);
        shared++;
      }
    }
    assertThat(shared).isGreaterThan(10);
  }

  @Test
  void twoClampsHoldWhatEachOfThemHolds() {
    ClampRating machine =
        ClampRating.of(List.of(test(40, true), test(50, false)), THIN, JawDepth.DEEP);
    ClampRating starting = ClampRating.of(List.of(test(30, true)), THIN, JawDepth.DEEP);
    ClampRating both = machine.with(starting);
    assertThat(both.heldUpTo().orElseThrow().in(ForceUnit.POUND_FORCE)).isCloseTo(70, within(1e-9));
    assertThat(both.slippedFrom()).isEmpty();
    assertThat(starting.with(machine).heldUpTo()).isEqualTo(both.heldUpTo());
    assertThat(machine.with(machine).slippedFrom().orElseThrow().in(ForceUnit.POUND_FORCE))
        .isCloseTo(100, within(1e-9));
    assertThat(ClampRating.unknown().with(ClampRating.unknown())).isEqualTo(ClampRating.unknown());
  }

  @Test
  void aPairIsJudgedByBothRatings() {
    List<BenchTest> low = List.of(test(40, true), test(50, false));
    Layout free = Willowbank.teaching().tieOff("1H", "2H", "1T", "2T").build();
    Job job = job(bench(low, List.of(test(30, true))), 2);
    boolean seen = false;
    for (BenchPlan plan : plans(free, job).subList(0, 10)) {
      Judgement judgement = Judgement.of(plan, ForceHistory.of(plan));
      for (ClampJudgement c : judgement.clamps()) {
        if (c.together().isPresent()) {
          seen = true;
          assertThat(c.verdict()).isEqualTo(ClampRating.Verdict.HOLDS);
        }
      }
    }
    BenchPlan alone =
        best(
            Job.builder()
                .string(THIN)
                .mainsTension(Force.of(55, ForceUnit.POUND_FORCE))
                .bench(bench(low, List.of()))
                .backUp(ClampUse.NEVER)
                .build());
    Judgement never = Judgement.of(alone, ForceHistory.of(alone));
    assertThat(never.clamps())
        .filteredOn(c -> c.clamp().startsWith("machine"))
        .allMatch(
            c ->
                c.verdict() == ClampRating.Verdict.SLIPS
                    || c.verdict() == ClampRating.Verdict.MAY_SLIP);
    assertThat(seen).isTrue();
  }

  /** Around-the-world from the throat up: the short end waits outside the head zone. */
  private static final Layout UP =
      Willowbank.hundred()
          .noRun(List.of())
          .mainsStart(End.HEAD)
          .direction(Direction.THROAT_TO_HEAD)
          .build();

  private static Job third(ClampUse use, Bench bench) {
    return Job.builder()
        .string(THIN)
        .mainsTension(Force.of(55, ForceUnit.POUND_FORCE))
        .bench(bench)
        .thirdClamp(use)
        .routes(RouteRequest.builder().pieces(1).direction(Direction.THROAT_TO_HEAD).build())
        .build();
  }

  @Test
  void theThirdClampHoldsTheEndThatWaits() {
    int held = 0;
    for (BenchPlan plan : plans(UP, third(ClampUse.ALWAYS, bench(List.of(), List.of())))) {
      assertThat(Replay.check(plan)).as("%s", plan.route()).isEmpty();
      for (Step.SetClamp third : thirds(plan)) {
        assertThat(plan.route().families()).contains(Family.AROUND_THE_WORLD);
        assertThat(plan.bed().inHeadZone(third.near())).isFalse();
        held++;
        int set = plan.steps().indexOf(third);
        int off =
            index(plan, set, s -> s instanceof Step.FreeClamp f && f.clamp().equals(third.clamp()));
        // The other end weaves meanwhile, and one machine clamp is on no string.
        List<Step> between = plan.steps().subList(set, off);
        assertThat(between).anyMatch(s -> s instanceof Step.Weave);
        assertThat(machineClamps(between)).hasSizeLessThanOrEqualTo(1);
        // Then it is pulled again, a machine clamp takes it, and it is tied.
        assertThat(plan.steps().get(off - 1)).isInstanceOf(Step.Pull.class);
        assertThat(plan.steps().get(off + 1)).isInstanceOf(Step.SetClamp.class);
        assertThat(plan.steps().get(off + 2)).isInstanceOf(Step.Release.class);
        int knot = index(plan, off, s -> s instanceof Step.TieKnot);
        assertThat(plan.steps().subList(off + 3, knot)).allMatch(s -> s instanceof Step.Check);
      }
    }
    assertThat(held).isGreaterThan(5);
  }

  private static List<String> machineClamps(List<Step> steps) {
    return steps.stream()
        .filter(s -> s instanceof Step.SetClamp c && c.side() == ClampSide.INSIDE)
        .map(s -> ((Step.SetClamp) s).clamp())
        .distinct()
        .toList();
  }

  @Test
  void theThirdClampStandsInForOneThatWouldSitAwayOnlyWhenTestsShowThatItHolds() {
    Job holds = third(ClampUse.AS_NEEDED, bench(List.of(), List.of(test(60, true))));
    List<BenchPlan> plans = plans(UP, holds);
    assertThat(plans).allMatch(p -> Replay.check(p).isEmpty());
    assertThat(plans).anyMatch(p -> !thirds(p).isEmpty());
    assertThat(plans).noneMatch(p -> awayBeforeKnot(p));
    for (List<BenchTest> tests : List.of(List.<BenchTest>of(), List.of(test(40, false)))) {
      List<BenchPlan> without = plans(UP, third(ClampUse.AS_NEEDED, bench(List.of(), tests)));
      assertThat(without).allMatch(p -> thirds(p).isEmpty()).anyMatch(p -> awayBeforeKnot(p));
    }
    assertThat(plans(UP, third(ClampUse.ALWAYS, bench(List.of(), List.of(test(40, false))))))
        .allMatch(p -> thirds(p).isEmpty())
        .anyMatch(
            p ->
                p.findings().stream()
                    .anyMatch(
                        f ->
                            f.code() == FindingCode.START_CLAMP_REFUSED
                                && f.message().contains("let a full pull of this string go")));
  }

  private static boolean awayBeforeKnot(BenchPlan plan) {
    return plan.findings().stream()
        .anyMatch(f -> f.code() == FindingCode.CLAMP_AWAY && f.message().contains("loses"));
  }

  @Test
  void noThirdClampSitsInTheHeadZone() {
    Bed bed = StatedAssignment.assign(UP).bed().orElseThrow();
    StartingClamps clamps =
        new StartingClamps(bed, third(ClampUse.ALWAYS, Bench.builder().build()));
    Force pull = Force.ofNewtons(245);
    SpanId span = SpanId.of("X1");
    HoleId head = bed.span(span).from();
    assertThat(bed.inHeadZone(head)).isTrue();
    assertThat(clamps.third(new StartingClamps.Place(span, head, pull, false), true)).isEmpty();
    HoleId throat = HoleId.of("L10T");
    SpanId main = SpanId.of("L8");
    assertThat(clamps.third(new StartingClamps.Place(main, throat, pull, true), true)).isEmpty();
    assertThat(clamps.third(new StartingClamps.Place(main, throat, pull, false), true))
        .contains("starting-1");
    assertThat(clamps.refusals().stream().map(Finding::message))
        .containsExactly(
            "No starting clamp holds the end that waits for its knot at L7H: there it would sit in"
                + " the head zone, where strings shear most.",
            "No starting clamp holds the end that waits for its knot at L10T: no starting clamp is"
                + " free then.");
  }

  private static int index(BenchPlan plan, int from, java.util.function.Predicate<Step> which) {
    for (int i = from; i < plan.steps().size(); i++) {
      if (which.test(plan.steps().get(i))) {
        return i;
      }
    }
    throw new AssertionError("no such step");
  }

  /** With every use of every clamp every plan is proven, and gives none that another lacks. */
  @ParameterizedTest
  @EnumSource(ClampUse.class)
  void everyPlanIsProven(ClampUse use) {
    for (End start : End.values()) {
      for (int clamps = 0; clamps <= 2; clamps++) {
        Layout layout = Willowbank.hundred().noRun(List.of()).mainsStart(start).build();
        Job job =
            Job.builder()
                .bench(Bench.builder().startingClamps(clamps).build())
                .backUp(use)
                .thirdClamp(use)
                .build();
        Bed bed = StatedAssignment.assign(layout).bed().orElseThrow();
        for (RankedRoute ranked : RouteSearch.search(bed, job.routeRequest(layout)).ranked()) {
          Planner.plan(bed, ranked.route(), job)
              .ifPresent(p -> assertThat(Replay.check(p)).as("%s", p.route()).isEmpty());
        }
      }
    }
  }

  /** What the replay says when such a clamp is put where it must not be, or forgotten. */
  @Test
  void theReplayMindsTheSecondHolder() {
    BenchPlan plan = best(job(bench(List.of(test(40, false)), List.of()), 2));
    Step.SetClamp set = behind(plan).get(behind(plan).size() - 1);
    int at = plan.steps().lastIndexOf(set);
    int off = index(plan, at, s -> s instanceof Step.FreeClamp f && f.clamp().equals(set.clamp()));
    List<Step> left = new ArrayList<>(plan.steps());
    left.remove(off);
    assertThat(invariants(plan, left)).contains(Invariant.I8_END);
    HoleId head = HoleId.of("L3H");
    List<Step> high = new ArrayList<>(plan.steps());
    int pulled = index(plan, 0, s -> s instanceof Step.Pull p && p.at().equals(List.of(head)));
    high.add(
        pulled + 1,
        new Step.SetClamp("starting-2", SpanId.of("L3"), head, 0, ClampSide.OUTSIDE, "Wrong."));
    high.add(pulled + 2, new Step.FreeClamp("starting-2", "Wrong."));
    assertThat(invariants(plan, high)).contains(Invariant.I5_HEAD_ZONE);
    // Without the machine clamp the one behind holds the span by itself; without both it is slack.
    int inside = at - 1;
    assertThat(plan.steps().get(inside)).isInstanceOf(Step.SetClamp.class);
    List<Step> bare = new ArrayList<>(plan.steps());
    bare.remove(at);
    bare.remove(inside);
    assertThat(invariants(plan, bare)).contains(Invariant.I1_HELD);
  }

  private static List<Invariant> invariants(BenchPlan plan, List<Step> steps) {
    return Replay.check(
            new BenchPlan(
                plan.bed(),
                plan.route(),
                plan.job(),
                plan.start(),
                plan.lengths(),
                plan.cutLengthsMm(),
                steps,
                plan.findings()))
        .stream()
        .map(Breach::invariant)
        .distinct()
        .toList();
  }

  /** A job that is left at any release goes on, and can be undone. */
  @Test
  void halfDoneJobsGoOnWithSuchClamps() {
    for (Job job :
        List.of(
            Job.builder()
                .bench(Bench.builder().startingClamps(2).build())
                .backUp(ClampUse.ALWAYS)
                .routes(RouteRequest.builder().pieces(2).build())
                .build(),
            Job.builder()
                .bench(Bench.builder().startingClamps(2).build())
                .thirdClamp(ClampUse.ALWAYS)
                .routes(
                    RouteRequest.builder().pieces(1).direction(Direction.THROAT_TO_HEAD).build())
                .build())) {
      Layout layout = job.backUp() == ClampUse.ALWAYS ? HUNDRED : UP;
      BenchPlan plan =
          plans(layout, job).stream()
              .filter(p -> job.backUp() == ClampUse.ALWAYS || !thirds(p).isEmpty())
              .findFirst()
              .orElseThrow();
      for (int i = 0; i < plan.steps().size(); i++) {
        HalfDone state = HalfDone.after(plan, i + 1);
        boolean outside = state.clamps().stream().anyMatch(c -> c.side() == ClampSide.OUTSIDE);
        if (plan.steps().get(i) instanceof Step.Release
            && state.pulled().size() > 4
            && outside
            && i % 3 == 0) {
          List<WayOn> ways = WaysOn.find(plan.bed(), state, plan.bed(), job, 3);
          assertThat(ways).isNotEmpty();
          assertThat(ways).allSatisfy(w -> assertThat(Replay.check(w)).as(w.say()).isEmpty());
          assertThat(ways.get(0).spansUndone()).as("step %s", i + 1).isZero();
        }
      }
    }
  }
}
