package org.hoopwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.Bench;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.StartMethod;
import org.hoopwright.bench.Step;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.hoopwright.material.Gauge;
import org.hoopwright.material.Material;
import org.hoopwright.material.StringSpec;
import org.hoopwright.replay.Replay;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteResult;
import org.hoopwright.testing.LayoutArbitraries;
import org.hoopwright.testing.Willowbank;
import org.hoopwright.units.Force;
import org.hoopwright.units.ForceUnit;
import org.junit.jupiter.api.Test;

class HoopwrightTest {

  private static Plan planned(Layout layout, Job job) {
    return Hoopwright.plan(layout, job).plan().orElseThrow();
  }

  @Test
  void planIsProvenAndRepeatable() {
    Layout layout = Willowbank.hundred().build();
    Plan plan = planned(layout, Job.standard());
    assertThat(Replay.check(plan.bench())).isEmpty();
    assertThat(planned(layout, Job.standard()).bench().steps()).isEqualTo(plan.bench().steps());
    assertThat(plan.cautions()).first().asString().contains("maker");
  }

  @Test
  void startAtTheThroatHoldsMainTwoAndAtTheHeadMainOne() {
    for (End end : End.values()) {
      Layout layout = Willowbank.hundred().noRun(List.of()).mainsStart(end).build();
      BenchPlan bench = planned(layout, Job.standard()).bench();
      assertThat(bench.start().orElseThrow().method()).isEqualTo(StartMethod.ANCHOR_MAIN);
      assertThat(bench.start().orElseThrow().anchor().number())
          .isEqualTo(end == End.THROAT ? 2 : 1);
      // The starting clamp is outside at the throat, never in the head zone, where strings shear
      // most (common practice, no source).
      HoleId outside = bench.start().orElseThrow().clampOutside().orElseThrow();
      assertThat(outside.end()).isEqualTo(End.THROAT);
      assertThat(bench.bed().inHeadZone(outside)).isFalse();
    }
  }

  @Test
  void benchWithoutStartingClampStartsOtherwise() {
    Layout layout = Willowbank.hundred().build();
    Bench none = Bench.builder().startingClamps(0).build();
    assertThat(
            planned(layout, Job.builder().bench(none).build())
                .bench()
                .start()
                .orElseThrow()
                .method())
        .isEqualTo(StartMethod.DOUBLED_CLAMP);
    Job byHand = Job.builder().bench(none).startMethod(StartMethod.HAND_HELD).build();
    assertThat(planned(layout, byHand).bench().start().orElseThrow().method())
        .isEqualTo(StartMethod.HAND_HELD);
    assertThatThrownBy(() -> Job.builder().bench(none).startMethod(StartMethod.ANCHOR_MAIN).build())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("needs a starting clamp")
        .hasMessageContaining("Maybe");
  }

  @Test
  void noRouteTellsWhy() {
    Outcome none = Hoopwright.plan(Willowbank.hundred().tieOff().build(), Job.standard());
    assertThat(none).isInstanceOf(Outcome.NoRoute.class);
    Finding why = none.findings().get(0);
    assertThat(why.code()).isEqualTo(FindingCode.NO_ROUTE);
    assertThat(why.pointer()).isEqualTo("/holes/tieOff");
    assertThat(why.message()).contains("names no tie-off hole");
    assertThat(why.fix()).contains("holes.tieOff");
  }

  @Test
  void badLayoutIsNotPlanned() {
    Outcome bad = Hoopwright.plan(Willowbank.hundred().mains(15).build(), Job.standard());
    assertThat(bad).isInstanceOf(Outcome.BadLayout.class);
    assertThat(bad.findings()).extracting(Finding::code).contains(FindingCode.MAINS_ODD);
  }

  @Test
  void limitIsSaid() {
    Job job = Job.builder().routes(RouteRequest.builder().maxNodes(3).build()).build();
    Outcome outcome = Hoopwright.plan(Willowbank.hundred().build(), job);
    assertThat(outcome).isInstanceOf(Outcome.GaveUp.class);
    assertThat(((Outcome.GaveUp) outcome).routes().status())
        .isEqualTo(RouteResult.Status.LIMIT_REACHED);
  }

  @Test
  void hybridTakesTwoPieces() {
    StringSpec firm = new StringSpec(Gauge.G17, Material.POLYESTER);
    StringSpec soft = new StringSpec(Gauge.G16, Material.NATURAL_GUT);
    Plan plan = planned(Willowbank.hundred().build(), Job.builder().strings(firm, soft).build());
    assertThat(plan.bench().route().pieces()).hasSize(2);
    assertThat(plan.bench().route().pieces().get(0).ends())
        .allSatisfy(e -> assertThat(e.passes()).allMatch(p -> p.span().isMain()));
    Job onePiece =
        Job.builder().strings(firm, soft).routes(RouteRequest.builder().pieces(1).build()).build();
    assertThatThrownBy(() -> Hoopwright.plan(Willowbank.hundred().build(), onePiece))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("must be 2");
  }

  @Test
  void pullAboveTheMakersLimitIsWarnedOf() {
    Job hard = Job.builder().mainsTension(Force.of(61, ForceUnit.POUND_FORCE)).build();
    assertThat(planned(Willowbank.hundred().build(), hard).findings())
        .extracting(Finding::code)
        .contains(FindingCode.TENSION_ABOVE_MAX);
  }

  @Test
  void departureFromTheMakersWordIsWarnedOf() {
    Layout upwards = Willowbank.hundred().direction(Direction.THROAT_TO_HEAD).build();
    assertThat(planned(upwards, Job.standard()).findings())
        .extracting(Finding::code)
        .doesNotContain(FindingCode.MAKER_DEPARTURE);
    Job down =
        Job.builder()
            .routes(RouteRequest.builder().direction(Direction.HEAD_TO_THROAT).build())
            .build();
    assertThat(planned(upwards, down).findings())
        .extracting(Finding::code)
        .contains(FindingCode.MAKER_DEPARTURE);
  }

  /** With the sides fixed and mirrored the plan mirrors too, its weave inverted. */
  @Property(tries = 40)
  @Domain(LayoutArbitraries.class)
  void mirroredLayoutHasTheMirroredPlan(@ForAll Layout drawn) {
    Layout layout = drawn.toBuilder().shortSide(Side.RIGHT).startSide(Side.RIGHT).build();
    Optional<Plan> plan = Hoopwright.plan(layout, Job.standard()).plan();
    Optional<Plan> mirror = Hoopwright.plan(layout.mirrored(), Job.standard()).plan();
    assertThat(mirror.isPresent()).isEqualTo(plan.isPresent());
    if (plan.isEmpty()) {
      return;
    }
    List<String> steps = plan.get().bench().steps().stream().map(s -> text(s, true)).toList();
    assertThat(mirror.get().bench().steps().stream().map(s -> text(s, false)).toList())
        .isEqualTo(steps);
    for (SpanId cross : plan.get().bench().bed().crosses().stream().map(s -> s.id()).toList()) {
      for (SpanId main : plan.get().bench().bed().mainsLeftToRight()) {
        assertThat(mirror.get().bench().bed().crossOver(cross, main.mirrored()))
            .isNotEqualTo(plan.get().bench().bed().crossOver(cross, main));
      }
    }
  }

  private static String text(Step step, boolean mirrored) {
    if (step instanceof Step.Lace s) {
      return "lace " + at(s.span(), mirrored) + at(s.from(), mirrored) + at(s.to(), mirrored);
    }
    if (step instanceof Step.Weave s) {
      return "weave " + at(s.span(), mirrored) + at(s.from(), mirrored) + at(s.to(), mirrored);
    }
    if (step instanceof Step.Pull s) {
      return "pull "
          + s.tails().stream().map(t -> at(t, mirrored)).toList()
          + s.at().stream().map(t -> at(t, mirrored)).toList()
          + s.tension();
    }
    if (step instanceof Step.SetClamp s) {
      return "set "
          + s.clamp()
          + at(s.span(), mirrored)
          + at(s.near(), mirrored)
          + s.side()
          + Math.round(s.distanceMm());
    }
    if (step instanceof Step.TieKnot s) {
      return "knot " + at(s.hole(), mirrored) + at(s.anchor(), mirrored) + s.kind() + s.end();
    }
    return step.word();
  }

  private static String at(SpanId span, boolean mirrored) {
    return " " + (mirrored ? span.mirrored() : span);
  }

  private static String at(HoleId hole, boolean mirrored) {
    return " " + (mirrored ? hole.mirrored() : hole);
  }
}
