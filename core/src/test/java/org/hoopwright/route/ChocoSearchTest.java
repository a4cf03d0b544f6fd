package org.hoopwright.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hoopwright.bed.Bed;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.testing.BruteForceRoutes;
import org.hoopwright.testing.BruteForceRoutes.Found;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.LayoutGenerator;
import org.hoopwright.testing.LayoutGenerator.Feature;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;

/** On full-size frames the search finds what a constraint solver finds, and the same best. */
class ChocoSearchTest {

  private static List<List<Pass>> order(Route r) {
    return List.of(
        r.passesFrom(org.hoopwright.geometry.Side.LEFT),
        r.passesFrom(org.hoopwright.geometry.Side.RIGHT),
        r.end(EndName.FINISH).map(StringEnd::passes).orElse(List.of()));
  }

  private static List<Pass> mirrored(List<Pass> passes) {
    return passes.stream()
        .map(p -> new Pass(p.span().mirrored(), p.from().mirrored(), p.to().mirrored()))
        .toList();
  }

  /** Compares orders and, where asked, the best; how many orders there are. */
  private static int compare(Bed bed, RouteRequest request, boolean best) {
    Set<List<List<Pass>>> expected = new HashSet<>();
    List<Route> routes = new ArrayList<>();
    for (Found order : ChocoRoutes.orders(bed, request)) {
      List<Found> knotted = BruteForceRoutes.knotted(bed, request, order);
      if (!knotted.isEmpty()) {
        expected.add(order.passes());
        if (best) {
          knotted.forEach(f -> routes.add(BruteForceSearchTest.route(bed, f)));
        }
      }
    }
    RouteResult result = RouteSearch.search(bed, request);
    Set<List<List<Pass>>> orders = new HashSet<>();
    for (RankedRoute ranked : result.ranked()) {
      List<List<Pass>> o = order(ranked.route());
      orders.add(o);
      if (bed.symmetric()) {
        orders.add(List.of(mirrored(o.get(1)), mirrored(o.get(0)), mirrored(o.get(2))));
      }
    }
    assertThat(orders).isEqualTo(expected);
    assertThat(result.orders()).isEqualTo(expected.size());
    if (best && !routes.isEmpty()) {
      Comparator<Route> ranking = BruteForceSearchTest.ranking(bed, request);
      Route wanted = routes.stream().min(ranking).orElseThrow();
      assertThat(ranking.compare(result.best().orElseThrow(), wanted)).isZero();
    }
    return expected.size();
  }

  @Test
  void ordinaryFramesInOnePiece() {
    RouteRequest request = RouteRequest.builder().pieces(1).build();
    Bed sixteen = BruteForceSearchTest.bed(Willowbank.hundred().noRun(List.of()).build());
    assertThat(compare(sixteen, request, true)).isEqualTo(72); // 18 an end and a direction
    assertThat(compare(BruteForceSearchTest.bed(Willowbank.ninetyFive().build()), request, true))
        .isEqualTo(72);
    Bed forbidden = BruteForceSearchTest.bed(Willowbank.hundred().build());
    compare(forbidden, request, true);
  }

  @Test
  void ordinaryFrameInTwoPieces() {
    RouteRequest request =
        RouteRequest.builder()
            .pieces(2)
            .mainsStart(End.THROAT)
            .direction(Direction.HEAD_TO_THROAT)
            .knotLimit(4)
            .build();
    Bed bed = BruteForceSearchTest.bed(Willowbank.hundred().noRun(List.of()).build());
    assertThat(compare(bed, request, false)).isGreaterThan(20);
  }

  @Test
  void drawnFramesOfFullSize() {
    Draw draw = Draw.from(7);
    int orders = 0;
    for (int i = 0; i < 4; i++) {
      Set<Feature> features = new LinkedHashSet<>();
      for (Feature feature : Feature.values()) {
        if (feature != Feature.DRILLED && draw.chance(30)) {
          features.add(feature);
        }
      }
      Bed bed =
          BruteForceSearchTest.bed(
              LayoutGenerator.layout(draw, draw.between(7, 11), draw.between(15, 22), features));
      RouteRequest request = RouteRequest.builder().pieces(1).runLimit(draw.between(3, 5)).build();
      orders += compare(bed, request, true);
    }
    assertThat(orders).isGreaterThan(20);
  }
}
