package org.hoopwright.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hoopwright.replay.SmallPlans.expect;
import static org.hoopwright.replay.SmallPlans.headStart;
import static org.hoopwright.replay.SmallPlans.startingClamp;
import static org.hoopwright.replay.SmallPlans.startingKnot;
import static org.hoopwright.replay.SmallPlans.throatStart;

import org.junit.jupiter.api.Test;

/** I10, broken one at a time. */
class RouteReplayTest {
  @Test
  void otherSpan() {
    expect(
        Invariant.I10_ROUTE,
        headStart().replace("weave long X2", "weave long X3 R4T L4T"),
        "X3",
        "X2 L4H>R4H next");
  }

  @Test
  void wrongWayThroughASpan() {
    expect(
        Invariant.I10_ROUTE,
        headStart().replace("lace long R2", "lace long R2 R2H R2T"),
        "R2 R2H>R2T");
  }

  @Test
  void longEndGoesOnBeforeTheShortIsTied() {
    PlanText plan = headStart().replace("knot short").replace("free machine-1", 3);
    expect(
        Invariant.I10_ROUTE,
        plan.before("weave long X2", "knot short", "free machine-1"),
        "pass X1",
        "knot of the short end");
  }

  @Test
  void otherKnot() {
    expect(
        Invariant.I10_ROUTE,
        headStart().replace("knot short", "knot short L1T L1 tie-off-knot"),
        "L1T on L1",
        "L1H on L1");
  }

  @Test
  void unknownEndOrPiece() {
    expect(Invariant.I10_ROUTE, headStart().append("trim start"), "no start end of piece 1");
    expect(Invariant.I10_ROUTE, headStart().append("cut 1"), "the route has 1 pieces");
    expect(Invariant.I10_ROUTE, headStart().append("cut 0"), "cut twice");
  }

  @Test
  void nothingIsCut() {
    expect(Invariant.I10_ROUTE, headStart().replace("cut 0"), "before piece 0 is cut");
  }

  @Test
  void spanOfNoBed() {
    expect(
        Invariant.I10_ROUTE,
        headStart().before("weave long X4", "weave long X9 L3T R3T"),
        "No span X9 runs from L3T to R3T");
  }

  @Test
  void spanTwice() {
    expect(
        Invariant.I10_ROUTE,
        headStart().append("weave long X4"),
        "X4 is laced while it is in already");
  }

  @Test
  void secondPieceBeforeTheMainsAreTied() {
    expect(
        Invariant.I10_ROUTE,
        startingKnot().replace("knot long").before("pull X1 R3H", "knot long"),
        "knot of the long end");
  }

  @Test
  void startingClampLeftOut() {
    expect(
        Invariant.I10_ROUTE,
        startingClamp().replace("outside starting-1 X1 L3H 0").replace("free starting-1", 2),
        "starting clamp, but none is set");
  }

  @Test
  void anotherStartThanStated() {
    expect(
        Invariant.I10_ROUTE,
        throatStart().replace("outside starting-1 L2 L2T 12", "outside starting-1 R2 R2T 12"),
        "the start has it on L2 outside L2T");
  }

  @Test
  void openingMainsInOtherTurnsAreTheSameRoute() {
    PlanText plan =
        headStart()
            .replace("lace short L1")
            .replace("lace long R1", 1, "lace long R1", "lace short L1");
    assertThat(plan.breaches()).isEmpty();
  }
}
