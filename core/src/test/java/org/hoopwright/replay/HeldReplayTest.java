package org.hoopwright.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hoopwright.replay.SmallPlans.expect;
import static org.hoopwright.replay.SmallPlans.headStart;
import static org.hoopwright.replay.SmallPlans.startingClamp;
import static org.hoopwright.replay.SmallPlans.throatStart;

import org.junit.jupiter.api.Test;

/** I1, broken one at a time. */
class HeldReplayTest {
  @Test
  void clampTakenOffBeforeTheNextHolder() {
    expect(
        Invariant.I1_HELD,
        throatStart()
            .replace("pull R1 R1H")
            .replace("free machine-2", "free machine-2", "pull R1 R1H"),
        "L1",
        "L1T");
  }

  @Test
  void tensionerLetsGoBeforeTheClampIsSet() {
    expect(
        Invariant.I1_HELD,
        headStart()
            .replace("set machine-2 R1 R1T 15")
            .replace("release", 2, "release", "set machine-2 R1 R1T 15"),
        "R1",
        "R1T");
  }

  @Test
  void anchorMainLosesItsStartingClamp() {
    expect(
        Invariant.I1_HELD,
        throatStart().before("lace long R1", "check").before("pull L1 L1T", "free starting-1"),
        "L2",
        "waits for its own pull");
  }

  @Test
  void anchorMainIsNotHeldInside() {
    expect(Invariant.I1_HELD, throatStart().replace("set machine-1 L2 L2H 15"), "L2", "L2H");
  }

  @Test
  void handHoldsNothing() {
    expect(
        Invariant.I1_HELD,
        headStart().replace("set machine-2 R1 R1T 15", "hold R1 R1T"),
        "R1",
        "R1T");
  }

  @Test
  void clampNearTheWrongHole() {
    expect(
        Invariant.I1_HELD,
        headStart().replace("set machine-1 L2 L2H 15", "set machine-1 L2 L2T 15"),
        "L2",
        "L2H");
  }

  @Test
  void pulledMainSlippedOut() {
    expect(
        Invariant.I1_HELD,
        throatStart().before("weave long X4", "unlace long R2", "lace long R2"),
        "R2 is slipped out after its own pull");
  }

  @Test
  void firstCrossWithoutAKnotOrClamp() {
    expect(
        Invariant.I1_HELD, startingClamp().before("pull X2 L4H", "free starting-1"), "X1", "L3H");
  }

  @Test
  void losingOneSpanIsSaidOnce() {
    long said =
        headStart().replace("set machine-1 L2 L2H 15").breaches().stream()
            .filter(b -> b.invariant() == Invariant.I1_HELD && b.message().startsWith("L2"))
            .count();
    assertThat(said).isEqualTo(1);
  }
}
