package org.hoopwright.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;

/** Good routes pass, and a route with one thing wrong does not. */
class RouteCheckTest {

  private static final Bed BED =
      StatedAssignment.assign(Willowbank.hundred().noRun(List.of()).build()).bed().orElseThrow();
  private static final RouteRequest REQUEST = RouteRequest.defaults();

  private static Route plain() {
    return route("short L1-L8 | long R1-R8 X19-X1");
  }

  private static Route around() {
    return route("short L1-L7 X1 | long R1-R8 X19 L8 X2-X18");
  }

  private static Route twoPieces() {
    return route("short L1-L8 | long R1-R8 | finish X1-X19");
  }

  private static Route route(String passes) {
    return RouteSearch.search(BED, REQUEST).ranked().stream()
        .map(RankedRoute::route)
        .filter(r -> r.mainsStart() == End.THROAT && RouteNotation.passes(r).equals(passes))
        .findFirst()
        .orElseThrow();
  }

  private static List<Violation.Rule> rules(Route route) {
    return rules(BED, route, REQUEST);
  }

  private static List<Violation.Rule> rules(Bed bed, Route route, RouteRequest request) {
    return RouteCheck.check(bed, route, request).stream().map(Violation::rule).distinct().toList();
  }

  /** A route with another end in place of the one of that name. */
  private static Route with(Route r, EndName name, UnaryOperator<StringEnd> change) {
    return new Route(
        r.mainsStart(),
        r.direction(),
        r.shortSide(),
        r.pieces().stream()
            .map(
                p ->
                    new Piece(
                        p.role(),
                        p.ends().stream()
                            .map(e -> e.name() == name ? change.apply(e) : e)
                            .toList()))
            .toList(),
        r.opening(EndName.SHORT),
        r.opening(EndName.LONG),
        r.order(),
        r.families(),
        r.measures());
  }

  private static Route withOrder(Route r, UnaryOperator<List<Moment>> change) {
    return new Route(
        r.mainsStart(),
        r.direction(),
        r.shortSide(),
        r.pieces(),
        r.opening(EndName.SHORT),
        r.opening(EndName.LONG),
        change.apply(new ArrayList<>(r.order())),
        r.families(),
        r.measures());
  }

  private static StringEnd passes(StringEnd e, UnaryOperator<List<Pass>> change) {
    return new StringEnd(
        e.name(), change.apply(new ArrayList<>(e.passes())), e.startingClamp(), e.finish());
  }

  private static StringEnd knot(StringEnd e, String hole, String anchor) {
    return new StringEnd(
        e.name(),
        e.passes(),
        e.startingClamp(),
        new Knot(e.finish().kind(), HoleId.of(hole), SpanId.of(anchor)));
  }

  private static Pass reversed(Pass p) {
    return new Pass(p.span(), /* from= */ p.to(), /* to= */ p.from());
  }

  @Test
  void everyRouteOfAnOrdinaryFramePasses() {
    List<RankedRoute> ranked = RouteSearch.search(BED, REQUEST).ranked();

    assertThat(ranked).hasSizeGreaterThan(9);
    for (RankedRoute r : ranked) {
      for (Route variant : RouteSearch.knotVariants(BED, REQUEST, r.route())) {
        assertThat(RouteCheck.check(BED, variant, REQUEST)).as("%s", variant).isEmpty();
      }
    }
  }

  @Test
  void twoPassesSwappedLeaveNoRun() {
    Route wrong =
        with(
            plain(),
            EndName.LONG,
            e ->
                passes(
                    e,
                    list -> {
                      Collections.swap(list, 12, 14);
                      return list;
                    }));

    assertThat(rules(wrong)).contains(Violation.Rule.CROSSES);
  }

  @Test
  void aPassTurnedRoundLeavesNoRun() {
    Route wrong =
        with(
            plain(),
            EndName.LONG,
            e ->
                passes(
                    e,
                    list -> {
                      list.set(12, reversed(list.get(12)));
                      return list;
                    }));

    assertThat(rules(wrong)).contains(Violation.Rule.RUNS);
  }

  @Test
  void aMainTurnedRoundIsNoOpeningMain() {
    Route wrong =
        with(
            plain(),
            EndName.SHORT,
            e ->
                passes(
                    e,
                    list -> {
                      list.set(2, reversed(list.get(2)));
                      return list;
                    }));

    assertThat(rules(wrong)).contains(Violation.Rule.MAINS);
  }

  @Test
  void aSpanStrungTwiceIsMissedElsewhere() {
    Route wrong =
        with(
            plain(),
            EndName.LONG,
            e ->
                passes(
                    e,
                    list -> {
                      list.set(12, list.get(14));
                      return list;
                    }));

    assertThat(rules(wrong)).contains(Violation.Rule.EVERY_SPAN_ONCE, Violation.Rule.HOLES);
  }

  @Test
  void aKnotNeedsATieOffHoleNearByAndAnAnchor() {
    Route good = around();

    assertThat(rules(with(good, EndName.SHORT, e -> knot(e, "R4H", "R4"))))
        .contains(Violation.Rule.KNOTS);
    assertThat(rules(with(good, EndName.SHORT, e -> knot(e, "R12T", "X12"))))
        .contains(Violation.Rule.KNOTS);
    assertThat(rules(with(good, EndName.SHORT, e -> knot(e, "R5H", "L5"))))
        .containsExactly(Violation.Rule.KNOTS);
    assertThat(rules(with(good, EndName.SHORT, e -> knot(e, "L5H", "L5"))))
        .contains(Violation.Rule.KNOTS);
    assertThat(rules(with(good, EndName.SHORT, e -> knot(e, "R99H", "R5"))))
        .containsExactly(Violation.Rule.FORM);
    assertThat(rules(with(good, EndName.SHORT, e -> knot(e, "R5H", "X99"))))
        .containsExactly(Violation.Rule.FORM);
  }

  @Test
  void twoKnotsDoNotFitInOneHole() {
    Route good = plain();
    Knot other = good.end(EndName.SHORT).orElseThrow().finish();

    assertThat(
            rules(
                with(
                    good,
                    EndName.LONG,
                    e -> knot(e, other.hole().toString(), other.anchor().toString()))))
        .contains(Violation.Rule.KNOTS);
  }

  @Test
  void aStartingClampStaysOutOfTheHeadZone() {
    Route good = twoPieces();
    HoleId entry = good.end(EndName.FINISH).orElseThrow().passes().get(0).from();
    Route wrong =
        with(
            good,
            EndName.START,
            e ->
                new StringEnd(
                    e.name(),
                    e.passes(),
                    Optional.of(entry),
                    new Knot(Knot.Kind.TIE_OFF, e.finish().hole(), e.finish().anchor())));
    int at = wrong.order().indexOf(new Moment(1, EndName.START, Moment.What.KNOT, /* pass= */ -1));
    Route clamped =
        withOrder(
            wrong,
            list -> {
              list.add(at + 4, list.get(at));
              list.set(at, new Moment(1, EndName.START, Moment.What.CLAMP, -1));
              return list;
            });

    assertThat(rules(wrong)).containsExactly(Violation.Rule.FORM);
    assertThat(rules(clamped)).contains(Violation.Rule.KNOTS).doesNotContain(Violation.Rule.FORM);
    assertThat(rules(BED, clamped, REQUEST.toBuilder().startingClamps(0).build()))
        .contains(Violation.Rule.KNOTS);
  }

  @Test
  void theShortEndIsTiedInTime() {
    Moment knot = new Moment(0, EndName.SHORT, Moment.What.KNOT, -1);

    for (Route good : List.of(plain(), around(), twoPieces())) {
      Route late =
          withOrder(
              good,
              list -> {
                list.remove(knot);
                list.add(list.size() - 1, knot);
                return list;
              });
      assertThat(rules(late)).contains(Violation.Rule.TIME_ORDER);
    }
  }

  @Test
  void nothingIsDoneBeforeTheOpeningMains() {
    Route wrong =
        withOrder(
            around(),
            list -> {
              int first = list.indexOf(new Moment(0, EndName.SHORT, Moment.What.PASS, 7));
              Collections.swap(list, first, first - 1);
              return list;
            });

    assertThat(rules(wrong)).contains(Violation.Rule.TIME_ORDER);
  }

  @Test
  void whatWasAskedCounts() {
    Route good = around();
    Bed forbidding =
        StatedAssignment.assign(Willowbank.hundred().noRun(List.of()).aroundTheWorld(false).build())
            .bed()
            .orElseThrow();
    Bed fromTheHead =
        StatedAssignment.assign(Willowbank.hundred().noRun(List.of()).mainsStart(End.HEAD).build())
            .bed()
            .orElseThrow();

    assertThat(rules(forbidding, good, REQUEST)).containsExactly(Violation.Rule.REQUEST);
    assertThat(rules(fromTheHead, good, REQUEST)).containsExactly(Violation.Rule.REQUEST);
    for (RouteRequest other :
        List.of(
            REQUEST.toBuilder().pieces(2).build(),
            REQUEST.toBuilder().crossesOfOtherString(true).build(),
            REQUEST.toBuilder().direction(Direction.THROAT_TO_HEAD).build(),
            REQUEST.toBuilder().mainsStart(End.HEAD).build())) {
      assertThat(rules(BED, good, other)).containsExactly(Violation.Rule.REQUEST);
    }
    assertThat(rules(BED, good, REQUEST.toBuilder().runLimit(1).build()))
        .containsExactly(Violation.Rule.RUNS);
    assertThat(rules(BED, good, REQUEST.toBuilder().knotLimit(1).build()))
        .containsExactly(Violation.Rule.KNOTS);
  }

  @Test
  void statedMeasuresAndFamiliesCount() {
    Route r = around();
    RouteMeasures m = r.measures();
    List<RouteMeasures> wrong =
        List.of(
            new RouteMeasures(
                m.departures() + 1,
                m.covered(),
                m.doubled(),
                m.knots(),
                m.longestRun(),
                m.stringMm(),
                m.coveredHoles()),
            new RouteMeasures(
                m.departures(),
                m.covered() + 1,
                m.doubled(),
                m.knots(),
                m.longestRun(),
                m.stringMm(),
                m.coveredHoles()),
            new RouteMeasures(
                m.departures(),
                m.covered(),
                m.doubled() + 1,
                m.knots(),
                m.longestRun(),
                m.stringMm(),
                m.coveredHoles()),
            new RouteMeasures(
                m.departures(),
                m.covered(),
                m.doubled(),
                m.knots() + 1,
                m.longestRun(),
                m.stringMm(),
                m.coveredHoles()),
            new RouteMeasures(
                m.departures(),
                m.covered(),
                m.doubled(),
                m.knots(),
                m.longestRun() + 1,
                m.stringMm(),
                m.coveredHoles()),
            new RouteMeasures(
                m.departures(),
                m.covered(),
                m.doubled(),
                m.knots(),
                m.longestRun(),
                m.stringMm() + 1,
                m.coveredHoles()),
            new RouteMeasures(
                m.departures(),
                m.covered(),
                m.doubled(),
                m.knots(),
                m.longestRun(),
                m.stringMm(),
                List.of()));

    assertThat(rules(stating(r, r.families(), m))).isEmpty();
    assertThat(wrong)
        .allSatisfy(
            w ->
                assertThat(rules(stating(r, r.families(), w)))
                    .containsExactly(Violation.Rule.MEASURES));
    assertThat(rules(stating(r, EnumSet.noneOf(Family.class), m)))
        .containsExactly(Violation.Rule.FAMILIES);
  }

  private static Route stating(Route r, Set<Family> families, RouteMeasures measures) {
    return new Route(
        r.mainsStart(),
        r.direction(),
        r.shortSide(),
        r.pieces(),
        r.opening(EndName.SHORT),
        r.opening(EndName.LONG),
        r.order(),
        families,
        measures);
  }

  @Test
  void aRouteOfAnotherBedDoesNotFit() {
    Bed small = StatedAssignment.assign(Willowbank.teaching().build()).bed().orElseThrow();

    assertThat(rules(small, plain(), REQUEST)).containsExactly(Violation.Rule.FORM);
    assertThat(plain().shortSide()).isEqualTo(Side.LEFT);
  }
}
