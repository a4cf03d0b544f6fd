package org.hoopwright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.End;
import org.hoopwright.frame.Layout;
import org.hoopwright.material.Gauge;
import org.hoopwright.material.Material;
import org.hoopwright.material.StringSpec;
import org.hoopwright.replay.Replay;
import org.hoopwright.route.Route;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteSearch;
import org.hoopwright.testing.Willowbank;
import org.hoopwright.units.Force;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Starts are chosen by bench and frame, and can be asked for. */
class StartChoiceTest {

  private static final StringSpec STRING = new StringSpec(Gauge.G16, Material.NYLON);

  private static BenchPlan plan(End mainsStart, Job job) {
    Layout layout = Willowbank.teaching().mainsStart(mainsStart).build();
    Bed bed = StatedAssignment.assign(layout).bed().orElseThrow();
    Route route = RouteSearch.search(bed, RouteRequest.defaults()).ranked().get(0).route();
    BenchPlan plan = Planner.plan(bed, route, job).orElseThrow();
    assertThat(Replay.check(plan)).isEmpty();
    return plan;
  }

  private static Stream<FindingCode> codes(BenchPlan plan) {
    return plan.findings().stream().map(Finding::code);
  }

  private static Job withStartingClampThat(boolean holds, double newtons) {
    BenchTest test = new BenchTest.Pull(STRING, Force.ofNewtons(newtons), JawDepth.DEEP, holds);
    return Job.builder()
        .bench(Bench.builder().startingClampTests(List.of(test)).build())
        .mainsTension(Force.ofNewtons(240))
        .string(STRING)
        .build();
  }

  @Test
  void theClampIsAtTheThroatWhereverTheMainsStart() {
    Start throat = plan(End.THROAT, Job.standard()).start().orElseThrow();
    Start head = plan(End.HEAD, Job.standard()).start().orElseThrow();

    assertThat(throat.anchor().number()).isEqualTo(2);
    assertThat(head.anchor().number()).isEqualTo(1);
    assertThat(throat.clampOutside().orElseThrow().end()).isEqualTo(End.THROAT);
    assertThat(head.clampOutside().orElseThrow().end()).isEqualTo(End.THROAT);
  }

  @ParameterizedTest
  @EnumSource(End.class)
  void anAnchorMainThatPutsTheClampInTheHeadZoneIsWarnedOf(End mainsStart) {
    int other = mainsStart == End.THROAT ? 1 : 2;
    BenchPlan plan = plan(mainsStart, Job.builder().anchorMain(other).build());

    assertThat(plan.start().orElseThrow().anchor().number()).isEqualTo(other);
    assertThat(plan.start().orElseThrow().clampOutside().orElseThrow().end()).isEqualTo(End.HEAD);
    assertThat(codes(plan)).contains(FindingCode.START_CLAMP_HEAD_ZONE);
    BenchPlan usual = plan(mainsStart, Job.builder().anchorMain(3 - other).build());
    assertThat(codes(usual)).doesNotContain(FindingCode.START_CLAMP_HEAD_ZONE);
  }

  @Test
  void withoutAStartingClampBothMachineClampsStart() {
    Job job = Job.builder().bench(Bench.builder().startingClamps(0).build()).build();
    assertThat(plan(End.THROAT, job).start().orElseThrow().method())
        .isEqualTo(StartMethod.DOUBLED_CLAMP);
  }

  // Half of a shared pull is what the starting clamp must hold.
  @Test
  void aStartingClampThatLetsGoOfHalfThePullIsNotUsed() {
    BenchPlan slips = plan(End.THROAT, withStartingClampThat(false, 120));
    assertThat(slips.start().orElseThrow().method()).isEqualTo(StartMethod.DOUBLED_CLAMP);
    assertThat(codes(slips)).contains(FindingCode.START_CLAMP_SLIPS);
    for (Job fine :
        new Job[] {withStartingClampThat(false, 121), withStartingClampThat(true, 50)}) {
      BenchPlan plan = plan(End.THROAT, fine);
      assertThat(plan.start().orElseThrow().method()).isEqualTo(StartMethod.ANCHOR_MAIN);
      assertThat(codes(plan)).doesNotContain(FindingCode.START_CLAMP_SLIPS);
    }
  }

  @Test
  void eachStartCanBeAskedFor() {
    for (StartMethod method : StartMethod.values()) {
      for (End end : End.values()) {
        BenchPlan plan = plan(end, Job.builder().startMethod(method).build());
        assertThat(plan.start().orElseThrow().method()).isEqualTo(method);
        assertThat(plan.start().orElseThrow().mark().isPresent())
            .isEqualTo(method == StartMethod.ANCHOR_MAIN);
      }
    }
    assertThatThrownBy(() -> Job.builder().startMethod(StartMethod.HAND_HELD).anchorMain(2).build())
        .hasMessageContaining("must be 1 with the start hand-held");
    assertThatThrownBy(() -> Job.builder().anchorMain(3)).hasMessageContaining("must be 1 or 2");
    assertThat(Job.standard().anchorMain()).isEqualTo(Optional.empty());
  }
}
