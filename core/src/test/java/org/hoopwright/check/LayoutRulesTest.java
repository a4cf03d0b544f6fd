package org.hoopwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hoopwright.testing.Willowbank.both;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
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
import org.hoopwright.frame.StringOffsets;
import org.hoopwright.geometry.Point;
import org.hoopwright.testing.Willowbank;
import org.hoopwright.units.ForceUnit;
import org.hoopwright.units.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The rules on what a layout states, but for those that judge what is usual. */
class LayoutRulesTest {

  private static final Set<FindingCode> MILD =
      Set.of(FindingCode.HOLE_TWICE, FindingCode.HOOP_OFF_CENTRE, FindingCode.FRAME_BELOW_HOOP);

  /** Errors, and warnings of those kinds that are no judgement of what is usual. */
  private static List<Finding> check(Layout layout) {
    return Checker.layout(layout).stream()
        .filter(f -> f.severity() == Severity.ERROR || MILD.contains(f.code()))
        .toList();
  }

  private static List<String> check(LayoutBuilder builder) {
    List<Finding> findings = check(builder.build());
    assertThat(findings)
        .allSatisfy(
            f -> {
              assertThat(f.fix()).isNotBlank().endsWith(".");
              assertThat(f.message()).endsWith(".").doesNotContain("\n");
            });
    return findings.stream()
        .map(f -> f.code().code() + " " + f.pointer() + " " + f.about())
        .toList();
  }

  @Test
  void soundFramesHaveNoFindings() {
    assertThat(check(Willowbank.hundred())).isEmpty();
    assertThat(check(Willowbank.teaching())).isEmpty();
  }

  static List<Arguments> oneWrong() {
    List<Arguments> a = new ArrayList<>();
    // Counts.
    add(a, b -> b.holes(501, 17), "number-range /holes/head []");
    add(
        a,
        b -> b.holes(new EachSide<>(18, 501), EachSide.both(17)),
        "number-range /holes/head/right []");
    add(
        a,
        b -> b.holes(EachSide.both(18), new EachSide<>(17, 0)).tieOff().mainsSkip("7H"),
        "number-range /holes/throat/right []",
        "unknown-hole /holes/noRun/0/0 [R5T]",
        "unknown-hole /holes/noRun/0/1 [R6T]",
        "unknown-hole /crosses/last [R7T]");
    add(a, b -> b.mains(15), "mains-odd /mains/count []");
    add(a, b -> b.mains(2), "mains-too-few /mains/count []");
    add(a, b -> b.mains(-4), "mains-too-few /mains/count []");
    add(a, b -> b.mains(1002), "number-range /mains/count []");
    add(a, b -> b.crosses(1), "crosses-too-few /crosses/count []");
    add(a, b -> b.crosses(1001), "number-range /crosses/count []");
    // Names of holes.
    add(a, b -> b.tieOff("5H", "18T"), "unknown-hole /holes/tieOff/1 [L18T, R18T]");
    add(a, b -> b.shared("R19H"), "unknown-hole /holes/shared/0 [R19H]");
    add(a, b -> b.blocked("11H", "12H", "L18T"), "unknown-hole /holes/blocked/2 [L18T]");
    add(a, b -> b.bore(Map.of(HoleRef.of("19H"), 2)), "unknown-hole /holes/bore/19H [L19H, R19H]");
    add(
        a,
        b -> b.at(Map.of(HoleRef.of("R20T"), new Point(1, 1))),
        "unknown-hole /holes/at/R20T [R20T]");
    add(
        a,
        b -> b.noRun(List.of()).noRun("5T", "20T"),
        "unknown-hole /holes/noRun/0/1 [L20T, R20T]");
    add(
        a,
        b -> b.mainsSkip("7H", "9H", "7T", "9T", "30T"),
        "unknown-hole /mains/skip/4 [L30T, R30T]");
    add(a, b -> b.crossesSkip("L30H"), "unknown-hole /crosses/skip/0 [L30H]");
    add(a, b -> b.crossesFirst(both("40H")), "unknown-hole /crosses/first [L40H, R40H]");
    add(
        a,
        b -> b.crossesFirst(new EachSide<>(HoleId.of("L7H"), HoleId.of("R40H"))),
        "unknown-hole /crosses/first/1 [R40H]");
    add(a, b -> b.crossesLast(both("40T")), "unknown-hole /crosses/last [L40T, R40T]");
    add(a, b -> b.headZone(both("19H")), "unknown-hole /headZone [L19H, R19H]");
    add(
        a,
        b -> b.crossesFirst(new EachSide<>(HoleId.of("R7H"), HoleId.of("L7H"))),
        "crosses-first /crosses/first [R7H]",
        "crosses-first /crosses/first [L7H]");
    add(
        a,
        b -> b.crossesLast(new EachSide<>(HoleId.of("L7T"), HoleId.of("L7T"))),
        "crosses-last /crosses/last/1 [L7T]");
    add(a, b -> b.headZone(both("10T")), "head-zone-hole /headZone [L10T, R10T]");
    add(
        a,
        b -> b.headZone(new EachSide<>(HoleId.of("L10H"), HoleId.of("R10T"))),
        "head-zone-hole /headZone/1 [R10T]");
    add(a, b -> b.tieOff("5H", "6T", "L5H"), "hole-twice /holes/tieOff/2 [L5H]");
    add(a, b -> b.shared("8H", "8H"), "hole-twice /holes/shared/1 [L8H, R8H]");
    add(a, b -> b.blocked("L11H", "11H"), "hole-twice /holes/blocked/1 [L11H]");
    add(a, b -> b.mainsSkip("7H", "9H", "7H"), "hole-twice /mains/skip/2 [L7H, R7H]");
    add(a, b -> b.crossesSkip("11H", "R11H"), "hole-twice /crosses/skip/1 [R11H]");
    add(a, b -> b.bore(ordered("8T", 3, "R8T", 2)), "hole-twice /holes/bore/R8T [R8T]");
    add(
        a,
        b -> b.at(ordered("1H", new Point(5, 165), "L1H", new Point(-5, 165))),
        "hole-twice /holes/at/L1H [L1H]");
    // What is stated about single holes.
    add(a, b -> b.bore(Map.of(HoleRef.of("9T"), 0)), "number-range /holes/bore/9T [L9T, R9T]");
    add(a, b -> b.bore(Map.of(HoleRef.of("L9T"), 10)), "number-range /holes/bore/L9T [L9T]");
    add(a, b -> b.bore(Map.of(HoleRef.of("8T"), 1)), "bore-too-small /holes/bore/8T [L8T, R8T]");
    add(
        a,
        b -> b.shared("8H").bore(Map.of(HoleRef.of("R8H"), 1)),
        "bore-too-small /holes/bore/R8H [R8H]");
    add(
        a,
        b -> b.at(Map.of(HoleRef.of("3H"), new Point(10_001, 164))),
        "number-range /holes/at/3H/0 [L3H, R3H]");
    add(
        a,
        b -> b.at(Map.of(HoleRef.of("R3H"), new Point(10, -10_001))),
        "number-range /holes/at/R3H/1 [R3H]");
    add(
        a,
        b -> b.at(Map.of(HoleRef.of("L3H"), new Point(10, 164))),
        "hole-wrong-side /holes/at/L3H/0 [L3H]");
    add(
        a,
        b -> b.at(Map.of(HoleRef.of("3H"), new Point(-10, 164))),
        "hole-wrong-side /holes/at/3H/0 [L3H, R3H]");
    add(
        a,
        b -> b.at(Map.of(HoleRef.of("R1H"), new Point(0, 165))),
        "hole-wrong-side /holes/at/R1H/0 [R1H]");
    add(a, b -> b.noRun("L7T", "R7T"), "no-run-sides /holes/noRun/1 [L7T, R7T]");
    add(a, b -> b.noRun("7T", "7T"), "no-run-sides /holes/noRun/1 [7T, 7T]");
    add(a, b -> b.noRun("7T", "L8T"), "no-run-sides /holes/noRun/1 [7T, L8T]");
    // Offsets.
    List<Double> eight = List.of(5.0, 16.0, 27.0, 38.0, 49.0, 60.0, 75.0, 90.0);
    List<Double> seven = eight.subList(0, 7);
    List<Double> shuffled = List.of(5.0, 16.0, 27.0, 27.0, 49.0, 60.0, 75.0, 90.0);
    List<Double> negative = List.of(-5.0, 16.0, 27.0, 38.0, 49.0, 60.0, 75.0, Double.NaN);
    add(
        a,
        b -> b.mainsOffsets(EachSide.both(StringOffsets.Mains.parallel(seven))),
        "offsets-count /mains/offsets []");
    add(
        a,
        b -> b.mainsOffsets(EachSide.both(new StringOffsets.Mains(eight, seven))),
        "offsets-count /mains/offsets/throat []");
    add(
        a,
        b ->
            b.mainsOffsets(
                new EachSide<>(
                    StringOffsets.Mains.parallel(eight), new StringOffsets.Mains(seven, eight))),
        "offsets-count /mains/offsets/right/head []");
    add(
        a,
        b -> b.mainsOffsets(EachSide.both(StringOffsets.Mains.parallel(shuffled))),
        "offsets-order /mains/offsets/3 []");
    add(
        a,
        b -> b.mainsOffsets(EachSide.both(StringOffsets.Mains.parallel(negative))),
        "number-range /mains/offsets/0 []",
        "number-range /mains/offsets/7 []");
    add(
        a,
        b ->
            b.crosses(3)
                .crossesOffsets(
                    new EachSide<>(
                        new StringOffsets.Crosses(List.of(10.0, 20.0, 20.0)),
                        new StringOffsets.Crosses(List.of(10.0, 20.0)))),
        "offsets-count /crosses/offsets/right []",
        "offsets-order /crosses/offsets/left/2 []");
    add(
        a,
        b ->
            b.mainsSkip(Optional.empty())
                .mainsOffsets(EachSide.both(StringOffsets.Mains.parallel(eight))),
        "offsets-without-skip /mains/offsets []");
    // Numbers.
    add(a, b -> b.frame(0, 262), "number-range /frame/length []");
    add(a, b -> b.frame(685, Double.NaN), "number-range /frame/width []");
    add(a, b -> b.frame(300, 262), "frame-below-hoop /frame/length []");
    add(a, b -> b.frame(685, 247), "frame-below-hoop /frame/width []");
    add(a, b -> b.pieces(3), "wrong-value /pieces []");
    add(a, b -> b.tension(0, 60, ForceUnit.POUND_FORCE), "tension-range /tension/min []");
    add(
        a,
        b -> b.tension(50, Double.POSITIVE_INFINITY, ForceUnit.POUND_FORCE),
        "tension-range /tension/max []");
    add(a, b -> b.tension(60, 50, ForceUnit.POUND_FORCE), "tension-range /tension []");
    // Hoop.
    add(a, b -> b.hoop(new Hoop.Superellipse(0, 248, 2)), "hoop-shape /hoop/length []");
    add(a, b -> b.hoop(new Hoop.Superellipse(330, -1, 2)), "hoop-shape /hoop/width []");
    add(a, b -> b.hoop(new Hoop.Superellipse(330, 248, 99)), "hoop-shape /hoop/exponent []");
    add(
        a,
        b -> b.hoop(new Hoop.Superellipse(Double.NaN, 0, Double.NaN)),
        "hoop-shape /hoop/exponent []",
        "hoop-shape /hoop/length []",
        "hoop-shape /hoop/width []");
    List<Point> ring = polygon(0);
    List<Point> crossed = new ArrayList<>(ring);
    Collections.swap(crossed, 2, 3);
    add(a, b -> b.hoop(new Hoop.Points(ring.subList(0, 7))), "hoop-shape /hoop/points []");
    add(a, b -> b.hoop(new Hoop.Points(polygon(3))), "hoop-off-centre /hoop/points []");
    add(a, b -> b.hoop(new Hoop.Points(crossed)), "hoop-shape /hoop/points/1 []");
    add(
        a,
        b -> b.hoop(new Hoop.Points(Collections.nCopies(2001, new Point(1, 1)))),
        "hoop-shape /hoop/points []");
    return a;
  }

  private static void add(
      List<Arguments> all, UnaryOperator<LayoutBuilder> change, String... expected) {
    all.add(Arguments.of(all.size(), change, List.of(expected)));
  }

  private static <T> Map<HoleRef, T> ordered(String first, T a, String second, T b) {
    Map<HoleRef, T> map = new LinkedHashMap<>();
    map.put(HoleRef.of(first), a);
    map.put(HoleRef.of(second), b);
    return map;
  }

  /** A hoop of 12 points, moved towards the head. */
  private static List<Point> polygon(double up) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      double angle = Math.PI / 12 + i * Math.PI / 6;
      points.add(new Point(120 * Math.sin(angle), 160 * Math.cos(angle) + up));
    }
    return points;
  }

  @ParameterizedTest(name = "{0}: {2}")
  @MethodSource("oneWrong")
  void eachFaultHasItsFinding(
      int index, UnaryOperator<LayoutBuilder> change, List<String> expected) {
    LayoutBuilder builder = change.apply(Willowbank.hundred());
    assertThat(check(builder)).as("case %d", index).containsExactlyInAnyOrderElementsOf(expected);
  }

  @Test
  void allFindingsAreCollected() {
    assertThat(
            check(
                Willowbank.hundred()
                    .mains(17)
                    .crosses(0)
                    .pieces(0)
                    .tieOff("99H")
                    .hoop(new Hoop.Superellipse(-1, 248, 2))))
        .containsExactlyInAnyOrder(
            "mains-odd /mains/count []",
            "crosses-too-few /crosses/count []",
            "wrong-value /pieces []",
            "unknown-hole /holes/tieOff/0 [L99H, R99H]",
            "hoop-shape /hoop/length []");
  }

  @Test
  void findingsStandAtTheirPlaceInTheFile() {
    Place list = new Place(7, 3, 7, 20);
    Place entry = new Place(7, 12, 7, 17);
    Place right = new Place(9, 1, 9, 5);
    Layout layout =
        Willowbank.hundred()
            .holes(new EachSide<>(18, 18), EachSide.both(17))
            .tieOff("5H", "99H")
            .crossesFirst(both("88H"))
            .places(
                Places.of(
                    Map.of(
                        "/holes/tieOff", list,
                        "/holes/tieOff/1", entry,
                        "/crosses/first/1", right)))
            .build();
    assertThat(check(layout))
        .extracting(f -> f.pointer() + " " + f.place().map(Place::column).orElse(0))
        .containsExactly("/holes/tieOff/1 12", "/crosses/first 0");
  }

  @Test
  void lengthsInInchesAreCheckedInMillimetres() {
    Layout inches =
        Willowbank.hundred()
            .units(LengthUnit.INCH)
            .at(Map.of())
            .frame(27, 10.3)
            .hoop(new Hoop.Superellipse(13, 9.75, 2.1))
            .build();
    assertThat(check(inches)).isEmpty();
  }

  @Test
  void messagesAreSentences() {
    Layout layout = Willowbank.hundred().tieOff("99H").bore(Map.of(HoleRef.of("6T"), 1)).build();
    assertThat(check(layout))
        .extracting(Finding::message)
        .containsExactlyInAnyOrder("Holes L99H and R99H do not exist: 18 are counted at the head.");
  }
}
