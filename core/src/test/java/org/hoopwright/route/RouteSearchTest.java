package org.hoopwright.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.frame.Layout;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.LayoutGenerator;
import org.hoopwright.testing.LayoutGenerator.Feature;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;

/** Single points of the search; the whole is judged by brute force and by laws. */
class RouteSearchTest {

  private static Bed bed(Layout layout) {
    return StatedAssignment.assign(layout).bed().orElseThrow();
  }

  @Test
  void variantsKeepTheSideWhereTheCrossesBegin() {
    // Two orders of passes read alike in the short notation when only the side differs.
    Bed bed = bed(Willowbank.hundred().build());
    RouteRequest request = RouteRequest.builder().pieces(2).build();
    Route best = RouteSearch.search(bed, request).best().orElseThrow();

    List<Route> variants = RouteSearch.knotVariants(bed, request, best);

    assertThat(variants).hasSizeGreaterThan(1).startsWith(best);
    assertThat(variants)
        .allSatisfy(
            v ->
                assertThat(v.end(EndName.FINISH).orElseThrow().passes())
                    .isEqualTo(best.end(EndName.FINISH).orElseThrow().passes()));
  }

  @Test
  void variantsKeepToWhatTheMakerForbids() {
    Bed free = bed(Willowbank.hundred().noRun(List.of()).build());
    Bed forbidding = bed(Willowbank.hundred().noRun(List.of()).aroundTheWorld(false).build());
    RouteRequest request = RouteRequest.builder().pieces(1).build();
    Route around =
        RouteSearch.search(free, request).ranked().stream()
            .map(RankedRoute::route)
            .filter(r -> r.families().contains(Family.AROUND_THE_WORLD))
            .findFirst()
            .orElseThrow();

    assertThat(RouteSearch.knotVariants(free, request, around)).contains(around);
    assertThat(RouteSearch.knotVariants(forbidding, request, around)).isEmpty();
  }

  @Test
  void beforeTheFirstCrossMainsDoNotTurnBack() {
    // On so short a side a run could reach from one end of the hoop to the other.
    Bed bed =
        bed(LayoutGenerator.layout(Draw.from(2), 4, 5, Set.of(Feature.SKIPS, Feature.UNEVEN)));
    RouteRequest request = RouteRequest.builder().runLimit(5).build();

    assertThat(RouteSearch.search(bed, request).ranked())
        .hasSizeGreaterThan(100)
        .allSatisfy(r -> assertThat(mainsBeforeACrossAreOpeningMains(r.route())).isTrue());
  }

  private static boolean mainsBeforeACrossAreOpeningMains(Route route) {
    for (Moment m : route.order()) {
      if (m.what() == Moment.What.PASS) {
        Pass pass = route.end(m.end()).orElseThrow().passes().get(m.pass());
        if (pass.span().isCross()) {
          return true;
        }
        if (m.pass() >= route.opening(m.end())) {
          return false;
        }
      }
    }
    return true;
  }
}
