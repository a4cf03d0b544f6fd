package org.hoopwright.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hoopwright.replay.SmallPlans.expect;
import static org.hoopwright.replay.SmallPlans.headStart;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Crossing;
import org.hoopwright.bed.SpanId;
import org.hoopwright.testing.BedLayouts;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;

/** I9, broken one at a time. */
class WeaveReplayTest {

  private static List<Crossing> crossings(Bed bed) {
    List<Crossing> all = new ArrayList<>();
    bed.crosses().forEach(c -> all.addAll(bed.crossings(c.id())));
    return all;
  }

  private static List<String> faults(Bed bed, List<Crossing> crossings) {
    return WeaveCheck.faults(bed.ring(), bed.spans(), crossings);
  }

  private static Crossing turned(Crossing c) {
    return new Crossing(
        c.main(), c.cross(), c.at(), c.fromHeadMm(), c.fromLeftMm(), !c.crossOver());
  }

  @Test
  void laceWhereACrossIsWoven() {
    expect(Invariant.I9_WEAVE, headStart().replace("weave long X2", "lace long X2"), "X2", "woven");
  }

  @Test
  void weaveWhereNothingIsMet() {
    expect(Invariant.I9_WEAVE, headStart().replace("lace long R2", "weave long R2"), "R2", "laced");
  }

  @Test
  void lateMainIsWoven() {
    expect(
        Invariant.I9_WEAVE,
        headStart().replace("lace short L2").before("weave long X2", "release", "lace short L2"),
        "L2 meets strings that are in");
  }

  @Test
  void exampleFrameAlternates() {
    Bed bed = SmallPlans.bed(Willowbank.hundred().build());
    assertThat(faults(bed, crossings(bed))).isEmpty();
  }

  @Test
  void oneTurnedCrossing() {
    Bed bed = SmallPlans.bed(Willowbank.hundred().build());
    List<Crossing> all = crossings(bed);
    int i = all.size() / 2;
    all.set(i, turned(all.get(i)));
    SpanId main = all.get(i).main();
    SpanId cross = all.get(i).cross();
    assertThat(faults(bed, all))
        .hasSize(4)
        .allMatch(f -> f.startsWith("Along " + main) || f.startsWith("Along " + cross));
  }

  @Test
  void crossingLeftOutOrMadeUp() {
    Bed bed = SmallPlans.bed(Willowbank.hundred().build());
    List<Crossing> all = crossings(bed);
    Crossing first = all.remove(0);
    assertThat(faults(bed, all))
        .contains(
            "%s meets %s 0 times, but by the order of the holes it is 1."
                .formatted(first.cross(), first.main()));
    List<Crossing> more = crossings(bed);
    more.add(new Crossing(SpanId.of("L8"), SpanId.of("X1"), first.at(), 0, 0, first.crossOver()));
    assertThat(faults(bed, more))
        .contains("X1 meets L8 1 times, but by the order of the holes it is 0.");
  }

  @Test
  void wholeWeaveTurnedOver() {
    Bed bed = SmallPlans.bed(Willowbank.hundred().build());
    List<Crossing> all = crossings(bed).stream().map(WeaveReplayTest::turned).toList();
    assertThat(faults(bed, all)).containsExactly("X1 goes under R1, but it goes over it.");
  }

  @Property(tries = 60)
  void everyBedWeavesAsItsHolesSay(@ForAll long seed) {
    Bed bed = SmallPlans.bed(BedLayouts.uneven(Draw.from(seed), 8, true));
    assertThat(faults(bed, crossings(bed))).isEmpty();
  }
}
