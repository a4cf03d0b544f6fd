package org.hoopwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Labels;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.bench.Job;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Layout;
import org.hoopwright.route.RouteCheck;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.LayoutGenerator;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;

class DetourTest {

  private static Layout worn(String... blocked) {
    return Willowbank.hundred().noRun(List.of()).blocked(blocked).build();
  }

  private static Detour.Found found(Layout layout) {
    Detour detour = Hoopwright.detour(layout, Job.standard());
    assertThat(detour).isInstanceOf(Detour.Found.class);
    return (Detour.Found) detour;
  }

  @Test
  void aMainMovesIntoItsNeighbourWhichIsThenShared() {
    Detour.Found found = found(worn("L8H"));
    assertThat(found.moves())
        .containsExactly(
            new Detour.Move(
                SpanId.of("L7"),
                List.of(HoleId.of("L8H"), HoleId.of("L8T")),
                List.of(HoleId.of("L7H"), HoleId.of("L8T"))));
    assertThat(found.shared()).containsExactly(HoleId.of("L7H"));
    assertThat(found.doubtful()).containsExactly(HoleId.of("L7H"));
    // Main 7 is 8.8 mm nearer the axis at the head: hole 7H is at 76.8 mm, hole 8H at 85.6.
    assertThat(found.skewMm()).isBetween(8.7, 8.9);
    assertThat(found.toWords())
        .contains("L7 moves from L8H to L7H")
        .contains("L7H takes two strings")
        .contains("First look whether L7H can take two strings");
  }

  @Test
  void aHoleThatIsKnownToTakeTwoIsPreferred() {
    Layout layout = worn("L8H").toBuilder().bore(Map.of(HoleRef.of("L9H"), 2)).build();
    Detour.Found found = found(layout);
    assertThat(found.shared()).containsExactly(HoleId.of("L9H"));
    assertThat(found.doubtful()).isEmpty();
  }

  @Test
  void whatIsNotNeededIsSaid() {
    assertThat(Hoopwright.detour(worn(), Job.standard())).isInstanceOf(Detour.NotNeeded.class);
    Layout open = worn("L8H").toBuilder().mainsSkip(Optional.empty()).build();
    assertThat(Hoopwright.detour(open, Job.standard())).isInstanceOf(Detour.NoPattern.class);
  }

  @Test
  void withoutAWayRoundTheReasonIsGiven() {
    // The stretch that no run may pass forbids every way that shifts the inner mains.
    Layout layout = Willowbank.hundred().blocked("L3T").build();
    Detour detour = Hoopwright.detour(layout, Job.standard());
    assertThat(detour).isInstanceOf(Detour.None.class);
    assertThat(((Detour.None) detour).why()).contains("No run may pass from 5T to 6T");
    assertThat(((Detour.None) detour).proven()).isTrue();
  }

  @Test
  void narrowBoresLeaveNoWay() {
    Layout small = Willowbank.teaching().tieOff().blocked("L3H").build();
    Map<HoleRef, Integer> bore = new java.util.LinkedHashMap<>();
    for (String name : List.of("1H", "2H", "3H", "4H", "1T", "2T", "3T", "4T")) {
      bore.put(HoleRef.of(name), 1);
    }
    Detour detour = Hoopwright.detour(small.toBuilder().bore(bore).build(), Job.standard());
    assertThat(detour).isInstanceOf(Detour.None.class);
    assertThat(((Detour.None) detour).why())
        .contains("With L3H blocked, no other hole can take its string");
  }

  @Test
  void checkOffersTheWayRound() {
    List<Finding> findings = Hoopwright.check(worn("L8H"));
    assertThat(findings.stream().map(Finding::code))
        .contains(FindingCode.MAIN_HOLE_BLOCKED, FindingCode.DETOUR);
    Finding detour =
        findings.stream().filter(f -> f.code() == FindingCode.DETOUR).findFirst().orElseThrow();
    assertThat(detour.fix()).contains("holes.shared [\"L7H\"]");
    assertThat(
            Hoopwright.check(Willowbank.hundred().blocked("L3T").build()).stream()
                .map(Finding::code))
        .contains(FindingCode.DETOUR_NONE);
  }

  @Test
  void criticalHolesAreThoseWithoutAWayRound() {
    Layout layout = Willowbank.hundred().build();
    List<HoleId> critical = Hoopwright.criticalHoles(layout, Job.standard());
    assertThat(critical.stream().map(HoleId::toString))
        .containsExactly("L5T", "L4T", "L3T", "L2T", "L1T");
  }

  /**
   * Whatever hole fails: the way round avoids it, is a route by the independent check, and its
   * layout plans as it stands.
   */
  @Property(tries = 25)
  void everyWayRoundHolds(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    Layout layout =
        LayoutGenerator.layout(
            draw,
            draw.between(4, 8),
            draw.between(6, 16),
            Set.of(LayoutGenerator.Feature.SKIPS, LayoutGenerator.Feature.SHARED));
    Bed bed = StatedAssignment.assign(layout).bed().orElseThrow();
    HoleId hole = draw.oneOf(List.copyOf(bed.positions().keySet()));
    Layout worn = layout.toBuilder().blocked(List.of(HoleRef.of(hole))).build();
    Optional<Detour.Found> detour = Hoopwright.detour(worn, Job.standard()).found();
    if (detour.isEmpty()) {
      return;
    }
    Detour.Found found = detour.get();
    assertThat(found.bed().spansAt(hole)).isEmpty();
    assertThat(RouteCheck.check(found.bed(), found.route(), RouteRequest.defaults())).isEmpty();
    Labels again = StatedAssignment.assign(found.bed().layout()).bed().orElseThrow().labels();
    assertThat(again).isEqualTo(found.bed().labels());
    for (Span span : bed.spans()) {
      Span now = found.bed().span(span.id());
      boolean moved = !now.from().equals(span.from()) || !now.to().equals(span.to());
      assertThat(found.moves().stream().anyMatch(m -> m.span().equals(span.id()))).isEqualTo(moved);
    }
  }

  /** On a mirrored frame the mirrored hole has the mirrored way round. */
  @Property(tries = 10)
  void aMirroredFrameHasTheMirroredWayRound(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    Bed bed = StatedAssignment.assign(worn()).bed().orElseThrow();
    HoleId hole = draw.oneOf(List.copyOf(bed.positions().keySet()));
    Labels one = found(worn(hole.toString())).bed().labels();
    Labels other = found(worn(hole.toString()).mirrored()).bed().labels();
    assertThat(other.mirrored()).isEqualTo(one);
  }
}
