package org.hoopwright.bed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.junit.jupiter.api.Test;

class StatedAssignmentTest {

  private static final Layout WILLOWBANK =
      Layout.builder("Willowbank 100")
          .hoop(new Hoop.Superellipse(330, 248, 2.1))
          .holes(18, 17)
          .tieOff("5H", "6T", "8T", "12T")
          .bore(Map.of(HoleRef.of("L8T"), 3))
          .mains(16)
          .mainsSkip("7H", "9H", "7T", "9T")
          .crosses(19)
          .crossesFirst(new EachSide<>(HoleId.of("L7H"), HoleId.of("R7H")))
          .crossesLast(new EachSide<>(HoleId.of("L7T"), HoleId.of("R7T")))
          .build();

  @Test
  void exampleLayoutTakesItsHoles() {
    Assignment assignment = StatedAssignment.assign(WILLOWBANK);
    assertThat(assignment.findings()).isEmpty();
    Bed bed = assignment.bed().orElseThrow();
    assertThat(bed.mains(Side.LEFT).stream().map(s -> s.from().toString()))
        .isEqualTo(List.of("L1H", "L2H", "L3H", "L4H", "L5H", "L6H", "L8H", "L10H"));
    assertThat(bed.crosses()).hasSize(19);
    assertThat(bed.crosses().get(0).from()).isEqualTo(HoleId.of("L7H"));
    assertThat(bed.crosses().get(18).to()).isEqualTo(HoleId.of("R7T"));
  }

  @Test
  void teachingFrameIsAssigned() {
    Layout layout =
        Layout.builder("Willowbank teaching frame")
            .hoop(new Hoop.Superellipse(120, 100, 2))
            .holes(4, 4)
            .tieOff("1H", "1T")
            .mains(4)
            .mainsSkip()
            .crosses(4)
            .build();
    assertThat(StatedAssignment.assign(layout).findings()).isEmpty();
    assertThat(StatedAssignment.assign(layout).bed()).isPresent();
  }
}
