package org.hoopwright.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.LayoutGenerator;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the trade knows about orders of stringing, with the source of each fact. */
class TradeFactsTest {

  /** 16 x 19 with two skips at each end, every run allowed. */
  private static Bed sixteen() {
    return StatedAssignment.assign(Willowbank.hundred().noRun(List.of()).build())
        .bed()
        .orElseThrow();
  }

  /** 18 x 20 with two skips at each end. */
  private static Bed eighteen() {
    return StatedAssignment.assign(Willowbank.ninetyFive().build()).bed().orElseThrow();
  }

  private static Bed plain(int mains, int crosses) {
    return StatedAssignment.assign(
            LayoutGenerator.layout(Draw.from(1), mains / 2, crosses, Set.of()))
        .bed()
        .orElseThrow();
  }

  private static RouteRequest onePiece(End start) {
    return RouteRequest.builder().pieces(1).mainsStart(start).build();
  }

  private static RouteRequest onePiece(End start, Direction direction) {
    return onePiece(start).toBuilder().direction(direction).build();
  }

  private static List<Route> routes(Bed bed, RouteRequest request) {
    RouteResult result = RouteSearch.search(bed, request);
    assertThat(result.status()).isEqualTo(RouteResult.Status.FOUND);
    return result.ranked().stream().map(RankedRoute::route).toList();
  }

  private static List<String> passes(List<Route> routes) {
    return routes.stream().map(RouteNotation::passes).toList();
  }

  private static Pass lastMain(Route route) {
    // The last main of an end that opens with all n.
    return Stream.of(EndName.LONG, EndName.SHORT)
        .filter(e -> route.opening(e) == mains(route))
        .map(e -> route.end(e).orElseThrow().passes().get(mains(route) - 1))
        .findFirst()
        .orElseThrow();
  }

  private static int mains(Route route) {
    return Math.max(route.opening(EndName.LONG), route.opening(EndName.SHORT));
  }

  /**
   * The mains end where they started when a side has an even number, else at the other end (Racquet
   * Sports Industry, "Wrong side short side revisited", 2006/01, and a racket-service blog, 2020:
   * the 7th of 8 comes out at the head).
   */
  @ParameterizedTest
  @CsvSource({"12,true", "14,false", "16,true", "18,false", "20,true", "22,false"})
  void mainsEndWhereTheyStartedWhenASideHasAnEvenNumber(int mains, boolean same) {
    for (End start : End.values()) {
      RouteRequest request = RouteRequest.builder().mainsStart(start).pieces(2).build();
      Route best = routes(plain(mains, 19), request).get(0);
      HoleId exit = lastMain(best).to();
      assertThat(exit.end()).isEqualTo(same ? start : start.other());
    }
  }

  /** Agrees with the parity above: of 8 mains from the throat, the 7th comes out at the head. */
  @Test
  void seventhOfEightMainsComesOutAtTheHead() {
    Route best = routes(sixteen(), onePiece(End.THROAT, Direction.HEAD_TO_THROAT)).get(0);
    List<Pass> shortEnd = best.end(EndName.SHORT).orElseThrow().passes();
    assertThat(shortEnd.get(6).span()).isEqualTo(SpanId.main(Side.LEFT, 7));
    assertThat(shortEnd.get(6).to().end()).isEqualTo(End.HEAD);
  }

  /**
   * Where the mains end at the throat there are three ways: crosses from the throat, two pieces, or
   * around-the-world (stringer blog, 2009/12).
   */
  @Test
  void sixteenMainsFromTheThroatGoUpAroundOrInTwoPieces() {
    RouteRequest request = RouteRequest.builder().mainsStart(End.THROAT).build();
    Set<String> ways = new TreeSet<>();
    for (Route route : routes(sixteen(), request)) {
      ways.add(
          route.pieces().size() == 2
              ? "two pieces"
              : route.families().contains(Family.AROUND_THE_WORLD)
                  ? "around-the-world"
                  : route.direction() == Direction.THROAT_TO_HEAD ? "from the throat" : "else");
    }
    assertThat(ways).containsExactlyInAnyOrder("two pieces", "around-the-world", "from the throat");
  }

  /**
   * Variant A (Racquet Sports Industry, "Wrong side short side revisited", 2006/01, and a coach
   * blog, the same order): the short end all its mains but one, then the top cross; the long end
   * all its mains, the bottom cross, the main left out, and crosses 2 … N−1.
   */
  @ParameterizedTest
  @MethodSource("framesWhoseMainsEndAtTheThroat")
  void publishedAroundTheWorldIsFound(int mains, int crosses) {
    Bed bed =
        mains == 16 && crosses == 19
            ? sixteen()
            : mains == 18 && crosses == 20 ? eighteen() : plain(mains, crosses);
    int n = mains / 2;
    End start = n % 2 == 0 ? End.THROAT : End.HEAD;
    String wanted =
        "short L1-L%d X1 | long R1-R%d X%d L%d X2-X%d".formatted(n - 1, n, crosses, n, crosses - 1);
    List<Route> all = routes(bed, onePiece(start, Direction.HEAD_TO_THROAT));
    List<Route> same = all.stream().filter(r -> RouteNotation.passes(r).equals(wanted)).toList();
    assertThat(same).as("%s among %s", wanted, passes(all)).hasSize(1);
    Route route = same.get(0);
    assertThat(route.families()).containsExactlyInAnyOrder(Family.AROUND_THE_WORLD, Family.BOX);
    List<Pass> longEnd = route.end(EndName.LONG).orElseThrow().passes();
    // The bottom cross runs from the long side to the short one, the main from throat to head.
    assertThat(longEnd.get(n).from().side()).isEqualTo(Side.RIGHT);
    assertThat(longEnd.get(n + 1).from().end()).isEqualTo(End.THROAT);
    // Cross N−1 ends on the short side when N is even, on the long side when it is odd (computed:
    // N−2 crosses that begin on the short side).
    assertThat(longEnd.get(longEnd.size() - 1).to().side())
        .isEqualTo(crosses % 2 == 0 ? Side.LEFT : Side.RIGHT);
  }

  static Stream<Arguments> framesWhoseMainsEndAtTheThroat() {
    return Stream.concat(
        IntStream.rangeClosed(15, 22).mapToObj(c -> Arguments.of(16, c)),
        Stream.of(
            Arguments.of(12, 16),
            Arguments.of(14, 18),
            Arguments.of(18, 20),
            Arguments.of(20, 19),
            Arguments.of(22, 21)));
  }

  /**
   * On one frame people string one top cross and two bottom crosses before the last mains, or two
   * and one (Tennis Industry, "ATW and Box Patterns", 2015/07). Which of the two depends on the end
   * where the mains start (computed).
   */
  @Test
  void oneTopAndTwoBottomCrossesOrTwoAndOneMayBeEarly() {
    assertThat(earlyCrosses(End.THROAT)).contains("2 top, 1 bottom");
    assertThat(earlyCrosses(End.HEAD)).contains("1 top, 2 bottom");
  }

  private static Set<String> earlyCrosses(End start) {
    Set<String> early = new TreeSet<>();
    for (Route route : routes(sixteen(), onePiece(start, Direction.HEAD_TO_THROAT))) {
      List<SpanId> spans = inTimeOrder(route);
      int lastMain =
          Math.max(
              spans.indexOf(SpanId.main(Side.LEFT, 8)), spans.indexOf(SpanId.main(Side.RIGHT, 8)));
      List<SpanId> crosses = spans.subList(0, lastMain).stream().filter(SpanId::isCross).toList();
      long top = crosses.stream().filter(x -> x.number() <= 2).count();
      early.add(top + " top, " + (crosses.size() - top) + " bottom");
    }
    return early;
  }

  private static List<SpanId> inTimeOrder(Route route) {
    return route.order().stream()
        .filter(m -> m.what() == Moment.What.PASS)
        .map(m -> route.end(m.end()).orElseThrow().passes().get(m.pass()).span())
        .toList();
  }

  /**
   * One way round has both sides strung to the last main but one, with both ends at the head
   * (student tutorial "Around the World (ATW)").
   */
  @Test
  void bothOuterMainsMayWait() {
    List<Route> both =
        routes(sixteen(), onePiece(End.THROAT, Direction.HEAD_TO_THROAT)).stream()
            .filter(r -> r.opening(EndName.SHORT) == 7 && r.opening(EndName.LONG) == 7)
            .toList();
    assertThat(both)
        .isNotEmpty()
        .allSatisfy(
            r -> {
              for (EndName end : List.of(EndName.SHORT, EndName.LONG)) {
                Pass last = r.end(end).orElseThrow().passes().get(6);
                assertThat(last.to().end()).isEqualTo(End.HEAD);
              }
              assertThat(r.families()).contains(Family.AROUND_THE_WORLD);
            });
  }

  /**
   * With an even number of crosses the bottom one is woven opposite to the top one, with an odd
   * number the same (Racquet Sports Industry, "Wrong side short side revisited", 2006/01, and
   * "Quick Box Pattern", 2007/07).
   */
  @ParameterizedTest
  @ValueSource(ints = {15, 16, 17, 18, 19, 20, 21, 22})
  void bottomCrossIsWovenLikeTheTopOneWhenTheNumberIsOdd(int crosses) {
    Bed bed = plain(16, crosses);
    for (SpanId main : bed.mainsLeftToRight()) {
      boolean same =
          bed.crossOver(SpanId.cross(1), main) == bed.crossOver(SpanId.cross(crosses), main);
      assertThat(same).isEqualTo(crosses % 2 == 1);
    }
  }

  /** A plain order stands first wherever there is one (computed, from the ranking's wording). */
  @Test
  void plainStandsFirstWherePlainIsPossible() {
    int plain = 0;
    for (Bed bed : List.of(sixteen(), eighteen())) {
      for (End start : End.values()) {
        for (Direction direction : Direction.values()) {
          for (int pieces = 1; pieces <= 2; pieces++) {
            RouteRequest request = onePiece(start, direction).toBuilder().pieces(pieces).build();
            List<Route> all = routes(bed, request);
            if (all.stream().anyMatch(r -> r.measures().departures() == 0)) {
              plain++;
              assertThat(all.get(0).measures().departures()).isZero();
              assertThat(all.get(0).families()).isEmpty();
            }
          }
        }
      }
    }
    // In two pieces nearly all, where a knot is near; in one piece those whose mains end where the
    // crosses begin.
    assertThat(plain).isEqualTo(11);
  }

  /** Computed with a throw-away enumeration: 18 orders of passes, 9 up to mirror images. */
  @Test
  void ordinarySkipFramesHaveEighteenOrders() {
    for (Bed bed : List.of(sixteen(), eighteen())) {
      for (End start : End.values()) {
        for (Direction direction : Direction.values()) {
          RouteResult result = RouteSearch.search(bed, onePiece(start, direction));
          assertThat(result.orders()).as("%s %s", start, direction).isEqualTo(18);
          assertThat(result.ranked()).hasSize(9);
        }
      }
    }
  }

  /** Computed with a throw-away enumeration. */
  @Test
  void bestOnePieceFromTheThroatLeavesOneMainForLater() {
    assertThat(passes(routes(sixteen(), onePiece(End.THROAT, Direction.HEAD_TO_THROAT))).get(0))
        .isEqualTo("short L1-L7 | long R1-R8 X19 L8 X1-X18");
  }

  /** With pieces free and crosses from the head, nothing needs to go round in two pieces. */
  @Test
  void twoPiecesComeFirstWhereOnePieceMustGoRound() {
    RouteRequest request =
        RouteRequest.builder().mainsStart(End.THROAT).direction(Direction.HEAD_TO_THROAT).build();
    assertThat(routes(sixteen(), request).get(0).pieces()).hasSize(2);
    // Where the mains end at the head, one piece needs two knots fewer.
    RouteRequest head = request.toBuilder().mainsStart(End.HEAD).build();
    assertThat(routes(sixteen(), head).get(0).pieces()).hasSize(1);
  }

  /** Two knots in one piece, four in two (Tennis Industry, "ATW and Box Patterns", 2015/07). */
  @Test
  void onePieceHasTwoKnotsAndTwoPiecesHaveFour() {
    for (Bed bed : List.of(sixteen(), eighteen())) {
      for (Route route : routes(bed, RouteRequest.defaults())) {
        int knots = route.pieces().size() == 1 ? 2 : 4;
        assertThat(route.measures().knots()).isEqualTo(knots);
        assertThat(route.pieces().stream().flatMap(p -> p.ends().stream()).map(StringEnd::finish))
            .hasSize(knots)
            .doesNotHaveDuplicates();
        assertThat(route.order().stream().filter(m -> m.what() == Moment.What.KNOT)).hasSize(knots);
      }
    }
  }

  /**
   * Crosses strung 1 … N from one side end on the other side when N is odd, on the same when it is
   * even (computed).
   */
  @ParameterizedTest
  @ValueSource(ints = {15, 16, 17, 18, 19, 20, 21, 22})
  void crossesEndOnTheOtherSideWhenTheirNumberIsOdd(int crosses) {
    RouteRequest request =
        RouteRequest.builder().pieces(2).direction(Direction.HEAD_TO_THROAT).build();
    List<Pass> passes =
        routes(plain(16, crosses), request).stream()
            .map(r -> r.end(EndName.FINISH).orElseThrow().passes())
            .filter(p -> p.size() == crosses)
            .findFirst()
            .orElseThrow();
    boolean same = passes.get(0).from().side() == passes.get(crosses - 1).to().side();
    assertThat(same).isEqualTo(crosses % 2 == 0);
  }
}
