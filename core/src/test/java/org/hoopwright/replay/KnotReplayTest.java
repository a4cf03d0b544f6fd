package org.hoopwright.replay;

import static org.hoopwright.replay.SmallPlans.expect;
import static org.hoopwright.replay.SmallPlans.headStart;
import static org.hoopwright.replay.SmallPlans.startingClamp;
import static org.hoopwright.replay.SmallPlans.startingKnot;
import static org.hoopwright.replay.SmallPlans.throatStart;

import org.junit.jupiter.api.Test;

/** I7 and I8, broken one at a time. */
class KnotReplayTest {
  @Test
  void whileTheTensionerPulls() {
    expect(
        Invariant.I7_KNOT,
        headStart()
            .replace("knot short")
            .before("lace short L2", "check")
            .replace("release", 6, "knot short", "release"),
        "before the tensioner has let go");
  }

  @Test
  void afterTheClampIsOff() {
    expect(
        Invariant.I7_KNOT,
        headStart()
            .replace("knot short")
            .replace("free machine-1", 3, "free machine-1", "knot short"),
        "no clamp holds L2");
  }

  @Test
  void roundAnAnchorWithoutItsPull() {
    expect(
        Invariant.I7_KNOT,
        throatStart().before("pull L1 L1T", "knot short"),
        "round L1 before that has had its own pull");
  }

  @Test
  void roundItsOwnLastSpan() {
    expect(
        Invariant.I7_KNOT,
        headStart().before("lace long R2", "knot long R1T R1 tie-off-knot"),
        "own last span");
  }

  @Test
  void inAHoleThatIsNone() {
    expect(
        Invariant.I7_KNOT,
        headStart().replace("knot short", "knot short L2T L1 tie-off-knot"),
        "L2T is no tie-off hole",
        "");
    expect(
        Invariant.I7_KNOT,
        headStart().replace("knot short", "knot short L2T L1 tie-off-knot"),
        "does not run through that hole");
  }

  @Test
  void holeThatIsFull() {
    expect(
        Invariant.I7_KNOT,
        headStart().replace("knot short", "knot short L2T L2 tie-off-knot"),
        "2 strings with the knot, but its bore is 1");
  }

  @Test
  void twoKnotsInOneHole() {
    expect(
        Invariant.I7_KNOT,
        headStart().replace("knot long", "knot long L1H L1 tie-off-knot"),
        "L1H has a knot already");
  }

  @Test
  void startingKnotAtTheWrongPlace() {
    expect(
        Invariant.I7_KNOT,
        headStart().replace("knot short", "knot short L1H L1 starting-knot"),
        "starting knot");
    expect(
        Invariant.I7_KNOT,
        startingKnot().replace("knot start", "knot start L3H X1 starting-knot"),
        "the cross that is pulled on it");
  }

  @Test
  void trimmedTooEarlyOrTwice() {
    expect(
        Invariant.I7_KNOT, headStart().before("knot short", "trim short"), "before it is knotted");
    expect(Invariant.I7_KNOT, headStart().append("trim short"), "trimmed twice");
  }

  @Test
  void tiedTwice() {
    expect(Invariant.I7_KNOT, headStart().before("trim short", "knot short"), "knotted twice");
  }

  @Test
  void clampLeftOn() {
    expect(Invariant.I8_END, headStart().replace("free machine-2", 6), "machine-2", "X4");
  }

  @Test
  void endNotKnotted() {
    expect(Invariant.I8_END, headStart().replace("knot long"), "long end is not knotted");
    expect(Invariant.I8_END, startingClamp().replace("knot start"), "start end is not knotted");
  }

  @Test
  void spanLeftOut() {
    expect(Invariant.I8_END, headStart().replace("weave long X4"), "X4 is not strung");
  }

  @Test
  void tensionerStillPulling() {
    expect(Invariant.I8_END, headStart().append("pull X4 R3T"), "has not let go");
  }
}
