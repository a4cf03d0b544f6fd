package org.hoopwright.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hoopwright.replay.SmallPlans.headStart;
import static org.hoopwright.replay.SmallPlans.startingClamp;
import static org.hoopwright.replay.SmallPlans.startingKnot;
import static org.hoopwright.replay.SmallPlans.throatStart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ReplayTest {

  static Stream<PlanText> sound() {
    return Stream.of(throatStart(), headStart(), startingKnot(), startingClamp());
  }

  @ParameterizedTest
  @MethodSource("sound")
  void soundPlansBreakNothing(PlanText plan) {
    assertThat(plan.breaches()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("sound")
  void everyLineIsNeededButLooksAndTrims(PlanText plan) {
    for (int i = 0; i < plan.lines().size(); i++) {
      String line = plan.lines().get(i);
      if (line.equals("check") || line.startsWith("trim")) {
        continue;
      }
      List<String> less = new ArrayList<>(plan.lines());
      less.remove(i);
      assertThat(plan.with(less).breaches()).as("without line %d: %s", i + 1, line).isNotEmpty();
    }
  }

  @Test
  void emptyPlanIsReportedAtItsEnd() {
    List<Breach> breaches = throatStart().with(List.of()).breaches();
    assertThat(breaches).extracting(Breach::step).containsOnly(1);
    assertThat(breaches)
        .extracting(Breach::invariant)
        .contains(Invariant.I8_END, Invariant.I10_ROUTE);
  }

  @Test
  void breachNamesItsStep() {
    PlanText plan = headStart().replace("pull R2 R2H", "pull R2 R2H =300");
    assertThat(plan.breaches())
        .containsExactly(
            new Breach(
                Invariant.I6_OWN_PULL,
                14,
                "R2 is pulled at 300.0 N, but its reference tension is 245.0 N."));
  }
}
