package org.hoopwright.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import net.jqwik.api.statistics.Statistics;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.NoRun;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Side;
import org.hoopwright.testing.ChocoRoutes;
import org.hoopwright.testing.LayoutArbitraries;

/** Laws that hold for every layout and request. */
@Domain(LayoutArbitraries.class)
@Domain(RouteLawsTest.Requests.class)
@Domain(DomainContext.Global.class)
class RouteLawsTest {

  /** Requests with anything asked or nothing. */
  public static final class Requests extends net.jqwik.api.domains.DomainContextBase {
    @Provide
    Arbitrary<RouteRequest> requests() {
      Arbitrary<Optional<Direction>> directions = Arbitraries.of(Direction.class).optional(0.3);
      Arbitrary<Optional<End>> starts = Arbitraries.of(End.class).optional(0.3);
      return net.jqwik.api.Combinators.combine(
              Arbitraries.integers().between(1, 5),
              Arbitraries.integers().between(1, 7),
              Arbitraries.integers().between(0, 2), // 0: pieces left open
              Arbitraries.integers().between(0, 1),
              directions,
              starts,
              Arbitraries.integers().between(0, 3)) // 0: crosses of another string
          .as(
              (run, knot, pieces, clamps, direction, start, string) -> {
                RouteRequest.Builder b =
                    RouteRequest.builder()
                        .runLimit(run)
                        .knotLimit(knot)
                        .startingClamps(clamps)
                        .crossesOfOtherString(string == 0);
                if (pieces > 0) {
                  b.pieces(pieces);
                }
                direction.ifPresent(b::direction);
                start.ifPresent(b::mainsStart);
                return b.build();
              });
    }
  }

  /** With so many crosses a constraint solver is quick where nearly every run is allowed. */
  private static final int SOLVED = 12;

  private static Bed bed(Layout layout) {
    return StatedAssignment.assign(layout).bed().orElseThrow();
  }

  /** Orders of passes, whichever end is called short. */
  private static List<List<Pass>> order(Route r) {
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

  private static List<List<Pass>> mirrored(Route r) {
    List<List<Pass>> o = order(r);
    return List.of(mirrored(o.get(1)), mirrored(o.get(0)), mirrored(o.get(2)));
  }

  /**
   * Every order with what the ranking says of it; on a symmetric bed of each pair of images one.
   */
  private static Map<Set<List<List<Pass>>>, String> classes(
      Bed bed, RouteResult result, boolean mirror) {
    Map<Set<List<List<Pass>>>, String> all = new LinkedHashMap<>();
    for (RankedRoute r : result.ranked()) {
      Set<List<List<Pass>>> images = new HashSet<>();
      images.add(mirror ? mirrored(r.route()) : order(r.route()));
      if (bed.symmetric()) {
        images.add(mirror ? order(r.route()) : mirrored(r.route()));
      }
      Map<String, String> values = new LinkedHashMap<>(r.values());
      if (bed.symmetric()) {
        // Which of two images is shown is a matter of side, and holes may be drilled a little off.
        values.remove(RoutePreferences.STRING.name());
      }
      assertThat(all.put(images, values + " " + r.knotVariants())).isNull();
    }
    return all;
  }

  @Property(tries = 40)
  void routesMirrorWithTheLayout(@ForAll Layout layout, @ForAll RouteRequest request) {
    Bed bed = bed(layout);
    Bed image = bed(layout.mirrored());
    RouteResult routes = RouteSearch.search(bed, request);
    RouteResult images = RouteSearch.search(image, request);
    assertThat(images.status()).isEqualTo(routes.status());
    assertThat(images.orders()).isEqualTo(routes.orders());
    assertThat(classes(image, images, true)).isEqualTo(classes(bed, routes, false));
  }

  @Property(tries = 30)
  void sameQuestionSameAnswer(@ForAll Layout layout, @ForAll RouteRequest request) {
    RouteResult once = RouteSearch.search(bed(layout), request);
    RouteResult again = RouteSearch.search(bed(layout.toBuilder().build()), request);
    assertThat(again.ranked()).isEqualTo(once.ranked());
    assertThat(again.ranked().stream().map(r -> r.route().order()))
        .isEqualTo(once.ranked().stream().map(r -> r.route().order()).toList());
    assertThat(again.nodes()).isEqualTo(once.nodes());
    assertThat(again.obstacles()).isEqualTo(once.obstacles());
  }

  /** All orders, mirror images too. */
  private static Map<List<List<Pass>>, Integer> orders(Bed bed, RouteRequest request) {
    Map<List<List<Pass>>, Integer> all = new LinkedHashMap<>();
    for (RankedRoute r : RouteSearch.search(bed, request).ranked()) {
      all.put(order(r.route()), r.knotVariants());
      if (bed.symmetric()) {
        all.put(mirrored(r.route()), r.knotVariants());
      }
    }
    return all;
  }

  @Property(tries = 60)
  void higherLimitLosesNoRoute(
      @ForAll Layout layout,
      @ForAll RouteRequest request,
      @ForAll @IntRange(max = 2) int run,
      @ForAll @IntRange(max = 3) int knot) {
    Bed bed = bed(layout);
    Map<List<List<Pass>>, Integer> few = orders(bed, request);
    Map<List<List<Pass>>, Integer> more =
        orders(
            bed,
            request.toBuilder()
                .runLimit(request.runLimit() + run)
                .knotLimit(request.knotLimit() + knot)
                .build());
    assertThat(more.keySet()).containsAll(few.keySet());
    few.forEach((o, variants) -> assertThat(more.get(o)).isGreaterThanOrEqualTo(variants));
  }

  /** Crosses of another string: the orders in which no end strings both, and all of these. */
  @Property(tries = 40)
  void otherStringLeavesTheRoutesThatKeepThemApart(
      @ForAll Layout layout, @ForAll RouteRequest request) {
    Bed bed = bed(layout);
    RouteRequest alike = request.toBuilder().crossesOfOtherString(false).build();
    Map<List<List<Pass>>, Integer> apart = orders(bed, alike);
    apart.keySet().removeIf(o -> o.stream().anyMatch(RouteLawsTest::mixed));
    RouteRequest other = request.toBuilder().crossesOfOtherString(true).build();
    assertThat(orders(bed, other)).isEqualTo(apart);
  }

  /** Whatever is preferred, in whatever order: what does not depend on knots may stand anywhere. */
  @Property(tries = 200)
  void theBestByItselfIsTheFirstOfAll(
      @ForAll Layout layout, @ForAll RouteRequest request, @ForAll @IntRange(max = 50) int turn) {
    Bed bed = bed(layout);
    List<RoutePreference> turned = new ArrayList<>(RoutePreferences.standard());
    if (turn > 0) {
      Collections.shuffle(turned, new Random(turn));
    }
    RouteRequest own = request.toBuilder().preferences(turned).build();
    Optional<Route> first = RouteSearch.search(bed, own).best();
    Statistics.label("there is a route").collect(first.isPresent());
    assertThat(RouteSearch.best(bed, own)).isEqualTo(first);
  }

  private static boolean mixed(List<Pass> passes) {
    return passes.stream().map(p -> p.span().isMain()).distinct().count() > 1;
  }

  @Property(tries = 25)
  void searchThatGivesUpLaterLosesNoRoute(
      @ForAll Layout layout,
      @ForAll RouteRequest request,
      @ForAll @IntRange(min = 1, max = 300) int nodes,
      @ForAll @IntRange(max = 300) int more) {
    Bed bed = bed(layout);
    RouteRequest early = request.toBuilder().maxNodes(nodes).build();
    RouteRequest late = request.toBuilder().maxNodes(nodes + more).build();
    assertThat(orders(bed, late).keySet()).containsAll(orders(bed, early).keySet());
    RouteResult all = RouteSearch.search(bed, request);
    RouteResult some = RouteSearch.search(bed, early);
    assertThat(orders(bed, request).keySet()).containsAll(orders(bed, early).keySet());
    if (some.status() != RouteResult.Status.LIMIT_REACHED) {
      assertThat(some.status()).isEqualTo(all.status());
      assertThat(some.ranked()).isEqualTo(all.ranked());
    }
    assertThat(some.nodes()).isLessThanOrEqualTo(nodes);
  }

  /**
   * With everything lifted that is not named, the facts that are named still forbid every route;
   * lift any one of them too, and a route appears. The frame and the request are made anew without
   * what is lifted, and a constraint solver is asked beside the search.
   */
  @Property(tries = 100)
  void explanationOfAbsenceIsSmallest(@ForAll Layout layout, @ForAll RouteRequest request) {
    RouteResult result = RouteSearch.search(bed(layout), request);
    boolean absent = result.status() == RouteResult.Status.PROVEN_ABSENT;
    Statistics.label("no route")
        .collect(absent)
        .coverage(c -> c.check(true).percentage(p -> p > 15.0));
    if (!absent) {
      assertThat(result.obstacles()).isEmpty();
      return;
    }
    assertThat(ChocoRoutes.anyRoute(bed(layout), request)).isFalse();
    assertThat(result.obstacles()).isNotEmpty();
    assertThat(anyRouteWith(layout, request, result.obstacles())).isFalse();
    for (Obstacle o : result.obstacles()) {
      List<Obstacle> rest = new ArrayList<>(result.obstacles());
      rest.remove(o);
      assertThat(anyRouteWith(layout, request, rest)).as("without: %s", o).isTrue();
      if (layout.crossesCount() <= SOLVED) {
        assertThat(ChocoRoutes.anyRoute(bed(only(layout, rest)), only(request, rest)))
            .as("a constraint solver, without: %s", o)
            .isTrue();
      }
    }
  }

  /**
   * Lift what is said to be lifted, all of it, and a route appears; leave one out, and none does.
   */
  @Property(tries = 60)
  void whatIsSaidToBeLiftedIsNeeded(@ForAll Layout layout, @ForAll RouteRequest request) {
    List<Obstacle> lift = RouteSearch.search(bed(layout), request).lift();
    if (lift.isEmpty()) {
      return;
    }
    assertThat(anyRouteWithout(layout, request, lift)).isTrue();
    for (Obstacle o : lift) {
      List<Obstacle> rest = new ArrayList<>(lift);
      rest.remove(o);
      assertThat(anyRouteWithout(layout, request, rest)).as("with %s", o).isFalse();
    }
  }

  private static boolean anyRouteWithout(
      Layout layout, RouteRequest request, List<Obstacle> lifted) {
    List<NoRun> forbidden = new ArrayList<>();
    for (int i = 0; i < layout.noRun().size(); i++) {
      if (!at(lifted, "/holes/noRun/" + i)) {
        forbidden.add(layout.noRun().get(i));
      }
    }
    Layout freed =
        layout.toBuilder()
            .noRun(forbidden)
            .aroundTheWorld(layout.aroundTheWorld() || at(lifted, "/aroundTheWorld"))
            .mainsStart(at(lifted, "/mains/start") ? Optional.empty() : layout.mainsStart())
            .build();
    if (at(lifted, "/holes/tieOff")) {
      freed = everyHoleTakesAKnot(freed);
    }
    RouteRequest.Builder free =
        RouteRequest.builder()
            .runLimit(says(lifted, "A run ") ? 1000 : request.runLimit())
            .knotLimit(says(lifted, "A knot ") ? 1000 : request.knotLimit())
            .startingClamps(says(lifted, "The bench ") ? 1 : request.startingClamps())
            .crossesOfOtherString(request.crossesOfOtherString() && !says(lifted, "The crosses "));
    if (request.pieces().isPresent() && !says(lifted, "Only routes ")) {
      free.pieces(request.pieces().getAsInt());
    }
    if (request.direction().isPresent() && !says(lifted, "Only crosses ")) {
      free.direction(request.direction().get());
    }
    if (request.mainsStart().isPresent() && !says(lifted, "Only mains ")) {
      free.mainsStart(request.mainsStart().get());
    }
    return RouteSearch.anyRoute(bed(freed), free.build(), Set.of());
  }

  /** Whether there is a route on a frame, and for a request, in which these facts alone hold. */
  private static boolean anyRouteWith(Layout layout, RouteRequest request, List<Obstacle> facts) {
    return RouteSearch.anyRoute(bed(only(layout, facts)), only(request, facts), Set.of());
  }

  private static Layout only(Layout layout, List<Obstacle> facts) {
    List<NoRun> forbidden = new ArrayList<>();
    for (int i = 0; i < layout.noRun().size(); i++) {
      String pointer = "/holes/noRun/" + i;
      if (facts.stream().anyMatch(o -> o.pointer().equals(pointer))) {
        forbidden.add(layout.noRun().get(i));
      }
    }
    Layout freed =
        layout.toBuilder()
            .noRun(forbidden)
            .aroundTheWorld(layout.aroundTheWorld() || !at(facts, "/aroundTheWorld"))
            .mainsStart(at(facts, "/mains/start") ? layout.mainsStart() : Optional.empty())
            .build();
    return at(facts, "/holes/tieOff") ? freed : everyHoleTakesAKnot(freed);
  }

  private static boolean at(List<Obstacle> facts, String pointer) {
    return facts.stream().anyMatch(o -> o.pointer().equals(pointer));
  }

  private static boolean says(List<Obstacle> facts, String beginning) {
    return facts.stream().anyMatch(o -> o.what().startsWith(beginning));
  }

  private static Layout everyHoleTakesAKnot(Layout layout) {
    Ring ring = Ring.of(layout);
    List<HoleRef> all = new ArrayList<>();
    Map<HoleRef, Integer> bores = new LinkedHashMap<>();
    for (Side side : Side.values()) {
      for (HoleId hole : ring.list(side)) {
        if (!ring.isBlocked(hole)) {
          all.add(HoleRef.of(hole));
          bores.put(HoleRef.of(hole), 3);
        }
      }
    }
    return layout.toBuilder().tieOff(all).bore(bores).build();
  }

  private static RouteRequest only(RouteRequest r, List<Obstacle> facts) {
    RouteRequest.Builder free =
        RouteRequest.builder()
            .runLimit(says(facts, "A run ") ? r.runLimit() : 1000)
            .knotLimit(says(facts, "A knot ") ? r.knotLimit() : 1000)
            .startingClamps(says(facts, "The bench ") ? r.startingClamps() : 1)
            .crossesOfOtherString(r.crossesOfOtherString() && says(facts, "The crosses "));
    if (r.pieces().isPresent() && says(facts, "Only routes ")) {
      free.pieces(r.pieces().getAsInt());
    }
    if (r.direction().isPresent() && says(facts, "Only crosses ")) {
      free.direction(r.direction().get());
    }
    if (r.mainsStart().isPresent() && says(facts, "Only mains ")) {
      free.mainsStart(r.mainsStart().get());
    }
    return free.build();
  }
}
