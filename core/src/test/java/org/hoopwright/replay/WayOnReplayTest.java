package org.hoopwright.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.hoopwright.Hoopwright;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.HalfDone;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.Step;
import org.hoopwright.bench.StrungEnd;
import org.hoopwright.bench.StrungPiece;
import org.hoopwright.bench.WayOn;
import org.hoopwright.frame.Layout;
import org.hoopwright.route.Pass;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.LayoutArbitraries;
import org.hoopwright.testing.Willowbank;
import org.junit.jupiter.api.Test;

/** Ways on from half-done jobs are proven, and a way on with something wrong in it is found out. */
class WayOnReplayTest {

  private static final Job JOB =
      Job.builder().routes(RouteRequest.builder().pieces(2).build()).build();

  private static Bed bed(Layout layout) {
    return StatedAssignment.assign(layout).bed().orElseThrow();
  }

  /** The state at rest nearest to this step of a plan, once its start is over. */
  private static Optional<HalfDone> atRest(BenchPlan plan, int step) {
    for (int i = step; i < plan.steps().size(); i++) {
      if (plan.steps().get(i) instanceof Step.Release) {
        HalfDone state = HalfDone.after(plan, i + 1);
        boolean both = state.pieces().get(0).ends().stream().allMatch(e -> e.passes().size() >= 2);
        if (both && Replay.check(plan.bed(), state).isEmpty()) {
          return Optional.of(state);
        }
      }
    }
    return Optional.empty();
  }

  private static HalfDone misweave(HalfDone state, SpanId span) {
    return new HalfDone(state.pieces(), state.pulled(), state.clamps(), List.of(span));
  }

  /** Whatever is strung of whatever plan, however little string is left: the ways on are proven. */
  @Property(tries = 25)
  @Domain(DomainContext.Global.class) // for the seed
  @Domain(LayoutArbitraries.class)
  void everyWayOnIsProven(@ForAll Layout layout, @ForAll long seed) {
    Draw draw = Draw.from(seed);
    Optional<BenchPlan> plan = Hoopwright.plan(layout, Job.standard()).plan().map(p -> p.bench());
    Assume.that(plan.isPresent());
    Optional<HalfDone> rest = atRest(plan.get(), draw.between(0, plan.get().steps().size() - 1));
    Assume.that(rest.isPresent());
    HalfDone state = rest.get();
    if (draw.chance(50)) {
      List<Pass> all = state.passes();
      state = misweave(state, all.get(draw.between(0, all.size() - 1)).span());
    }
    if (draw.chance(30)) {
      state = withTails(state, draw.between(0, 2000));
    }

    List<WayOn> ways =
        Hoopwright.waysOn(plan.get().bed(), state, plan.get().bed(), Job.standard(), 3);

    assertThat(ways).isNotEmpty().allSatisfy(WayOnReplayTest::undoesWhatItNames);
    assertThat(ways).isSortedAccordingTo((a, b) -> a.spansUndone() - b.spansUndone());
    assertThat(Hoopwright.waysOn(plan.get().bed(), state, plan.get().bed(), Job.standard(), 3))
        .usingElementComparator(
            (a, b) ->
                a.undo().equals(b.undo()) && a.goOn().steps().equals(b.goOn().steps()) ? 0 : 1)
        .isEqualTo(ways);
  }

  /** The spans that are named as undone are those that the steps back take out. */
  private static void undoesWhatItNames(WayOn way) {
    Set<SpanId> out = new TreeSet<>();
    for (Step step : way.undo()) {
      if (step instanceof Step.Unlace u) {
        out.add(u.span());
      } else if (step instanceof Step.CutOut c) {
        way.from()
            .pieces()
            .get(c.piece())
            .ends()
            .forEach(e -> e.passes().forEach(p -> out.add(p.span())));
      }
    }
    assertThat(way.undone()).containsExactlyInAnyOrderElementsOf(out);
    assertThat(way.undone().stream().filter(way.from().pulled()::contains))
        .hasSize(way.spansUndone());
  }

  private static HalfDone withTails(HalfDone state, double mm) {
    List<StrungPiece> pieces = new ArrayList<>();
    for (StrungPiece p : state.pieces()) {
      pieces.add(
          new StrungPiece(
              p.ends().stream()
                  .map(e -> new StrungEnd(e.name(), e.passes(), e.knot(), OptionalDouble.of(mm)))
                  .toList(),
              p.broken()));
    }
    return new HalfDone(pieces, state.pulled(), state.clamps(), state.misweaves());
  }

  private static WayOn undoing() {
    Bed bed = bed(Willowbank.hundred().build());
    BenchPlan plan = Hoopwright.plan(bed.layout(), JOB).plan().orElseThrow().bench();
    for (int i = plan.steps().size() / 2; i < plan.steps().size(); i++) {
      HalfDone state = HalfDone.after(plan, i + 1);
      if (plan.steps().get(i) instanceof Step.Release && state.pulled().contains(SpanId.cross(9))) {
        return Hoopwright.waysOn(bed, misweave(state, SpanId.cross(6)), bed, JOB, 1).get(0);
      }
    }
    throw new AssertionError();
  }

  @Test
  void undoingWithAStepLeftOutIsFoundOut() {
    WayOn way = undoing();
    assertThat(way.undo()).hasSize(4 * 5);
    assertThat(Replay.check(way)).isEmpty();
    for (int i = 0; i < way.undo().size(); i++) {
      List<Step> steps = new ArrayList<>(way.undo());
      Step gone = steps.remove(i);
      assertThat(Replay.check(with(way, steps))).as("without %s: %s", i, gone).isNotEmpty();
    }
  }

  @Test
  void undoingInAnotherOrderIsFoundOut() {
    WayOn way = undoing();
    for (int i = 0; i + 1 < way.undo().size(); i++) {
      if (i % 5 == 4) {
        continue; // the next tail may be gripped before the last one is drawn out of the frame
      }
      List<Step> steps = new ArrayList<>(way.undo());
      java.util.Collections.swap(steps, i, i + 1);
      assertThat(Replay.check(with(way, steps))).as("swapped at %s", i).isNotEmpty();
    }
  }

  @Test
  void planFromAnotherStateIsFoundOut() {
    WayOn way = undoing();
    assertThat(Replay.check(way.goOn(), way.after())).isEmpty();
    assertThat(Replay.check(way.goOn(), way.from())).isNotEmpty();
    assertThat(Replay.check(way.goOn())).isNotEmpty();
  }

  private static WayOn with(WayOn w, List<Step> undo) {
    return new WayOn(
        w.bed(),
        w.from(),
        undo,
        w.after(),
        w.goOn(),
        w.spansUndone(),
        w.piecesCutOut(),
        w.newStringMm(),
        w.bridged(),
        w.wishesMissed(),
        w.findings());
  }
}
