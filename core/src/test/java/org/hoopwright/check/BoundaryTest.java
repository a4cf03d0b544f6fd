package org.hoopwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Draft;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.Game;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutBuilder;
import org.hoopwright.frame.StringOffsets;
import org.hoopwright.geometry.Point;
import org.hoopwright.route.RouteMeasures;
import org.hoopwright.testing.Willowbank;
import org.hoopwright.units.ForceUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every threshold from both sides: just within nothing, just beyond exactly its finding. */
class BoundaryTest {

  private static final double JUST = 0.01;

  private static final List<Double> MAINS =
      List.of(5.0, 15.2, 25.5, 35.9, 46.5, 57.2, 68.0, 79.0, 90.0);
  private static final List<Double> CROSSES =
      List.of(
          34.5, 47.5, 62.0, 75.3, 88.7, 102.0, 115.3, 128.7, 142.0, 155.3, 168.7, 182.0, 195.3,
          208.7, 222.0, 235.3, 248.7, 262.0, 276.5, 289.5);

  /**
   * A limit from one side.
   *
   * @param code what is found beyond it
   * @param layout a layout with this value
   * @param within a value on the allowed side
   * @param beyond a value on the other
   * @param expected pointer and names of each finding beyond
   */
  private record Limit(
      FindingCode code,
      DoubleFunction<LayoutBuilder> layout,
      double within,
      double beyond,
      List<String> expected) {
    @Override
    public String toString() {
      return code.code() + " at " + within;
    }
  }

  private static final List<Limit> ALL = new ArrayList<>();

  private static void most(
      FindingCode code, double limit, DoubleFunction<LayoutBuilder> layout, String... expected) {
    ALL.add(new Limit(code, layout, limit - JUST, limit + JUST, List.of(expected)));
  }

  private static void least(
      FindingCode code, double limit, DoubleFunction<LayoutBuilder> layout, String... expected) {
    ALL.add(new Limit(code, layout, limit + JUST, limit - JUST, List.of(expected)));
  }

  static List<Limit> thresholds() {
    ALL.clear();
    holes();
    hoop();
    mains();
    crosses();
    numbers();
    return List.copyOf(ALL);
  }

  private static void holes() {
    least(
        FindingCode.HOLES_CROWDED,
        3,
        d -> teaching("R3H", new Point(48.9, 10 + d), "R4H", new Point(48.9, 10)),
        "/holes/at/R4H [R3H, R4H]");
    most(
        FindingCode.HOLE_OFF_HOOP,
        12,
        d -> Willowbank.teaching().at(Map.of(HoleRef.of("R4H"), new Point(50 + d, 0))),
        "/holes/at/R4H [R4H]");
    most(
        FindingCode.HOLES_NOT_MIRRORED,
        6,
        d -> teaching("L3H", new Point(-40, 33), "R3H", new Point(40, 33 + d)),
        "/holes/at/L3H [L3H, R3H]");
    most(
        FindingCode.HOLES_GAP,
        3,
        BoundaryTest::gap,
        "/holes/at/4T [L4H, L4T]",
        "/holes/at/4T [R4H, R4T]");
    least(
        FindingCode.TIE_OFF_FEW,
        1.5,
        n -> Willowbank.teaching().tieOff(n > 1.5 ? new String[] {"1H"} : new String[] {"L1H"}),
        "/holes/tieOff [L1H]");
  }

  /** A round hoop with a gap in the flank so many times as wide as the others. */
  private static LayoutBuilder gap(double times) {
    double radius = 100;
    double chord = 30;
    Map<HoleRef, Point> at = new LinkedHashMap<>();
    double angle = 0.1;
    for (String name : List.of("1H", "2H", "3H", "4H", "4T", "3T", "2T", "1T")) {
      if (!name.equals("1H")) {
        double length = name.equals("4T") ? times * chord : chord;
        angle += 2 * Math.asin(length / (2 * radius));
      }
      at.put(HoleRef.of(name), new Point(radius * Math.sin(angle), radius * Math.cos(angle)));
    }
    return Willowbank.teaching().hoop(new Hoop.Superellipse(200, 200, 2)).at(at);
  }

  private static void hoop() {
    most(FindingCode.HOOP_OFF_CENTRE, 1, d -> points(d, 1), "/hoop/points []");
    // The right flank is a line at 120 sin 75 degrees, so that it moves by what it is scaled.
    double flank = 120 * Math.sin(Math.toRadians(75));
    most(FindingCode.HOOP_UNEVEN, 3, d -> points(0, 1 + d / flank), "/hoop/points []");
    least(FindingCode.HOOP_PROPORTION, 1, r -> oval(200 * r, 200, 2), "/hoop []");
    most(FindingCode.HOOP_PROPORTION, 2, r -> oval(200 * r, 200, 2), "/hoop []");
    least(FindingCode.HOOP_EXPONENT, 1.6, n -> oval(330, 248, n), "/hoop/exponent []");
    most(FindingCode.HOOP_EXPONENT, 4, n -> oval(330, 248, n), "/hoop/exponent []");
    least(FindingCode.HOOP_UNUSUAL, 280, mm -> oval(mm, 248, 2), "/hoop/length []");
    most(FindingCode.HOOP_UNUSUAL, 400, mm -> oval(mm, 248, 2), "/hoop/length []");
    least(FindingCode.HOOP_UNUSUAL, 200, mm -> oval(330, mm, 2), "/hoop/width []");
    most(FindingCode.HOOP_UNUSUAL, 300, mm -> oval(330, mm, 2), "/hoop/width []");
    least(
        FindingCode.FRAME_BELOW_HOOP,
        330,
        mm -> oval(330, 248, 2).frame(mm, 262),
        "/frame/length []");
  }

  private static LayoutBuilder oval(double length, double width, double exponent) {
    return Willowbank.hundred().at(Map.of()).hoop(new Hoop.Superellipse(length, width, exponent));
  }

  private static LayoutBuilder points(double up, double right) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      double angle = Math.PI / 12 + i * Math.PI / 6;
      double x = 120 * Math.sin(angle);
      points.add(new Point(x > 0 ? right * x : x, 160 * Math.cos(angle) + up));
    }
    return Willowbank.hundred().at(Map.of()).hoop(new Hoop.Points(points));
  }

  private static void mains() {
    most(
        FindingCode.MAINS_SKEWED,
        8,
        d ->
            measured(
                EachSide.both(new StringOffsets.Mains(with(MAINS, 4, 46.5 + d), MAINS)), CROSSES),
        "/mains/offsets/head/4 [L5, L5H, L5T]",
        "/mains/offsets/head/4 [R5, R5H, R5T]");
    most(
        FindingCode.MAINS_SPACING,
        1.9,
        BoundaryTest::wideAtMainTwo,
        "/mains/offsets/1 [L1, L2]",
        "/mains/offsets/1 [R1, R2]");
    least(
        FindingCode.MAINS_SPACING,
        1 / 1.9,
        BoundaryTest::wideAtMainTwo,
        "/mains/offsets/1 [L1, L2]",
        "/mains/offsets/1 [R1, R2]");
    most(FindingCode.MAINS_CENTRE, 1.9, BoundaryTest::wideCentre, "/mains/offsets/0 [L1, R1]");
    least(FindingCode.MAINS_CENTRE, 1 / 1.9, BoundaryTest::wideCentre, "/mains/offsets/0 [L1, R1]");
    most(
        FindingCode.MAINS_NOT_MIRRORED,
        6,
        d ->
            measured(
                new EachSide<>(
                    StringOffsets.Mains.parallel(MAINS),
                    StringOffsets.Mains.parallel(with(MAINS, 4, 46.5 + d))),
                CROSSES),
        "/mains/offsets/right/4 [L5, R5]");
    most(FindingCode.PATTERN_THIN_CENTRE, 1.05, BoundaryTest::thinCentre, "/mains []");
  }

  /** Between main 1 and main 2 so many times the gap that the next ones have. */
  private static LayoutBuilder wideAtMainTwo(double times) {
    double gap = (68.0 - 5.0) / (5 + times);
    List<Double> mains = new ArrayList<>(List.of(5.0));
    for (int k = 2; k <= 6; k++) {
      mains.add(5 + (times + k - 2) * gap);
    }
    mains.addAll(List.of(68.0, 79.0, 90.0));
    return measured(EachSide.both(StringOffsets.Mains.parallel(mains)), CROSSES);
  }

  /** Between L1 and R1 so many times the gap that the next ones have. */
  private static LayoutBuilder wideCentre(double times) {
    double gap = 68.0 / (6 + times / 2);
    List<Double> mains = new ArrayList<>();
    for (int k = 1; k <= 6; k++) {
      mains.add((times / 2 + k - 1) * gap);
    }
    mains.addAll(List.of(68.0, 79.0, 90.0));
    return measured(EachSide.both(StringOffsets.Mains.parallel(mains)), CROSSES);
  }

  /** Mains of which the middle third lies so many times as far apart as the rest. */
  private static LayoutBuilder thinCentre(double times) {
    // 17 gaps: the middle 7 are 3 on each side and the one between L1 and R1.
    double gap = 90.0 / (5 + 3.5 * times);
    List<Double> mains = new ArrayList<>();
    for (int k = 1; k <= 9; k++) {
      double inner = Math.min(k, 4) - 0.5;
      mains.add((inner * times + Math.max(0, k - 4)) * gap);
    }
    return measured(EachSide.both(StringOffsets.Mains.parallel(mains)), CROSSES);
  }

  private static void crosses() {
    most(
        FindingCode.CROSSES_SKEWED,
        12,
        d ->
            Willowbank.ninetyFive()
                .mainsOffsets(EachSide.both(StringOffsets.Mains.parallel(MAINS)))
                .crossesOffsets(
                    new EachSide<>(
                        new StringOffsets.Crosses(CROSSES),
                        new StringOffsets.Crosses(with(CROSSES, 9, 155.3 + d)))),
        "/crosses/offsets/left/9 [X10, L19H, R19H]");
    most(
        FindingCode.CROSSES_SPACING,
        1.9,
        BoundaryTest::wideAtCrossEleven,
        "/crosses/offsets/10 [X10, X11]");
    most(FindingCode.PATTERN_NOT_UNIFORM, 1.75, BoundaryTest::wideAtCrossEleven, "/crosses []");
  }

  /** Between X10 and X11 so many times the gap of the crosses about them. */
  private static LayoutBuilder wideAtCrossEleven(double times) {
    double gap = (262.0 - 62.0) / (14 + times);
    List<Double> crosses = new ArrayList<>(List.of(34.5, 47.5));
    for (int j = 3; j <= 18; j++) {
      crosses.add(62 + (j - 3 + (j > 10 ? times - 1 : 0)) * gap);
    }
    crosses.addAll(List.of(276.5, 289.5));
    return measured(EachSide.both(StringOffsets.Mains.parallel(MAINS)), crosses);
  }

  private static void numbers() {
    least(FindingCode.MAINS_UNUSUAL, 11, BoundaryTest::mainsOf, "/mains/count []");
    most(FindingCode.MAINS_UNUSUAL, 23, BoundaryTest::mainsOf, "/mains/count []");
    least(FindingCode.CROSSES_UNUSUAL, 13.5, BoundaryTest::crossesOf, "/crosses/count []");
    most(FindingCode.CROSSES_UNUSUAL, 24.5, BoundaryTest::crossesOf, "/crosses/count []");
    least(FindingCode.TENSION_UNUSUAL, 130, n -> pull(n, 200), "/tension/min []");
    most(FindingCode.TENSION_UNUSUAL, 330, n -> pull(200, n), "/tension/max []");
    most(FindingCode.TENSION_WIDE, 2, r -> pull(150, 150 * r), "/tension []");
    least(FindingCode.TENSION_RANGE, 0, n -> pull(n, 200), "/tension/min []");
    most(FindingCode.TENSION_RANGE, 10_000, n -> pull(200, n), "/tension/max []");
    most(FindingCode.TENSION_RANGE, 200, n -> pull(n, 200), "/tension []");
    most(
        FindingCode.NUMBER_RANGE,
        10_000,
        n -> Willowbank.hundred().frame(n, 262),
        "/frame/length []");
    most(
        FindingCode.NUMBER_RANGE,
        10_000,
        n -> Willowbank.teaching().at(Map.of(HoleRef.of("R3H"), new Point(n, 3))),
        "/holes/at/R3H/0 [R3H]");
  }

  /** An even number of mains on the given side of an odd limit. */
  private static LayoutBuilder mainsOf(double n) {
    return Willowbank.hundred().mains(n < Math.round(n) ? (int) Math.round(n) - 1 : (int) n + 1);
  }

  private static LayoutBuilder crossesOf(double n) {
    return Willowbank.hundred().crosses(n < Math.floor(n) + 0.5 ? (int) n : (int) n + 1);
  }

  private static LayoutBuilder pull(double least, double most) {
    return Willowbank.hundred().tension(least, most, ForceUnit.NEWTON);
  }

  private static LayoutBuilder teaching(String a, Point atA, String b, Point atB) {
    return Willowbank.teaching().at(Map.of(HoleRef.of(a), atA, HoleRef.of(b), atB));
  }

  private static LayoutBuilder measured(EachSide<StringOffsets.Mains> mains, List<Double> crosses) {
    return Willowbank.ninetyFive()
        .mainsOffsets(mains)
        .crossesOffsets(EachSide.both(new StringOffsets.Crosses(crosses)));
  }

  private static List<Double> with(List<Double> values, int index, double value) {
    List<Double> changed = new ArrayList<>(values);
    changed.set(index, value);
    return changed;
  }

  private static List<Finding> found(Limit t, double value) {
    Layout layout = t.layout().apply(value).build();
    return Checker.bed(layout, StatedAssignment::assign).findings().stream()
        .filter(f -> f.code() == t.code())
        .toList();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("thresholds")
  void justWithinNothingIsFound(Limit t) {
    Layout layout = t.layout().apply(t.within()).build();
    CheckReport report = Checker.check(Draft.whole(layout), StatedAssignment::assign, Rules.all());
    assertThat(found(t, t.within())).isEmpty();
    assertThat(report.silent()).as("it was looked for").noneMatch(s -> s.rule() == t.code());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("thresholds")
  void justBeyondExactlyItIsFound(Limit t) {
    assertThat(found(t, t.beyond()))
        .extracting(f -> f.pointer() + " " + f.about())
        .containsExactlyInAnyOrderElementsOf(t.expected());
    assertThat(found(t, t.beyond())).allMatch(f -> !f.facts().isEmpty());
  }

  @Test
  void routesAreHardLongOrDoubledAboveTheirShare() {
    Layout layout = Willowbank.hundred().build();
    Optional<Bed> bed = StatedAssignment.assign(layout).bed();
    // 35 spans: 40 % of them are 14, 35 % are 12.25.
    assertThat(onRoute(layout, bed, new RouteMeasures(0, 14, 13, 2, 3, 0, List.of()))).isEmpty();
    assertThat(onRoute(layout, bed, new RouteMeasures(0, 15, 13, 2, 3, 0, List.of())))
        .containsExactly(FindingCode.ROUTE_HARD);
    assertThat(onRoute(layout, bed, new RouteMeasures(0, 14, 14, 2, 3, 0, List.of())))
        .containsExactly(FindingCode.ROUTE_DOUBLED);
    assertThat(onRoute(layout, bed, new RouteMeasures(0, 14, 13, 2, 4, 0, List.of())))
        .containsExactly(FindingCode.ROUTE_LONG_RUN);
  }

  private static Set<FindingCode> onRoute(Layout layout, Optional<Bed> bed, RouteMeasures best) {
    Facts facts = Facts.of(Draft.whole(layout)).with(bed, Optional.of(new Facts.Best(best, 4)));
    Set<FindingCode> found = EnumSet.noneOf(FindingCode.class);
    for (Rule rule : Rules.all()) {
      if (rule.stage() == Rule.Stage.ROUTE) {
        rule.look(facts, f -> found.add(f.code()));
      }
    }
    return found;
  }

  @Test
  void everyGameHasItsUsualNumbers() {
    for (Game game : Game.values()) {
      assertThat(Usual.of(game).isPresent()).isEqualTo(game != Game.OTHER);
    }
  }
}
