package org.hoopwright.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.hoopwright.Hoopwright;
import org.hoopwright.Outcome;
import org.hoopwright.Plan;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.bench.ClampUse;
import org.hoopwright.bench.Job;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.End;
import org.hoopwright.frame.Game;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutBuilder;
import org.hoopwright.frame.NoRun;
import org.hoopwright.frame.StringOffsets;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteResult;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.LayoutDetails;
import org.hoopwright.testing.LayoutGenerator;
import org.hoopwright.testing.Willowbank;
import org.hoopwright.units.ForceUnit;
import org.hoopwright.units.LengthUnit;
import org.junit.jupiter.api.Test;

class DifferencesTest {

  @Provide
  Arbitrary<Layout> detailed() {
    return Arbitraries.longs().map(seed -> LayoutDetails.any(Draw.from(seed)).orElseThrow());
  }

  @Provide
  Arbitrary<Layout> small() {
    return Arbitraries.longs()
        .map(
            seed -> {
              Draw draw = Draw.from(seed);
              return LayoutGenerator.layout(
                  draw, draw.between(2, 4), draw.between(4, 8), features(draw));
            });
  }

  private static Set<LayoutGenerator.Feature> features(Draw draw) {
    Set<LayoutGenerator.Feature> features = new LinkedHashSet<>();
    for (LayoutGenerator.Feature f : LayoutGenerator.Feature.values()) {
      if (draw.chance(30)) {
        features.add(f);
      }
    }
    return features;
  }

  /** For each member of a layout, a layout in which only that member is another. */
  private static Map<Topic, UnaryOperator<Layout>> changes() {
    Map<Topic, Function<Layout, LayoutBuilder>> all = new EnumMap<>(Topic.class);
    all.put(
        Topic.GAME, l -> l.toBuilder().game(l.game() == Game.SQUASH ? Game.TENNIS : Game.SQUASH));
    all.put(
        Topic.UNITS,
        l ->
            l.toBuilder()
                .units(l.units() == LengthUnit.INCH ? LengthUnit.MILLIMETRE : LengthUnit.INCH));
    all.put(
        Topic.FRAME,
        l -> l.toBuilder().frame(l.mm(683), l.frame().map(f -> f.width()).orElse(1.0)));
    all.put(Topic.HOOP, l -> l.toBuilder().hoop(hoop(l.hoop())));
    all.put(
        Topic.HOLES_HEAD,
        l ->
            l.toBuilder()
                .holes(
                    new EachSide<>(l.headHoles().left() + 1, l.headHoles().right()),
                    l.throatHoles()));
    all.put(
        Topic.HOLES_THROAT,
        l ->
            l.toBuilder()
                .holes(
                    l.headHoles(),
                    new EachSide<>(l.throatHoles().left(), l.throatHoles().right() + 1)));
    all.put(Topic.TIE_OFF, l -> l.toBuilder().tieOff(toggled(l.tieOff())));
    all.put(Topic.SHARED, l -> l.toBuilder().shared(toggled(l.shared())));
    all.put(Topic.BLOCKED, l -> l.toBuilder().blocked(toggled(l.blocked())));
    all.put(
        Topic.BORE,
        l -> {
          Map<HoleRef, Integer> bore = new LinkedHashMap<>(l.bore());
          bore.put(HoleRef.of("L3H"), 4);
          return l.toBuilder().bore(bore);
        });
    all.put(
        Topic.AT,
        l -> {
          Map<HoleRef, Point> at = new LinkedHashMap<>(l.at());
          at.put(HoleRef.of("L2H"), new Point(-3.25, 100));
          return l.toBuilder().at(at);
        });
    all.put(
        Topic.NO_RUN,
        l -> {
          List<NoRun> noRun = new ArrayList<>(l.noRun());
          noRun.add(new NoRun(HoleRef.of("R1H"), HoleRef.of("R2T")));
          return l.toBuilder().noRun(noRun);
        });
    all.put(Topic.MAINS_COUNT, l -> l.toBuilder().mains(l.mainsCount() + 2));
    all.put(
        Topic.MAINS_SKIP,
        l -> l.toBuilder().mainsSkip(Optional.of(toggled(l.mainsSkip().orElseThrow()))));
    all.put(
        Topic.MAINS_OFFSETS,
        l -> {
          StringOffsets.Mains one = new StringOffsets.Mains(List.of(6.125), List.of(7.0));
          return l.toBuilder()
              .mainsOffsets(
                  l.mainsOffsets()
                      .map(o -> new EachSide<>(one, o.right()))
                      .orElse(EachSide.both(one)));
        });
    all.put(
        Topic.MAINS_START,
        l ->
            l.toBuilder()
                .mainsStart(l.mainsStart().equals(Optional.of(End.HEAD)) ? End.THROAT : End.HEAD));
    all.put(Topic.SHORT_SIDE, l -> l.toBuilder().shortSide(other(l.shortSide())));
    all.put(Topic.CROSSES_COUNT, l -> l.toBuilder().crosses(l.crossesCount() + 1));
    all.put(Topic.CROSSES_SKIP, l -> l.toBuilder().crossesSkip(toggled(l.crossesSkip())));
    all.put(
        Topic.CROSSES_OFFSETS,
        l ->
            l.toBuilder()
                .crossesOffsets(EachSide.both(new StringOffsets.Crosses(List.of(11.0, 12.5)))));
    all.put(Topic.CROSSES_FIRST, l -> l.toBuilder().crossesFirst(Willowbank.both("44H")));
    all.put(Topic.CROSSES_LAST, l -> l.toBuilder().crossesLast(Willowbank.both("44T")));
    all.put(
        Topic.DIRECTION,
        l ->
            l.toBuilder()
                .direction(
                    l.direction().equals(Optional.of(Direction.HEAD_TO_THROAT))
                        ? Direction.THROAT_TO_HEAD
                        : Direction.HEAD_TO_THROAT));
    all.put(Topic.START_SIDE, l -> l.toBuilder().startSide(other(l.startSide())));
    all.put(Topic.PIECES, l -> l.toBuilder().pieces(l.pieces().orElse(2) == 2 ? 1 : 2));
    all.put(Topic.AROUND_THE_WORLD, l -> l.toBuilder().aroundTheWorld(!l.aroundTheWorld()));
    all.put(
        Topic.HEAD_ZONE,
        l -> l.toBuilder().headZone(new EachSide<>(HoleId.of("L44H"), HoleId.of("R43H"))));
    all.put(Topic.TENSION, l -> l.toBuilder().tension(11.5, 12, ForceUnit.KILOGRAM_FORCE));
    Map<Topic, UnaryOperator<Layout>> changes = new EnumMap<>(Topic.class);
    all.forEach((topic, change) -> changes.put(topic, l -> change.apply(l).build()));
    return changes;
  }

  private static Side other(Optional<Side> side) {
    return side.map(Side::other).orElse(Side.LEFT);
  }

  private static Hoop hoop(Hoop hoop) {
    if (hoop instanceof Hoop.Superellipse s) {
      return new Hoop.Superellipse(s.length(), s.width(), s.exponent() + 0.001);
    }
    List<Point> points = new ArrayList<>(((Hoop.Points) hoop).points());
    points.set(3, new Point(points.get(3).x() + 0.0001, points.get(3).y()));
    return new Hoop.Points(points);
  }

  /** The list with L2T in it where it was not, and without it where it was. */
  private static List<HoleRef> toggled(List<HoleRef> refs) {
    HoleId hole = HoleId.of("L2T");
    List<HoleRef> without =
        refs.stream()
            .flatMap(r -> r.holes().stream())
            .filter(h -> !h.equals(hole))
            .map(HoleRef::of)
            .toList();
    if (refs.stream().anyMatch(r -> r.holes().contains(hole))) {
      return without;
    }
    return Stream.concat(refs.stream(), Stream.of(HoleRef.of(hole))).toList();
  }

  @Property(tries = 60)
  void aChangedMemberIsNamedAndNoOther(@ForAll("detailed") Layout layout) {
    changes()
        .forEach(
            (topic, change) -> {
              Layout changed = change.apply(layout);
              List<Difference> found = Differences.ofLayouts(layout, changed);
              assertThat(found).as("%s", topic).extracting(Difference::topic).contains(topic);
              if (topic != Topic.UNITS) {
                assertThat(found).extracting(Difference::topic).containsOnly(topic);
              }
            });
  }

  /** No topic of a layout file is without a change that the property above makes. */
  @Test
  void everyMemberIsChanged() {
    Set<Topic> members = new LinkedHashSet<>(List.of(Topic.values()));
    members.removeIf(t -> t.compareTo(Topic.BED) >= 0);
    members.remove(Topic.NAME);
    assertThat(changes().keySet()).isEqualTo(members);
  }

  @Test
  void theNameIsAMemberToo() {
    Layout a =
        Layout.builder("A")
            .hoop(new Hoop.Superellipse(120, 100, 2))
            .holes(4, 4)
            .mains(4)
            .crosses(4)
            .build();
    Layout b =
        Layout.builder("B")
            .hoop(new Hoop.Superellipse(120, 100, 2))
            .holes(4, 4)
            .mains(4)
            .crosses(4)
            .build();
    assertThat(Differences.ofLayouts(a, b))
        .containsExactly(
            new Difference(
                Topic.NAME,
                "name",
                Optional.of("A"),
                Optional.of("B"),
                "The frame is called A in the first, B in the second."));
  }

  @Property(tries = 40)
  void equalLayoutsHaveNoDifferences(@ForAll("detailed") Layout layout) {
    assertThat(Differences.ofLayouts(layout, layout.toBuilder().build())).isEmpty();
    assertThat(Hoopwright.compare(layout, layout.toBuilder().build(), Job.standard())).isEmpty();
  }

  @Property(tries = 40)
  void theOtherWayRoundTheValuesAreExchanged(
      @ForAll("small") Layout first, @ForAll("small") Layout second) {
    List<Difference> there = Hoopwright.compare(first, second, Job.standard());
    List<Difference> back = Hoopwright.compare(second, first, Job.standard());
    assertThat(exchanged(back)).containsExactlyInAnyOrderElementsOf(bare(there));
    assertThat(there).allSatisfy(DifferencesTest::readsWell);
  }

  private static void readsWell(Difference d) {
    assertThat(d.first()).isNotEqualTo(d.second());
    assertThat(d.say())
        .matches("[A-Z0-9].* the (first|second).*[.]")
        .doesNotContain("  ", " , ", "null");
    if (d.topic() != Topic.ROUTES_ORDER) {
      assertThat(d.about()).isNotBlank();
    }
  }

  private static List<List<Object>> bare(List<Difference> differences) {
    return differences.stream()
        .map(d -> List.<Object>of(d.topic(), d.about(), d.first(), d.second()))
        .toList();
  }

  private static List<List<Object>> exchanged(List<Difference> differences) {
    return differences.stream()
        .map(d -> List.<Object>of(d.topic(), d.about(), d.second(), d.first()))
        .toList();
  }

  @Test
  void whatLeftAndRightDifferInAlikeIsOneDifference() {
    Layout layout = Willowbank.hundred().build();
    Layout moved =
        Willowbank.hundred()
            .tieOff(List.of())
            .tieOff("5H", "6T", "8T", "11T")
            .crossesFirst(Willowbank.both("8H"))
            .build();
    assertThat(Differences.ofLayouts(layout, moved))
        .extracting(Difference::say)
        .containsExactly(
            "In the second 11T is a tie-off hole; in the first it is none.",
            "In the first 12T is a tie-off hole; in the second it is none.",
            "The cross nearest the head takes 7H in the first, 8H in the second.");
  }

  @Test
  void whatOneSideAloneDiffersInKeepsItsSide() {
    Layout layout = Willowbank.hundred().build();
    Layout worn = Willowbank.hundred().blocked("L10T").build();
    assertThat(Differences.ofLayouts(layout, worn))
        .containsExactly(
            new Difference(
                Topic.BLOCKED,
                "L10T",
                Optional.empty(),
                Optional.of("blocked"),
                "In the second L10T is blocked; in the first it is not."));
  }

  @Test
  void theSameSaidInOtherWordsIsNoDifference() {
    Layout layout = Willowbank.hundred().build();
    Layout spelled =
        Willowbank.hundred()
            .mainsSkip("L7H", "R7H", "9H", "R7T", "L7T", "9T")
            .noRun(List.of(new NoRun(HoleRef.of("6T"), HoleRef.of("5T"))))
            .build();
    assertThat(layout).isNotEqualTo(spelled);
    assertThat(Differences.ofLayouts(layout, spelled)).isEmpty();
  }

  @Test
  void spansThatRunElsewhereFollow() {
    Layout layout = Willowbank.hundred().crossesFirst(Willowbank.both("7H")).build();
    Layout other =
        Willowbank.hundred().mainsSkip("6H", "9H", "7T", "9T").withoutFirstAndLast().build();
    List<Difference> found = Hoopwright.compare(layout, other, Job.standard());
    assertThat(found)
        .filteredOn(d -> d.topic() == Topic.BED_SPAN)
        .extracting(Difference::say)
        .containsExactly(
            "Main 6 runs from 6H to 6T in the first, from 7H to 6T in the second.",
            "X1 runs from L7H to R7H in the first, from L6H to R6H in the second.");
  }

  @Test
  void routesPossibleInOneOnlyFollow() {
    Layout free = Willowbank.hundred().build();
    Layout forbidding = Willowbank.hundred().aroundTheWorld(false).build();
    Job one = Job.builder().routes(RouteRequest.builder().pieces(1).build()).build();
    List<Difference> found = Hoopwright.compare(free, forbidding, one);
    List<RankedRoute> around = ranked(free, one);
    around.removeAll(ranked(forbidding, one));
    assertThat(around).isNotEmpty();
    assertThat(found)
        .filteredOn(d -> d.topic() == Topic.ROUTES_ORDER)
        .hasSize(ranked(free, one).size() - ranked(forbidding, one).size())
        .allSatisfy(d -> assertThat(d.second()).isEmpty());
    assertThat(found).extracting(Difference::topic).contains(Topic.ROUTES, Topic.AROUND_THE_WORLD);
  }

  private static List<RankedRoute> ranked(Layout layout, Job job) {
    return new ArrayList<>(
        Hoopwright.routes(StatedAssignment.assign(layout).bed().orElseThrow(), job).ranked());
  }

  /** What a search stopped before it had seen is not said to be impossible. */
  @Test
  void aStoppedSearchForbidsNothing() {
    Layout layout = Willowbank.hundred().build();
    var bed = StatedAssignment.assign(layout).bed().orElseThrow();
    RouteResult all = Hoopwright.routes(bed, Job.standard());
    Job hurried = Job.builder().routes(RouteRequest.builder().maxNodes(60).build()).build();
    RouteResult some = Hoopwright.routes(bed, hurried);
    assertThat(some.status()).isEqualTo(RouteResult.Status.LIMIT_REACHED);
    assertThat(Differences.ofRoutes(bed, all, bed, some))
        .noneMatch(d -> d.topic() == Topic.ROUTES_ORDER)
        .anyMatch(d -> d.topic() == Topic.ROUTES && d.second().orElse("").endsWith("or more"));
  }

  private static Plan plan(Layout layout, Job job) {
    return Hoopwright.plan(layout, job).plan().orElseThrow();
  }

  @Test
  void plansOfOnePieceAndOfTwo() {
    Layout layout = Willowbank.hundred().build();
    Plan two = plan(layout, Job.standard());
    Plan one = plan(layout, Job.builder().routes(RouteRequest.builder().pieces(1).build()).build());
    List<Difference> found = Hoopwright.compare(two, one);
    assertThat(found)
        .extracting(Difference::topic)
        .contains(
            Topic.ROUTE_PIECES,
            Topic.ROUTE_PASSES,
            Topic.ROUTE_KNOT,
            Topic.ROUTE_COVERED,
            Topic.CUT_LENGTH,
            Topic.END_LENGTH,
            Topic.HOOP_PEAK)
        .doesNotContain(Topic.OPTIONS, Topic.ROUTE_SHORT_SIDE)
        .isSorted();
    assertThat(found)
        .filteredOn(d -> d.topic() == Topic.CUT_LENGTH)
        .extracting(Difference::about)
        .containsExactlyInAnyOrder("mains", "crosses", "mains and crosses");
    assertThat(exchanged(Hoopwright.compare(one, two)))
        .containsExactlyInAnyOrderElementsOf(bare(found));
    assertThat(found).allSatisfy(DifferencesTest::readsWell);
  }

  @Test
  void plansWithAndWithoutClampsBehindOthersSayHowTheyAreUsed() {
    Layout layout = Willowbank.hundred().build();
    Plan without = plan(layout, Job.builder().backUp(ClampUse.NEVER).build());
    Plan with =
        plan(layout, Job.builder().backUp(ClampUse.ALWAYS).thirdClamp(ClampUse.NEVER).build());

    assertThat(Hoopwright.compare(without, with))
        .filteredOn(d -> d.topic() == Topic.OPTIONS)
        .extracting(Difference::say)
        .containsExactly(
            "The use of a clamp behind another is never in the first, always in the second.",
            "The use of a third clamp is as needed in the first, never in the second.");
  }

  @Test
  void plansOfOtherTensionsDifferInThatAndWhatItDoes() {
    Layout layout = Willowbank.hundred().build();
    Plan usual = plan(layout, Job.standard());
    Plan softer =
        plan(
            layout,
            Job.builder()
                .mainsTension(org.hoopwright.units.Force.ofNewtons(230))
                .crossesTension(org.hoopwright.units.Force.ofNewtons(225))
                .build());
    List<Difference> found = Hoopwright.compare(usual, softer);
    assertThat(found)
        .filteredOn(d -> d.topic() == Topic.OPTIONS)
        .extracting(Difference::about)
        .containsExactly("mains", "crosses");
    assertThat(found)
        .extracting(Difference::topic)
        .contains(Topic.CLAMP_PEAK, Topic.HOOP_PEAK)
        .doesNotContain(Topic.ROUTE_PASSES, Topic.ROUTE_KNOT, Topic.PULLS);
  }

  @Property(tries = 15)
  void aPlanDoesNotDifferFromItself(@ForAll("small") Layout layout) {
    Outcome outcome = Hoopwright.plan(layout, Job.standard());
    outcome
        .plan()
        .ifPresent(p -> assertThat(Hoopwright.compare(p, plan(layout, Job.standard()))).isEmpty());
  }
}
