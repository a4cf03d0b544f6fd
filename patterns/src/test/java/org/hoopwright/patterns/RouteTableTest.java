package org.hoopwright.patterns;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.hoopwright.bed.Bed;
import org.hoopwright.bench.Job;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.Layout;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.RouteNotation;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteResult;
import org.hoopwright.route.RouteSearch;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;

class RouteTableTest {

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void listsEveryRouteWithItsReason() {
    Layout layout = Willowbank.hundred().build();
    RouteResult result = Plans.routes(layout, Job.standard());
    String table = RouteTable.of(Plans.bed(layout), result, Integer.MAX_VALUE);

    assertThat(table.lines()).allMatch(l -> l.length() <= 100).noneMatch(l -> l.endsWith(" "));
    String flat = flat(table);
    assertThat(flat).contains("The rules allow " + result.ranked().size() + " classes");
    for (int i = 0; i < result.ranked().size(); i++) {
      RankedRoute r = result.ranked().get(i);
      assertThat(flat)
          .contains(
              RouteTable.family(r.route()) + ", mains from the " + r.route().mainsStart().word())
          .contains(RouteNotation.of(r.route()))
          .contains(r.why());
    }
    assertThat(table)
        .containsPattern(
            "rank +direction +departures +covered +doubled +knots +longest run +string\n")
        .containsPattern("\n +1 +head-to-throat +0 ");
  }

  /** The order that the rules allow first for a frame whose mains end at the throat. */
  @Test
  void putsTheBestFirst() {
    Bed bed = Plans.bed(Willowbank.hundred().mainsStart(org.hoopwright.frame.End.THROAT).build());
    RouteRequest request =
        RouteRequest.builder().pieces(1).direction(Direction.HEAD_TO_THROAT).build();
    String table = RouteTable.of(bed, RouteSearch.search(bed, request), 50);

    assertThat(table)
        .contains(
            "1  around-the-world, mains from the throat: short L1-L7 | long R1-R8 X19 L8 X1-X18");
  }

  @Test
  void listsNoMoreThanAskedForAndSaysSo() {
    Layout layout = Willowbank.hundred().build();
    RouteResult result = Plans.routes(layout, Job.standard());
    String table = RouteTable.of(Plans.bed(layout), result, 2);

    assertThat(table).contains("The first 2 are listed.").contains("\n2  ").doesNotContain("\n3  ");
    assertThatThrownBy(() -> RouteTable.of(Plans.bed(layout), result, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("limit (0)");
  }

  @Test
  void neverCallsALimitedSearchComplete() {
    Bed bed = Plans.bed(Willowbank.hundred().build());
    RouteResult result = RouteSearch.search(bed, RouteRequest.builder().maxNodes(5).build());
    String table = RouteTable.of(bed, result, 10);

    assertThat(result.status()).isEqualTo(RouteResult.Status.LIMIT_REACHED);
    assertThat(flat(table)).contains("stopped at its limit of 5 nodes").doesNotContain("are all");
  }

  @Test
  void showsTheMakersColumnOnlyWhereTheMakerAsks() {
    Layout plain = Willowbank.hundred().build();
    Layout asked = Willowbank.hundred().direction(Direction.THROAT_TO_HEAD).build();

    assertThat(RouteTable.of(Plans.bed(plain), Plans.routes(plain, Job.standard()), 3))
        .doesNotContain("maker");
    assertThat(RouteTable.of(Plans.bed(asked), Plans.routes(asked, Job.standard()), 3))
        .contains("rank  maker  direction");
  }
}
