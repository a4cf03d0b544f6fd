package org.hoopwright.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hoopwright.replay.SmallPlans.expect;
import static org.hoopwright.replay.SmallPlans.headStart;
import static org.hoopwright.replay.SmallPlans.startingClamp;
import static org.hoopwright.replay.SmallPlans.startingClampInHeadZone;
import static org.hoopwright.replay.SmallPlans.throatStart;

import org.hoopwright.bench.Bench;
import org.hoopwright.bench.Job;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.junit.jupiter.api.Test;

/** I2 and I5, broken one at a time. */
class ClampReplayTest {
  @Test
  void moreThanTheBenchHas() {
    expect(
        Invariant.I2_CLAMPS,
        headStart()
            .replace("set machine-2 R1 R1T 15", "set machine-3 R1 R1T 15")
            .replace("free machine-2", "free machine-3"),
        "machine-3",
        "2 machine clamps");
    expect(
        Invariant.I2_CLAMPS,
        headStart().with(Job.builder().bench(Bench.builder().startingClamps(0).build()).build()),
        "starting-1",
        "0 starting clamps");
  }

  @Test
  void oneClampInTwoPlaces() {
    expect(Invariant.I2_CLAMPS, headStart().replace("free machine-1"), "machine-1", "still on L1");
  }

  @Test
  void machineClampOutside() {
    expect(
        Invariant.I2_CLAMPS,
        headStart().replace("set machine-2 R1 R1T 15", "outside machine-2 R1 R1T 15"),
        "inside only");
  }

  @Test
  void clampsOnTopOfEachOther() {
    expect(
        Invariant.I2_CLAMPS,
        headStart().before("release", "set machine-2 L1 L1H 20"),
        "machine-1 and machine-2 overlap");
  }

  @Test
  void sideBySideIsNoOverlap() {
    assertThat(
            headStart()
                .before("release", "set machine-2 L1 L1H 27")
                .replace("set machine-2 R1 R1T 15", "free machine-2", "set machine-2 R1 R1T 15")
                .breaches())
        .isEmpty();
  }

  @Test
  void beyondTheEndOfTheSpan() {
    expect(
        Invariant.I2_CLAMPS,
        headStart().replace("set machine-2 R1 R1T 15", "set machine-2 R1 R1T 500"),
        "does not fit into R1");
    expect(
        Invariant.I2_CLAMPS,
        headStart().replace("set machine-2 R1 R1T 15", "set machine-2 R1 R1T -1"),
        "0 mm or more");
  }

  @Test
  void onASpanThatIsNotIn() {
    expect(
        Invariant.I2_CLAMPS,
        headStart().before("release", "set machine-2 L2 L2H 15", "free machine-2"),
        "L2, which is not laced");
  }

  @Test
  void atAHoleOfAnotherSpan() {
    expect(
        Invariant.I2_CLAMPS,
        headStart().replace("set machine-2 R1 R1T 15", "set machine-2 R1 R2T 15"),
        "no such span runs through that hole");
  }

  @Test
  void takenOffWhenNotSet() {
    expect(Invariant.I2_CLAMPS, headStart().before("pull R1 R1T", "free machine-2"), "is not set");
  }

  @Test
  void nameless() {
    expect(Invariant.I2_CLAMPS, headStart().before("release", "set hand L1 L1T 15"), "\"hand\"");
  }

  @Test
  void outsideWhereNoTailComesOut() {
    expect(
        Invariant.I2_CLAMPS,
        headStart().before("lace long R2", "outside starting-1 R1 R1H 12", "free starting-1"),
        "no free tail of R1");
  }

  @Test
  void inTheWayOfTheWeave() {
    PlanText plan = headStart();
    String line =
        plan.lines().stream().filter(l -> l.startsWith("set machine-2 R2")).findFirst().get();
    expect(Invariant.I2_CLAMPS, plan.replace(line, "set machine-2 R2 R2H 5"), "X1", "machine-2");
    double d = Double.parseDouble(line.substring(line.lastIndexOf(' ') + 1));
    expect(
        Invariant.I2_CLAMPS,
        plan.replace(line, "set machine-2 R2 R2H " + (d - 2)),
        "mm from its crossing with R2");
  }

  @Test
  void mainSlippedOutUnderAClamp() {
    expect(
        Invariant.I2_CLAMPS,
        headStart()
            .before("release", "set machine-2 R1 R1T 15")
            .replace("set machine-2 R1 R1T 15", 2),
        "R1 is slipped out while a clamp is on it");
  }

  private PlanText throatStartByL1() {
    return throatStart().replace("outside starting-1 L2 L2T 12", "outside starting-1 L2 L2H 12");
  }

  @Test
  void startingClampAtTheHead() {
    PlanText plan = headStart();
    expect(
        Invariant.I5_HEAD_ZONE,
        plan.replace("outside starting-1 L1 L1T 12", "outside starting-1 L1 L1H 12"),
        "L1H",
        "head zone");
    expect(Invariant.I5_HEAD_ZONE, throatStartByL1(), "L2H", "head zone");
  }

  @Test
  void startingClampOnAFirstCrossInTheHeadZone() {
    PlanText plan = startingClamp();
    assertThat(plan.breaches()).noneMatch(b -> b.invariant() == Invariant.I5_HEAD_ZONE);
    expect(Invariant.I5_HEAD_ZONE, startingClampInHeadZone(), "L3H", "head zone (1H to L3H)");
  }

  @Test
  void allowedWithAWarning() {
    Job job = Job.builder().clampInHeadZoneAllowed(true).build();
    PlanText plan = startingClampInHeadZone().with(job);
    expect(Invariant.I5_HEAD_ZONE, plan, "without a warning");
    assertThat(plan.with(Finding.of(FindingCode.START_CLAMP_HEAD_ZONE).build()).breaches())
        .isEmpty();
  }
}
