package org.hoopwright.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hoopwright.replay.SmallPlans.expect;
import static org.hoopwright.replay.SmallPlans.headStart;
import static org.hoopwright.replay.SmallPlans.startingClamp;
import static org.hoopwright.replay.SmallPlans.startingKnot;
import static org.hoopwright.replay.SmallPlans.throatStart;

import org.hoopwright.bench.Job;
import org.hoopwright.units.Force;
import org.junit.jupiter.api.Test;

/** I3, I4 and I6, broken one at a time. */
class PullReplayTest {
  @Test
  void notTheLastSpan() {
    expect(Invariant.I3_FREE_TAIL, headStart().replace("pull R2 R2H", "pull R1 R1T"), "R1", "R1T");
  }

  @Test
  void atTheWrongHole() {
    expect(Invariant.I3_FREE_TAIL, headStart().replace("pull R2 R2H", "pull R2 R2T"), "R2", "R2T");
  }

  @Test
  void beforeItIsLaced() {
    expect(
        Invariant.I3_FREE_TAIL,
        headStart().before("lace short L2", "pull L2 L2H", "release"),
        "L2");
  }

  @Test
  void whileTheGripHolds() {
    expect(
        Invariant.I3_FREE_TAIL,
        headStart().replace("release", 3),
        "before the tensioner has let go");
  }

  @Test
  void againstNothing() {
    expect(
        Invariant.I3_FREE_TAIL,
        throatStart().replace("set machine-1 L2 L2H 15").replace("outside starting-1 L2 L2T 12"),
        "Nothing holds the string behind L1");
    expect(
        Invariant.I3_FREE_TAIL,
        startingKnot().replace("knot start"),
        "Nothing holds the string behind X1");
  }

  @Test
  void withAClampInBetween() {
    expect(
        Invariant.I3_FREE_TAIL,
        headStart().before("lace short L2", "pull L1 L1T", "release"),
        "machine-1 near L1T keeps the pull from L1");
  }

  @Test
  void afterTheKnot() {
    expect(
        Invariant.I3_FREE_TAIL,
        headStart().before("weave long X1", "pull L2 L2H", "release"),
        "L2");
  }

  @Test
  void laceWhileGripped() {
    expect(
        Invariant.I3_FREE_TAIL,
        headStart().replace("release", 2).before("pull R2 R2H", "release"),
        "while the tensioner grips the long end");
  }

  @Test
  void letGoOfNothing() {
    expect(Invariant.I3_FREE_TAIL, headStart().append("release"), "grips nothing");
  }

  @Test
  void heldByHandWhereNoTailIs() {
    expect(Invariant.I3_FREE_TAIL, headStart().append("hold L1 L1H"), "L1", "L1H");
  }

  @Test
  void threeTails() {
    expect(
        Invariant.I3_FREE_TAIL,
        headStart().replace("pull L1 L1T R1 R1T", "pull L1 L1T R1 R1T L1 L1T"),
        "3 tails");
  }

  @Test
  void sameTailTwice() {
    expect(
        Invariant.I3_FREE_TAIL,
        headStart().replace("pull L1 L1T R1 R1T", "pull L1 L1T L1 L1T"),
        "gripped twice");
  }

  @Test
  void innerMainSlippedOutFirst() {
    expect(
        Invariant.I3_FREE_TAIL,
        throatStart()
            .replace("unlace long R2")
            .replace("unlace long R1", "unlace long R1", "unlace long R2"),
        "R1 cannot be slipped out");
  }

  private static Job lead(int limit) {
    return Job.builder().leadLimit(limit).build();
  }

  @Test
  void twoMainsAheadOnTheRight() {
    expect(Invariant.I4_LEAD, headStart().with(lead(1)), "a lead of 2", "limit is 1");
  }

  @Test
  void oneMainAheadIsWithinOne() {
    assertThat(throatStart().with(lead(1)).breaches()).isEmpty();
  }

  @Test
  void twoMainsAheadOnTheLeft() {
    // L1, L2, then R1: the anchor main is pulled before the other side has begun.
    expect(
        Invariant.I4_LEAD,
        throatStart()
            .with(lead(1))
            .replace("pull L2 L2T")
            .before("lace long R1", "check")
            .replace(
                "lace long R1",
                2,
                "pull L2 L2T",
                "free starting-1",
                "set machine-1 L2 L2T 15",
                "lace long R1"),
        "2 left and 0 right");
  }

  @Test
  void wrongTension() {
    expect(Invariant.I6_OWN_PULL, headStart().replace("pull L1 L1T", "pull L1 L1T =244.9"), "L1");
    expect(Invariant.I6_OWN_PULL, throatStart().replace("pull X2 L4H", "pull X2 L4H =250"), "X2");
    expect(
        Invariant.I6_OWN_PULL,
        headStart().replace("pull L1 L1T R1 R1T", "pull L1 L1T R1 R1T =490"),
        "shared pull");
  }

  @Test
  void neverPulled() {
    expect(
        Invariant.I6_OWN_PULL,
        headStart().replace("pull X2 R4H").replace("release", 9),
        "X2 has never had a pull of its own");
  }

  @Test
  void sharedPullIsNoOwnPull() {
    expect(
        Invariant.I6_OWN_PULL,
        headStart().replace("pull L1 L1T", "pull L1 L1T R2 R2H"),
        "L1 has never had a pull of its own");
  }

  @Test
  void crossesHaveTheirOwnTension() {
    Job job = Job.builder().crossesTension(Force.ofNewtons(230)).build();
    assertThat(throatStart().with(job).breaches()).isEmpty();
    expect(
        Invariant.I6_OWN_PULL,
        throatStart().with(job).replace("pull X2 L4H", "pull X2 L4H =245"),
        "X2 is pulled at 245.0 N, but its reference tension is 230.0 N");
  }

  @Test
  void extraOnlyBeforeAKnot() {
    Job job = Job.builder().lastPullExtra(Force.ofNewtons(24)).build();
    assertThat(headStart().with(job).replace("pull L2 L2H", "pull L2 L2H =269").breaches())
        .isEmpty();
    assertThat(startingClamp().with(job).replace("pull X1 L3H", "pull X1 L3H =269").breaches())
        .isEmpty();
    expect(
        Invariant.I6_OWN_PULL,
        headStart().with(job).replace("pull R2 R2H", "pull R2 R2H =269"),
        "R2");
  }
}
