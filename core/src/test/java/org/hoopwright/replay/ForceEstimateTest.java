package org.hoopwright.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hoopwright.replay.SmallPlans.headStart;
import static org.hoopwright.replay.SmallPlans.startingClamp;
import static org.hoopwright.replay.SmallPlans.startingKnot;
import static org.hoopwright.replay.SmallPlans.throatStart;

import java.util.List;
import java.util.stream.Stream;
import org.hoopwright.bed.SpanId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ForceEstimateTest {

  private static final double T = 245;
  private static final double BEND = ForceParameters.kept(0.2, Math.PI);

  /** One value for each parameter, and no drawback. */
  private static ForceParameters plain() {
    return drawback(0);
  }

  private static ForceParameters drawback(double mm) {
    return new ForceParameters(
        Interval.of(0.2),
        Interval.of(1),
        Interval.of(0),
        Interval.of(1),
        Interval.of(mm),
        Interval.of(0),
        Interval.of(0),
        Interval.of(4000),
        Interval.of(4000));
  }

  private static Estimates first(PlanText plan, String upTo, ForceParameters parameters) {
    int n = plan.lines().indexOf(upTo);
    assertThat(n).isNotNegative();
    return ForceEstimate.of(plan.with(plan.lines().subList(0, n + 1)).plan(), parameters);
  }

  private static double main(Estimates e, String span) {
    Interval i = e.spanTension().get(SpanId.of(span));
    assertThat(i.low()).isEqualTo(i.high());
    return i.low();
  }

  static Stream<PlanText> sound() {
    return Stream.of(throatStart(), headStart(), startingKnot(), startingClamp());
  }

  @Test
  void sharedPullGivesHalfToEachTailAndLessPastTheBends() {
    Estimates e = first(throatStart(), "pull L2 L2T R2 R2T", plain());
    assertThat(main(e, "L2")).isCloseTo(T / 2, within(1e-9));
    assertThat(main(e, "R2")).isCloseTo(T / 2, within(1e-9));
    assertThat(main(e, "L1")).isCloseTo(T / 2 * BEND, within(1e-9));
    assertThat(main(e, "R1")).isCloseTo(T / 2 * BEND, within(1e-9));
    assertThat(e.hoopPeak().get("imbalance").high()).isCloseTo(0, within(1e-9));
  }

  @Test
  void afterTheSharedPullOnlyTheAnchorMainIsTight() {
    Estimates e = first(throatStart(), "unlace long R2", plain());
    assertThat(main(e, "L2")).isCloseTo(T / 2, within(1e-9));
    assertThat(main(e, "L1")).isZero();
    assertThat(main(e, "R1")).isZero();
    assertThat(e.clampPeak().get("machine-1").high()).isCloseTo(T / 2, within(1e-9));
    assertThat(e.clampPeak().get("starting-1").high()).isCloseTo(T / 2, within(1e-9));
  }

  @Test
  void ownPullStopsAtTheClamp() {
    Estimates e = first(throatStart(), "pull L1 L1T", plain());
    assertThat(main(e, "L1")).isCloseTo(T, within(1e-9));
    assertThat(main(e, "L2")).isCloseTo(T / 2, within(1e-9));
    // Between clamp and hole L2 is pulled by T past one bend, on the other side by half of T.
    assertThat(e.clampPeak().get("machine-1").high())
        .isCloseTo(Math.max(T / 2, Math.abs(T * BEND - T / 2)), within(1e-9));
  }

  @Test
  void startingClampNeverBearsMoreThanHalfThePull() {
    for (PlanText plan : List.of(throatStart(), headStart(), startingKnot())) {
      Interval peak = ForceEstimate.of(plan.plan()).clampPeak().get("starting-1");
      assertThat(peak.high()).isLessThanOrEqualTo(T / 2 + 1e-9);
      assertThat(peak.low()).isGreaterThan(0);
    }
  }

  @Test
  void lettingGoCostsTheDrawback() {
    PlanText plan = headStart();
    Estimates e =
        ForceEstimate.of(
            plan.with(plan.lines().subList(0, plan.lines().indexOf("lace long R2"))).plan(),
            drawback(0.5));
    double length = SmallPlans.bed(plan.plan().bed().layout()).span(SpanId.of("R1")).lengthMm();
    assertThat(main(e, "R1")).isCloseTo(T - 0.5 * 4000 / length, within(1e-9));
  }

  @Test
  void knotTakesUpTheSlackStretch() {
    PlanText plan = headStart();
    Estimates before = first(plan, "knot short", plain());
    int n = plan.lines().indexOf("knot short");
    Estimates after = ForceEstimate.of(plan.with(plan.lines().subList(0, n + 2)).plan(), plain());
    var bed = plan.plan().bed();
    double length = bed.span(SpanId.of("L2")).lengthMm();
    double run =
        bed.position(bed.span(SpanId.of("L2")).from())
            .distanceTo(bed.position(bed.span(SpanId.of("L1")).from()));
    assertThat(main(before, "L2")).isCloseTo(T, within(1e-9));
    assertThat(main(after, "L2")).isCloseTo(T * (length - 15) / (length + run), within(1e-9));
  }

  @ParameterizedTest
  @MethodSource("sound")
  void everySpanIsTightAtTheEndAndNoneAboveItsPull(PlanText plan) {
    Estimates e = ForceEstimate.of(plan.plan());
    assertThat(e.spanTension()).hasSize(8);
    e.spanTension()
        .forEach(
            (span, t) -> {
              assertThat(t.low()).as("%s", span).isGreaterThan(0);
              assertThat(t.high()).as("%s", span).isLessThanOrEqualTo(T + 1e-9);
            });
    assertThat(e.clampPeak().keySet()).contains("machine-1", "machine-2", "starting-1");
    assertThat(e.clampPeak().values()).allMatch(i -> i.high() <= T + 1e-9);
    assertThat(e.hoopPeak().keySet()).containsExactly("along", "across", "imbalance");
    // Four mains squeeze the hoop along its axis; when all hang on, it is at most four pulls.
    assertThat(e.hoopPeak().get("along").high()).isBetween(3 * T, 4 * T + 1e-9);
    assertThat(e.hoopPeak().get("across").high()).isBetween(2.5 * T, 4 * T + 1e-9);
    // The lead is two mains at most.
    assertThat(e.hoopPeak().get("imbalance").high()).isLessThanOrEqualTo(2 * T + 1e-9);
  }

  @ParameterizedTest
  @MethodSource("sound")
  void narrowRangesLieWithinWideOnes(PlanText plan) {
    Estimates wide = ForceEstimate.of(plan.plan());
    Estimates narrow =
        ForceEstimate.of(
            plan.plan(),
            new ForceParameters(
                Interval.of(0.10),
                Interval.of(0.9),
                Interval.of(0.05),
                Interval.of(1),
                Interval.of(0.2),
                Interval.of(0.25),
                Interval.of(0.5),
                Interval.of(ForceParameters.of(plan.plan()).mainsStiffness().low()),
                Interval.of(ForceParameters.of(plan.plan()).crossesStiffness().low())));
    narrow
        .spanTension()
        .forEach(
            (span, t) -> {
              assertThat(t.low()).isGreaterThanOrEqualTo(wide.spanTension().get(span).low() - 1e-9);
              assertThat(t.high()).isLessThanOrEqualTo(wide.spanTension().get(span).high() + 1e-9);
            });
  }

  @ParameterizedTest
  @MethodSource("sound")
  void twiceThePullIsTwiceTheForceWithoutDrawback(PlanText plan) {
    PlanText twice =
        plan.with(
            org.hoopwright.bench.Job.builder()
                .mainsTension(org.hoopwright.units.Force.ofNewtons(2 * T))
                .build());
    Estimates one = ForceEstimate.of(plan.plan(), plain());
    Estimates two = ForceEstimate.of(twice.plan(), plain());
    one.spanTension()
        .forEach(
            (span, t) ->
                assertThat(two.spanTension().get(span).high())
                    .isCloseTo(2 * t.high(), within(1e-6)));
    one.clampPeak()
        .forEach(
            (clamp, t) ->
                assertThat(two.clampPeak().get(clamp).high())
                    .isCloseTo(2 * t.high(), within(1e-6)));
  }

  @ParameterizedTest
  @MethodSource("sound")
  void brokenPlansAreEstimatedToo(PlanText plan) {
    for (int i = 0; i < plan.lines().size(); i++) {
      List<String> less = new java.util.ArrayList<>(plan.lines());
      less.remove(i);
      Estimates e = ForceEstimate.of(plan.with(less).plan());
      assertThat(e.spanTension()).hasSize(8);
    }
  }

  @Test
  void sameInputSameNumbers() {
    assertThat(ForceEstimate.of(headStart().plan()))
        .isEqualTo(ForceEstimate.of(headStart().plan()));
  }
}
