package org.hoopwright.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.frame.End;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.hoopwright.testing.BruteForceRoutes;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.LayoutGenerator;
import org.hoopwright.testing.LayoutGenerator.Feature;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** On small frames the search finds what brute force finds, and ranks it as brute force does. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS) // brute force remembers orders of crosses
class BruteForceSearchTest {

  private final BruteForceRoutes bruteForce = new BruteForceRoutes();

  static Bed bed(Layout layout) {
    return StatedAssignment.assign(layout)
        .bed()
        .orElseThrow(() -> new AssertionError(StatedAssignment.assign(layout).findings()));
  }

  /** A route in the reading in which brute force found it, with measures worked out apart. */
  static Route route(Bed bed, BruteForceRoutes.Found f) {
    List<Piece> pieces = new ArrayList<>();
    StringEnd s = new StringEnd(EndName.SHORT, f.shortPasses(), Optional.empty(), f.knots().get(0));
    StringEnd l = new StringEnd(EndName.LONG, f.longPasses(), Optional.empty(), f.knots().get(1));
    if (f.crossPasses().isEmpty()) {
      pieces.add(new Piece(Piece.Role.WHOLE, List.of(s, l)));
    } else {
      pieces.add(new Piece(Piece.Role.MAINS, List.of(s, l)));
      pieces.add(
          new Piece(
              Piece.Role.CROSSES,
              List.of(
                  new StringEnd(EndName.START, List.of(), f.startingClamp(), f.knots().get(2)),
                  new StringEnd(
                      EndName.FINISH, f.crossPasses(), Optional.empty(), f.knots().get(3)))));
    }
    Route bare = make(f, pieces, Set.of(), new RouteMeasures(0, 0, 0, 0, 0, 0, List.of()));
    return make(
        f, pieces, RouteMeasureCheck.families(bed, bare), RouteMeasureCheck.measures(bed, bare));
  }

  private static Route make(
      BruteForceRoutes.Found f, List<Piece> pieces, Set<Family> families, RouteMeasures measures) {
    return new Route(
        f.start(),
        f.direction(),
        f.shortSide(),
        pieces,
        f.shortOpening(),
        f.longOpening(),
        f.order(),
        families,
        measures);
  }

  /** Best first by the preferences, then by start end and short side. */
  static Comparator<Route> ranking(Bed bed, RouteRequest request) {
    return Comparator.<Route, Long[]>comparing(
            r -> request.preferences().stream().map(p -> p.value(r, bed)).toArray(Long[]::new),
            Arrays::compare)
        .thenComparing(r -> r.mainsStart() == End.HEAD ? 0 : 1)
        .thenComparing(r -> r.shortSide() == usualShortSide(bed) ? 0 : 1);
  }

  /** Of mirror images the short side is the maker's, or left. */
  private static Comparator<Route> leftFirst(Bed bed) {
    return Comparator.<Route>comparingLong(r -> RoutePreferences.MAKER.value(r, bed))
        .thenComparing(r -> r.shortSide() == usualShortSide(bed) ? 0 : 1);
  }

  private static Side usualShortSide(Bed bed) {
    return bed.layout().shortSide().orElse(Side.LEFT);
  }

  private static List<List<Pass>> passes(Route r) {
    return List.of(
        r.passesFrom(Side.LEFT),
        r.passesFrom(Side.RIGHT),
        r.end(EndName.FINISH).map(StringEnd::passes).orElse(List.of()));
  }

  private static List<Pass> mirrored(List<Pass> passes) {
    return passes.stream()
        .map(p -> new Pass(p.span().mirrored(), p.from().mirrored(), p.to().mirrored()))
        .toList();
  }

  private static List<List<Pass>> mirrorPasses(List<List<Pass>> p) {
    return List.of(mirrored(p.get(1)), mirrored(p.get(0)), mirrored(p.get(2)));
  }

  /** Compares everything there is to compare; the number of routes. */
  private int compare(Bed bed, RouteRequest request) {
    Map<List<List<Pass>>, Set<Route>> expected = new HashMap<>();
    Map<List<List<Pass>>, List<Route>> readings = new HashMap<>();
    Comparator<Route> ranking = ranking(bed, request);
    int routes = 0;
    for (BruteForceRoutes.Found f : bruteForce.all(bed, request)) {
      Route route = route(bed, f);
      routes += expected.computeIfAbsent(f.passes(), k -> new HashSet<>()).add(route) ? 1 : 0;
      readings.computeIfAbsent(f.passes(), k -> new ArrayList<>()).add(route);
      if (bed.symmetric()) {
        readings.computeIfAbsent(mirrorPasses(f.passes()), k -> new ArrayList<>()).add(route);
      }
    }
    RouteResult result = RouteSearch.search(bed, request);
    assertThat(result.orders()).isEqualTo(expected.size());
    assertThat(result.status())
        .isEqualTo(
            expected.isEmpty() ? RouteResult.Status.PROVEN_ABSENT : RouteResult.Status.FOUND);

    Set<List<List<Pass>>> seen = new LinkedHashSet<>();
    int looked = 0;
    int step = Math.max(1, result.ranked().size() / 10); // each look costs a search
    for (RankedRoute ranked : result.ranked()) {
      Route found = ranked.route();
      List<List<Pass>> own = passes(found);
      List<List<Pass>> mirror = bed.symmetric() ? mirrorPasses(own) : own;
      assertThat(seen.add(own)).as("once a class: %s", found).isTrue();
      seen.add(mirror);
      assertThat(expected).as("%s", found).containsKey(own);
      assertThat(RouteCheck.check(bed, found, request)).as("%s", found).isEmpty();
      assertThat(ranked.knotVariants()).isEqualTo(expected.get(own).size());
      if (looked++ % step == 0) {
        variants(bed, request, found, expected.get(own));
      }
      Route wanted =
          readings.get(own).stream()
              .min(bed.symmetric() ? leftFirst(bed).thenComparing(ranking) : ranking)
              .orElseThrow();
      assertThat(ranking.compare(found, wanted)).as("%s against %s", found, wanted).isZero();
    }
    assertThat(seen).isEqualTo(expected.keySet());
    assertThat(result.ranked().stream().map(RankedRoute::route)).isSortedAccordingTo(ranking);
    return routes;
  }

  private static void variants(Bed bed, RouteRequest request, Route found, Set<Route> expected) {
    List<Route> variants = RouteSearch.knotVariants(bed, request, found);
    assertThat(new HashSet<>(variants)).as("%s", found).isEqualTo(expected);
    assertThat(variants).hasSameSizeAs(expected);
    assertThat(variants.get(0)).isEqualTo(found);
    for (Route variant : variants) {
      assertThat(RouteCheck.check(bed, variant, request)).as("%s", variant).isEmpty();
    }
  }

  @Test
  void theTeachingFrame() {
    Bed bed = bed(Willowbank.teaching().tieOff("1H", "1T", "2H", "2T", "3H").build());

    assertThat(compare(bed, RouteRequest.builder().runLimit(8).build())).isGreaterThan(50);
  }

  @ParameterizedTest
  @ValueSource(ints = {5, 6})
  void framesWithEarlyCrosses(int crosses) {
    int routes = 0;
    for (int seed = 0; seed < 2; seed++) {
      Set<Feature> features = seed == 0 ? Set.of() : Set.of(Feature.SKIPS, Feature.UNEVEN);
      Bed bed = bed(LayoutGenerator.layout(Draw.from(seed), 4, crosses, features));
      routes += compare(bed, RouteRequest.builder().runLimit(seed + 3).build());
    }
    assertThat(routes).isGreaterThan(100);
  }

  @Test
  void smallFramesOfEveryKind() {
    Draw draw = Draw.from(20);
    int routes = 0;
    int absent = 0;
    for (int i = 0; i < 25; i++) {
      Set<Feature> features = new LinkedHashSet<>();
      for (Feature feature : Feature.values()) {
        if (draw.chance(30)) {
          features.add(feature);
        }
      }
      Bed bed = bed(LayoutGenerator.layout(draw, draw.between(2, 4), draw.between(2, 6), features));
      RouteRequest.Builder request =
          RouteRequest.builder()
              .runLimit(draw.between(2, 5))
              .knotLimit(draw.between(2, 6))
              .startingClamps(draw.between(0, 1));
      if (draw.chance(30)) {
        request.pieces(draw.between(1, 2));
      }
      int here = compare(bed, request.build());
      routes += here;
      absent += here == 0 ? 1 : 0;
    }
    assertThat(routes).isGreaterThan(1000);
    assertThat(absent).as("frames without a route").isBetween(2, 20);
  }
}
