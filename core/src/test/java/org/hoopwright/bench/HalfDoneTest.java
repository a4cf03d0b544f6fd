package org.hoopwright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import org.hoopwright.Hoopwright;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.hoopwright.replay.Replay;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Family;
import org.hoopwright.route.RouteNotation;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteSearch;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;

/** Mishaps at the bench and the ways on from them, each replayed from its state. */
class HalfDoneTest {

  private static final Job ONE_PIECE =
      Job.builder().routes(RouteRequest.builder().pieces(1).build()).build();

  private static final Job TWO_PIECES =
      Job.builder().routes(RouteRequest.builder().pieces(2).build()).build();

  private static Bed bed(Layout layout) {
    return StatedAssignment.assign(layout).bed().orElseThrow();
  }

  private static Layout hundred() {
    return Willowbank.hundred().noRun(List.of()).build();
  }

  private static BenchPlan plan(Bed bed, Job job) {
    return RouteSearch.search(bed, job.routes()).ranked().stream()
        .flatMap(r -> Planner.plan(bed, r.route(), job).stream())
        .findFirst()
        .orElseThrow();
  }

  /** The state after the first step of this kind, and what belongs to it up to the release. */
  private static HalfDone when(BenchPlan plan, Predicate<Step> which) {
    for (int i = 0; i < plan.steps().size(); i++) {
      if (which.test(plan.steps().get(i))) {
        int end = i;
        while (!(plan.steps().get(end) instanceof Step.Release)) {
          end++;
        }
        return HalfDone.after(plan, end + 1);
      }
    }
    throw new AssertionError("no such step");
  }

  private static Predicate<Step> pulled(String span) {
    return s -> s instanceof Step.Pull p && p.tails().equals(List.of(SpanId.of(span)));
  }

  private static HalfDone withTail(HalfDone state, EndName name, double mm) {
    List<StrungPiece> pieces = new ArrayList<>();
    for (StrungPiece p : state.pieces()) {
      pieces.add(
          new StrungPiece(
              p.ends().stream()
                  .map(
                      e ->
                          e.name() == name
                              ? new StrungEnd(e.name(), e.passes(), e.knot(), OptionalDouble.of(mm))
                              : e)
                  .toList(),
              p.broken()));
    }
    return new HalfDone(pieces, state.pulled(), state.clamps(), state.misweaves());
  }

  private static HalfDone broken(HalfDone state, int piece) {
    List<StrungPiece> pieces = new ArrayList<>(state.pieces());
    pieces.set(piece, new StrungPiece(pieces.get(piece).ends(), true));
    return new HalfDone(pieces, state.pulled(), state.clamps(), state.misweaves());
  }

  private static List<WayOn> ways(Bed bed, HalfDone state, Job job) {
    List<WayOn> ways = Hoopwright.waysOn(bed, state, bed, job, 5);
    assertThat(ways).isNotEmpty();
    assertThat(ways).allSatisfy(w -> assertThat(Replay.check(w)).as(w.say()).isEmpty());
    return ways;
  }

  @Test
  void everyMomentOfAPlanGoesOnWithoutUndoing() {
    Bed bed = bed(hundred());
    for (Job job : List.of(ONE_PIECE, TWO_PIECES)) {
      BenchPlan plan = plan(bed, job);
      for (int i = 0; i < plan.steps().size(); i++) {
        boolean atRest = plan.steps().get(i) instanceof Step.Release;
        HalfDone state = HalfDone.after(plan, i + 1);
        boolean started = state.pulled().size() > 4;
        if (atRest && started && i % 5 == 0) {
          assertThat(ways(bed, state, job).get(0).spansUndone()).as("step %s", i + 1).isZero();
        }
      }
    }
  }

  @Test
  void shortEndIsTooShortForItsLastMain() {
    Bed bed =
        bed(
            Willowbank.hundred()
                .noRun(List.of())
                .direction(org.hoopwright.frame.Direction.THROAT_TO_HEAD)
                .build());
    BenchPlan plan = plan(bed, ONE_PIECE);
    assertThat(RouteNotation.passes(plan.route())).startsWith("short L1-L8 |");
    HalfDone state = when(plan, pulled("L7"));

    // Enough is left for a knot and no more: the long end strings the last main.
    WayOn best = ways(bed, withTail(state, EndName.SHORT, 400), ONE_PIECE).get(0);
    assertThat(best.spansUndone()).isZero();
    assertThat(best.newStringMm()).isZero();
    assertThat(RouteNotation.passes(best.goOn().route())).startsWith("short L1-L7 | long R1");

    // It does not reach the tensioner, but the main itself can be strung: bridging is an answer.
    double tail = state.pieces().get(0).end(EndName.SHORT).tailMm().orElseThrow();
    while (TailNeed.of(bed, plan.route(), ONE_PIECE, EndName.SHORT, 7, OptionalDouble.of(tail))
        .bridged()
        .isEmpty()) {
      tail -= 5;
    }
    List<WayOn> bridged = ways(bed, withTail(state, EndName.SHORT, tail), ONE_PIECE);
    assertThat(bridged).anySatisfy(w -> assertThat(w.bridged()).containsExactly(SpanId.of("L8")));
    assertThat(bridged)
        .filteredOn(w -> !w.bridged().isEmpty())
        .allSatisfy(
            w -> assertThat(w.goOn().steps()).anyMatch(s -> s.say().contains("scrap of string")));
  }

  @Test
  void shortEndIsTooShortForItsKnot() {
    Bed bed =
        bed(
            Willowbank.hundred()
                .noRun(List.of())
                .direction(org.hoopwright.frame.Direction.THROAT_TO_HEAD)
                .build());
    HalfDone state = withTail(when(plan(bed, ONE_PIECE), pulled("L8")), EndName.SHORT, 120);

    WayOn best = ways(bed, state, ONE_PIECE).get(0);

    assertThat(best.spansUndone()).isPositive().isLessThan(4);
    assertThat(best.piecesCutOut()).isEmpty();
    assertThat(best.undo())
        .anyMatch(s -> s instanceof Step.Unlace u && u.span().equals(SpanId.of("L8")));
    assertThat(best.after().pieces().get(0).end(EndName.SHORT).tailMm().orElseThrow())
        .isGreaterThan(300);
  }

  @Test
  void wrongSideWasTakenAsShort() {
    Layout layout = Willowbank.hundred().noRun(List.of()).shortSide(Side.RIGHT).build();
    Bed bed = bed(layout);
    // Somebody works as if the left side were to be the short one.
    BenchPlan wrong = plan(bed(hundred()), ONE_PIECE);
    assertThat(wrong.route().shortSide()).isEqualTo(Side.LEFT);
    HalfDone early = when(wrong, pulled("R7"));
    HalfDone late = when(wrong, pulled("X5"));

    // As long as string is left on both sides, what is called short can change.
    WayOn swap =
        ways(bed, withTail(early, EndName.SHORT, 20_000), ONE_PIECE).stream()
            .filter(w -> w.wishesMissed() == 0)
            .findFirst()
            .orElseThrow();
    assertThat(swap.spansUndone()).isZero();
    assertThat(swap.goOn().route().shortSide()).isEqualTo(Side.RIGHT);

    List<WayOn> ways = ways(bed, late, ONE_PIECE);
    assertThat(ways.get(0).spansUndone()).isZero();
    assertThat(ways.get(0).wishesMissed()).isPositive();
    assertThat(ways)
        .anySatisfy(
            w -> {
              assertThat(w.wishesMissed()).isZero();
              assertThat(w.spansUndone()).isPositive();
            });
  }

  @Test
  void grommetSplitsAtCrossTwelve() {
    Layout layout =
        Willowbank.hundred()
            .noRun(List.of())
            .holes(18, 18)
            .mainsSkip("7H", "9H", "7T", "9T")
            .withoutFirstAndLast()
            .build();
    Bed before = bed(layout);
    BenchPlan plan = plan(before, TWO_PIECES);
    HalfDone state = when(plan, pulled("X12"));
    String split = before.span(SpanId.cross(12)).to().toString();
    Bed after = bed(layout.toBuilder().blocked(split).build());

    List<WayOn> ways = Hoopwright.waysOn(before, state, after, TWO_PIECES, 3);

    assertThat(ways).isNotEmpty().allSatisfy(w -> assertThat(Replay.check(w)).isEmpty());
    assertThat(ways.get(0).spansUndone()).isEqualTo(1);
    assertThat(ways.get(0).undo())
        .anyMatch(s -> s instanceof Step.Unlace u && u.span().equals(SpanId.cross(12)));
  }

  @Test
  void misweaveIsFoundFourCrossesLater() {
    Bed bed = bed(hundred());
    HalfDone right = when(plan(bed, TWO_PIECES), pulled("X11"));
    HalfDone state =
        new HalfDone(right.pieces(), right.pulled(), right.clamps(), List.of(SpanId.cross(7)));

    WayOn best = ways(bed, state, TWO_PIECES).get(0);

    assertThat(best.spansUndone()).isEqualTo(5);
    assertThat(best.piecesCutOut()).isEmpty();
    assertThat(
            best.undo().stream()
                .filter(s -> s instanceof Step.Unlace)
                .map(s -> ((Step.Unlace) s).span().toString()))
        .containsExactly("X11", "X10", "X9", "X8", "X7");
  }

  @Test
  void mainBreaksWhileItIsPulled() {
    Bed bed = bed(hundred());
    HalfDone state = broken(when(plan(bed, TWO_PIECES), pulled("R6")), 0);

    WayOn best = ways(bed, state, TWO_PIECES).get(0);

    assertThat(best.piecesCutOut()).containsExactly(0);
    assertThat(best.undo()).hasSize(1).allMatch(s -> s instanceof Step.CutOut);
    assertThat(best.newStringMm()).isGreaterThan(4000);
    assertThat(best.after().passes()).isEmpty();
  }

  @Test
  void crossBreaksAndTheMainsStay() {
    Bed bed = bed(hundred());
    HalfDone state = broken(when(plan(bed, TWO_PIECES), pulled("X9")), 1);

    WayOn best = ways(bed, state, TWO_PIECES).get(0);

    assertThat(best.piecesCutOut()).containsExactly(1);
    assertThat(best.spansUndone()).isEqualTo(9);
    assertThat(best.after().pulled()).hasSize(16);
  }

  @Test
  void crossesWereStartedOnTheWrongSide() {
    Layout free = hundred();
    BenchPlan plan = plan(bed(free), TWO_PIECES);
    HalfDone state = when(plan, pulled("X4"));
    Side begun = state.pieces().get(1).end(EndName.FINISH).passes().get(0).from().side();
    Bed bed = bed(free.toBuilder().startSide(begun.other()).build());

    List<WayOn> ways = ways(bed, state, TWO_PIECES);

    assertThat(ways.get(0).spansUndone()).isZero();
    assertThat(ways.get(0).wishesMissed()).isEqualTo(1);
    WayOn kept = ways.stream().filter(w -> w.wishesMissed() == 0).findFirst().orElseThrow();
    assertThat(kept.piecesCutOut()).containsExactly(1);
    assertThat(kept.spansUndone()).isEqualTo(4);
  }

  @Test
  void longEndLeavesEnoughForTheCrosses() {
    Bed bed = bed(hundred());
    HalfDone state = when(plan(bed, ONE_PIECE), pulled("R8"));

    List<WayOn> ways = ways(bed, withTail(state, EndName.LONG, 9000), Job.standard());

    assertThat(ways.get(0).spansUndone()).isZero();
    assertThat(ways.get(0).newStringMm()).isZero();
    assertThat(ways.get(0).goOn().route().families()).doesNotContain(Family.BOX);
  }

  @Test
  void whatNothingHoldsIsRefused() {
    Bed bed = bed(hundred());
    HalfDone held = when(plan(bed, ONE_PIECE), pulled("L5"));
    HalfDone loose = new HalfDone(held.pieces(), held.pulled(), List.of(), List.of());
    HalfDone unstrung =
        new HalfDone(held.pieces(), Set.of(SpanId.of("X3")), held.clamps(), List.of());

    assertThatThrownBy(() -> Hoopwright.waysOn(bed, loose, bed, ONE_PIECE, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("nothing holds it");
    assertThat(Replay.check(bed, unstrung))
        .anySatisfy(b -> assertThat(b.message()).contains("X3 is pulled"));
  }
}
