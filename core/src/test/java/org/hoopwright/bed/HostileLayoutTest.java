package org.hoopwright.bed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.check.Checker;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Findings;
import org.hoopwright.frame.Layout;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.HostileLayouts;
import org.junit.jupiter.api.Test;

/**
 * Whatever the builder lets through is answered with findings or a bed, never with an exception.
 */
class HostileLayoutTest {

  @Property(tries = 1000)
  void nothingThrows(@ForAll long seed) {
    Layout layout = HostileLayouts.of(Draw.from(seed));
    List<Finding> own = Checker.layout(layout);
    Assignment assignment = StatedAssignment.assign(layout);
    if (!Findings.hasErrors(own)) {
      assertThat(assignment.bed().isPresent())
          .isEqualTo(!Findings.hasErrors(assignment.findings()));
    } else if (Findings.hasErrors(assignment.findings())) {
      assertThat(assignment.bed()).isEmpty();
    }
    Assignment both = Checker.assign(layout, StatedAssignment::assign);
    assertThat(both.bed().isPresent()).isEqualTo(!Findings.hasErrors(both.findings()));
    assertThat(assignment.findings()).isEqualTo(Findings.sorted(assignment.findings()));
    HolePositions.of(layout);
    Assignment mirrored = StatedAssignment.assign(layout.mirrored());
    assertThat(mirrored.bed().map(b -> b.labels().mirrored()))
        .isEqualTo(assignment.bed().map(Bed::labels));
  }

  @Test
  void hostileLayoutsReachAlmostEveryFinding() {
    Set<FindingCode> seen = EnumSet.noneOf(FindingCode.class);
    int beds = 0;
    for (long seed = 0; seed < 2000; seed++) {
      Layout layout = HostileLayouts.of(Draw.from(seed));
      Checker.layout(layout).forEach(f -> seen.add(f.code()));
      Assignment assignment = Checker.bed(layout, StatedAssignment::assign);
      assignment.findings().forEach(f -> seen.add(f.code()));
      beds += assignment.bed().isPresent() ? 1 : 0;
    }
    assertThat(beds).as("some are sound after all").isGreaterThan(20);
    assertThat(seen)
        .contains(
            FindingCode.UNKNOWN_HOLE,
            FindingCode.HOLE_TWICE,
            FindingCode.HOLE_ORDER,
            FindingCode.HOLE_OFF_HOOP,
            FindingCode.HOLE_WRONG_SIDE,
            FindingCode.BORE_TOO_SMALL,
            FindingCode.NO_RUN_SIDES,
            FindingCode.HOOP_SHAPE,
            FindingCode.FRAME_BELOW_HOOP,
            FindingCode.MAINS_ODD,
            FindingCode.MAINS_TOO_FEW,
            FindingCode.MAINS_SKIP_MISSING,
            FindingCode.MAINS_NO_HOLE,
            FindingCode.MAIN_HOLE_BLOCKED,
            FindingCode.OFFSETS_COUNT,
            FindingCode.OFFSETS_ORDER,
            FindingCode.OFFSET_OUTSIDE,
            FindingCode.OFFSETS_WITHOUT_SKIP,
            FindingCode.CROSSES_TOO_FEW,
            FindingCode.CROSSES_NO_HOLE,
            FindingCode.CROSSES_HOLES_LEFT,
            FindingCode.CROSSES_FIRST,
            FindingCode.CROSSES_LAST,
            FindingCode.CROSS_HOLE_BLOCKED,
            FindingCode.SHARED_CHOICE,
            FindingCode.SHARED_UNUSED,
            FindingCode.HEAD_ZONE_HOLE,
            FindingCode.TENSION_RANGE,
            FindingCode.RULE_SIZE,
            FindingCode.NUMBER_RANGE,
            FindingCode.WRONG_VALUE);
  }
}
