package org.hoopwright.bed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hoopwright.testing.Willowbank.both;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.hoopwright.check.Checker;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Place;
import org.hoopwright.finding.Places;
import org.hoopwright.finding.Severity;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutBuilder;
import org.hoopwright.geometry.Side;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class StatedAssignmentTest {

  private static List<String> codes(Assignment assignment) {
    return assignment.findings().stream()
        .map(f -> f.code().code() + " " + f.pointer() + " " + f.about())
        .toList();
  }

  private static Bed bed(LayoutBuilder builder) {
    Assignment assignment = StatedAssignment.assign(builder.build());
    return assignment.bed().orElseThrow(() -> new AssertionError(assignment.findings().toString()));
  }

  private static String heads(Bed bed, Side side) {
    return String.join(" ", bed.mains(side).stream().map(s -> s.from().toString()).toList());
  }

  private static String crosses(Bed bed, Side side) {
    return String.join(
        " ",
        bed.crosses().stream()
            .map(s -> (side == Side.LEFT ? s.from() : s.to()).toString())
            .toList());
  }

  @Test
  void exampleFrame() {
    Assignment assignment = StatedAssignment.assign(Willowbank.hundred().build());
    assertThat(assignment.findings()).isEmpty();
    Bed bed = assignment.bed().orElseThrow();
    assertThat(heads(bed, Side.LEFT)).isEqualTo("L1H L2H L3H L4H L5H L6H L8H L10H");
    assertThat(heads(bed, Side.RIGHT)).isEqualTo("R1H R2H R3H R4H R5H R6H R8H R10H");
    assertThat(bed.mains(Side.LEFT))
        .extracting(s -> s.to().toString())
        .containsExactly("L1T", "L2T", "L3T", "L4T", "L5T", "L6T", "L8T", "L10T");
    assertThat(crosses(bed, Side.LEFT))
        .isEqualTo(
            "L7H L9H L11H L12H L13H L14H L15H L16H L17H L18H L17T L16T L15T L14T L13T L12T L11T L9T L7T");
    assertThat(bed.crossCount()).isEqualTo(19);
    assertThat(bed.headZone(Side.RIGHT)).isEqualTo(HoleId.of("R10H"));
  }

  @Test
  void teachingFrame() {
    Assignment assignment = StatedAssignment.assign(Willowbank.teaching().build());
    assertThat(assignment.findings()).isEmpty();
    Bed bed = assignment.bed().orElseThrow();
    assertThat(heads(bed, Side.RIGHT)).isEqualTo("R1H R2H");
    assertThat(crosses(bed, Side.RIGHT)).isEqualTo("R3H R4H R4T R3T");
    assertThat(bed.symmetric()).isTrue();
  }

  @Test
  void sidesAreReadOnTheirOwn() {
    // Left has one hole more at the head and skips other holes than right.
    Bed bed =
        bed(
            Willowbank.teaching()
                .holes(new EachSide<>(5, 4), EachSide.both(4))
                .mainsSkip("L1H")
                .crossesSkip("L5H"));
    assertThat(heads(bed, Side.LEFT)).isEqualTo("L2H L3H");
    assertThat(heads(bed, Side.RIGHT)).isEqualTo("R1H R2H");
    assertThat(crosses(bed, Side.LEFT)).isEqualTo("L1H L4H L4T L3T");
    assertThat(bed.symmetric()).isFalse();
  }

  @Test
  void crossesStartAtFirst() {
    Bed bed = bed(Willowbank.teaching().crosses(3).crossesFirst(both("4H")));
    assertThat(crosses(bed, Side.LEFT)).isEqualTo("L4H L4T L3T");
  }

  @Test
  void aNeededSharedHoleCarriesTwo() {
    Assignment assignment =
        StatedAssignment.assign(Willowbank.teaching().crosses(5).shared("2T").build());
    assertThat(assignment.findings()).isEmpty();
    Bed bed = assignment.bed().orElseThrow();
    assertThat(crosses(bed, Side.LEFT)).isEqualTo("L3H L4H L4T L3T L2T");
    assertThat(bed.labels().left().get(6)).isEqualTo(HoleLabel.BOTH);
    assertThat(bed.meets(SpanId.of("L2"), SpanId.of("X5"))).as("not in a shared hole").isFalse();
    assertThat(bed.meets(SpanId.of("L1"), SpanId.of("X5"))).isTrue();
  }

  @Test
  void firstMayBeASharedHole() {
    LayoutBuilder builder =
        Willowbank.teaching().crosses(5).shared("2H", "2T").crossesFirst(both("2H"));
    Assignment assignment = StatedAssignment.assign(builder.build());
    assertThat(crosses(assignment.bed().orElseThrow(), Side.LEFT)).isEqualTo("L2H L3H L4H L4T L3T");
  }

  @Test
  void lastSettlesAChoice() {
    LayoutBuilder builder = Willowbank.teaching().crosses(5).shared("2H", "2T");
    Assignment head = StatedAssignment.assign(builder.crossesLast(both("3T")).build());
    assertThat(crosses(head.bed().orElseThrow(), Side.LEFT)).isEqualTo("L2H L3H L4H L4T L3T");
    Assignment throat = StatedAssignment.assign(builder.crossesLast(both("2T")).build());
    assertThat(crosses(throat.bed().orElseThrow(), Side.LEFT)).isEqualTo("L3H L4H L4T L3T L2T");
  }

  @Test
  void aTieIsSaidAndTheHeadComesFirst() {
    // Head and throat of this frame are mirror images, so both choices cost the same.
    Assignment assignment =
        StatedAssignment.assign(Willowbank.teaching().crosses(5).shared("2H", "2T").build());
    assertThat(crosses(assignment.bed().orElseThrow(), Side.LEFT)).isEqualTo("L2H L3H L4H L4T L3T");
    assertThat(assignment.findings().stream().map(Finding::message))
        .contains(
            "Of the shared holes L2H, L2T, R2H and R2T the crosses need 2, and L2H and R2H were taken; L2T and R2T would do as well.");
  }

  @Test
  void aBetterChoiceSaysByHowMuch() {
    Assignment assignment =
        StatedAssignment.assign(Willowbank.teaching().crosses(5).shared("1H", "2H").build());
    // Crosses lie 22 to 24 mm apart; 1H is 24 mm above 3H and 2H only 16 mm.
    assertThat(crosses(assignment.bed().orElseThrow(), Side.RIGHT))
        .isEqualTo("R1H R3H R4H R4T R3T");
    Finding choice =
        assignment.findings().stream()
            .filter(f -> f.code() == FindingCode.SHARED_CHOICE)
            .findFirst()
            .orElseThrow();
    assertThat(choice.severity()).isEqualTo(Severity.WARNING);
    assertThat(choice.pointer()).isEqualTo("/holes/shared");
    assertThat(choice.about()).containsExactly("L1H", "R1H", "L2H", "R2H");
    assertThat(choice.message()).matches(".*L2H and R2H would cost \\d+\\.\\d mm more .*");
  }

  static List<Arguments> wrong() {
    List<Arguments> a = new ArrayList<>();
    add(a, b -> b.mainsSkip(Optional.empty()), "mains-skip-missing /mains/skip []");
    add(
        a,
        b -> b.mains(10),
        "mains-no-hole /mains/count []",
        "mains-no-hole /mains/count []",
        "mains-no-hole /mains/count []",
        "mains-no-hole /mains/count []");
    add(
        a,
        b -> b.blocked("4H", "R2H"),
        "main-hole-blocked /holes/blocked/1 [R2H, R2]",
        "crosses-no-hole /crosses/count [L4H]",
        "crosses-no-hole /crosses/count [R4H]");
    add(
        a,
        b -> b.crosses(5),
        "crosses-no-hole /crosses/count []",
        "crosses-no-hole /crosses/count []");
    add(
        a,
        b -> b.holes(new EachSide<>(5, 4), EachSide.both(4)).crosses(5),
        "crosses-no-hole /crosses/count []");
    add(a, b -> b.crosses(3));
    add(a, b -> b.crosses(3).crossesSkip("4T"));
    add(a, b -> b.crosses(3).blocked("4T"));
    add(
        a,
        b -> b.crossesFirst(both("2H")),
        "crosses-first /crosses/first [L2H, X1]",
        "crosses-first /crosses/first [R2H, X1]");
    add(
        a,
        b -> b.crossesFirst(new EachSide<>(HoleId.of("L3H"), HoleId.of("R2H"))),
        "crosses-first /crosses/first/1 [R2H, X1]");
    add(
        a,
        b -> b.blocked("3H").crosses(3).crossesFirst(both("3H")),
        "crosses-first /crosses/first [L3H, X1]",
        "crosses-first /crosses/first [R3H, X1]");
    add(
        a,
        b -> b.crossesSkip("3H").crosses(3).crossesFirst(both("3H")),
        "crosses-first /crosses/first [L3H, X1]",
        "crosses-first /crosses/first [R3H, X1]");
    add(
        a,
        b -> b.crossesFirst(both("4H")),
        "crosses-no-hole /crosses/count []",
        "crosses-no-hole /crosses/count []");
    add(
        a,
        b -> b.crossesLast(both("4T")),
        "crosses-last /crosses/last [X4, L3T, L4T]",
        "crosses-last /crosses/last [X4, R3T, R4T]");
    add(
        a,
        b -> b.crosses(5).shared("1H", "2H"),
        "shared-choice /holes/shared [L1H, R1H, L2H, R2H]");
    add(
        a,
        b -> b.crosses(5).shared("2T").bore(Map.of(HoleRef.of("L2T"), 1)),
        "bore-too-small /holes/bore/L2T [L2T]",
        "bore-too-small /holes/bore/L2T [L2T]");
    add(
        a,
        b -> b.bore(Map.of(HoleRef.of("R3T"), 0)),
        "number-range /holes/bore/R3T [R3T]",
        "bore-too-small /holes/bore/R3T [R3T]");
    add(a, b -> b.hoop(new Hoop.Superellipse(-1, 100, 2)), "hoop-shape /hoop/length []");
    add(a, b -> b.mains(5), "mains-odd /mains/count []");
    add(
        a,
        b -> b.mains(5).blocked("1H").crosses(0),
        "mains-odd /mains/count []",
        "crosses-too-few /crosses/count []");
    add(a, b -> b.tieOff("9H"), "unknown-hole /holes/tieOff/0 [L9H, R9H]");
    return a;
  }

  private static void add(
      List<Arguments> all, UnaryOperator<LayoutBuilder> change, String... expected) {
    all.add(Arguments.of(all.size(), change, List.of(expected)));
  }

  @ParameterizedTest(name = "{0}: {2}")
  @MethodSource("wrong")
  void eachFaultHasItsFinding(
      int index, UnaryOperator<LayoutBuilder> change, List<String> expected) {
    Layout layout = change.apply(Willowbank.teaching()).build();
    Assignment assignment = Checker.assign(layout, StatedAssignment::assign);
    assertThat(codes(assignment))
        .as("case %d", index)
        .containsExactlyInAnyOrderElementsOf(expected);
    boolean error = assignment.findings().stream().anyMatch(f -> f.severity() == Severity.ERROR);
    assertThat(assignment.bed().isPresent()).isEqualTo(!error);
    assertThat(Checker.assign(layout, StatedAssignment::assign).findings())
        .as("twice the same")
        .isEqualTo(assignment.findings());
  }

  @Test
  void aBlockedMainNamesTheDetour() {
    Place place = new Place(4, 9, 4, 14);
    Layout layout =
        Willowbank.teaching()
            .blocked("R2H")
            .places(Places.of(Map.of("/holes/blocked/0", place)))
            .build();
    assertThat(StatedAssignment.assign(layout).findings())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.message()).isEqualTo("Main R2 needs hole R2H, which is blocked.");
              assertThat(f.place()).contains(place);
              assertThat(f.fix()).contains("detour").contains("holes.shared");
            });
  }

  @Test
  void aSharedHoleLetsABlockedMainBeStatedAround() {
    // 2H is filled; 3H takes main 2 and, being shared, keeps its cross.
    Bed bed = bed(Willowbank.teaching().mainsSkip("2H").blocked("2H").shared("3H"));
    assertThat(heads(bed, Side.LEFT)).isEqualTo("L1H L3H");
    assertThat(crosses(bed, Side.LEFT)).isEqualTo("L3H L4H L4T L3T");
  }
}
