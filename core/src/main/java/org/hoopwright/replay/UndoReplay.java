package org.hoopwright.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.ClampOn;
import org.hoopwright.bench.HalfDone;
import org.hoopwright.bench.Step;
import org.hoopwright.bench.StrungEnd;
import org.hoopwright.bench.StrungPiece;
import org.hoopwright.bench.WayOn;
import org.hoopwright.route.Pass;

/**
 * Replays a way on from its half-done job: first what is undone, on the bed it was strung on, then
 * the plan. Steps of the plan are numbered on from those of the undoing.
 */
final class UndoReplay {

  private UndoReplay() {}

  static List<Breach> check(WayOn way) {
    BenchPlan undo =
        new BenchPlan(
            way.bed(),
            way.goOn().route(),
            way.goOn().job(),
            way.goOn().start(),
            way.goOn().lengths(),
            way.goOn().cutLengthsMm(),
            way.undo(),
            way.goOn().findings());
    Set<SpanId> givenUp = givenUp(way);
    HeldCheck held = new HeldCheck(givenUp);
    BenchState state = new BenchState(undo, way.from());
    Breaches breaches = new Breaches();
    breaches.turnTo(0);
    held.begin(state, breaches);
    Replay.replay(
        way.undo(),
        state,
        List.of(new ClampCheck(undo), new PullCheck(undo), held, new TakenBack(givenUp)),
        breaches);
    breaches.turnTo(way.undo().size());
    breaches.addIf(
        state.busy(), Invariant.I8_END, "The tensioner has not let go when the undoing ends.");
    agrees(way, state, breaches);
    List<Breach> all = new ArrayList<>(breaches.all());
    for (Breach b : Replay.check(way.goOn(), way.after())) {
      all.add(new Breach(b.invariant(), b.step() + way.undo().size(), b.message()));
    }
    return List.copyOf(all);
  }

  /**
   * Spans that the way says do not stay: those of the state before that are not in the one after.
   */
  private static Set<SpanId> givenUp(WayOn way) {
    List<Pass> stay = new ArrayList<>(way.after().passes());
    Set<SpanId> gone = new TreeSet<>();
    for (Pass p : way.from().passes()) {
      boolean stays =
          stay.stream().anyMatch(q -> q.from().equals(p.from()) && q.to().equals(p.to()));
      if (!stays) {
        gone.add(p.span());
      }
    }
    return gone;
  }

  /** While a job is taken back, nothing new is strung or knotted. */
  private record TakenBack(Set<SpanId> givenUp) implements StepCheck {
    @Override
    public void before(BenchState state, Step step, Breaches breaches) {
      boolean forward =
          step instanceof Step.Lace
              || step instanceof Step.Weave
              || step instanceof Step.TieKnot
              || step instanceof Step.Cut
              || step instanceof Step.Trim;
      breaches.addIf(
          forward,
          Invariant.I10_ROUTE,
          "While a job is taken back there is a " + step.word() + ".");
      if (step instanceof Step.Pull pull) {
        breaches.addIf(
            !state.pulled().containsAll(pull.tails()),
            Invariant.I10_ROUTE,
            "While a job is taken back, %s is pulled for the first time.".formatted(pull.tails()));
      }
    }
  }

  private static void agrees(WayOn way, BenchState state, Breaches breaches) {
    // Holes tell where a string lies, on whichever bed: names of spans may differ.
    for (StringPath path : state.paths()) {
      HalfDone after = way.after();
      StrungPiece said =
          path.piece() < after.pieces().size() ? after.pieces().get(path.piece()) : null;
      for (var end : List.of(path.lowEnd(), path.highEnd())) {
        List<String> lies = path.passes(end).stream().map(UndoReplay::holes).toList();
        List<String> wanted =
            said == null
                ? List.of()
                : said.ends().stream()
                    .filter(e -> e.name() == end)
                    .map(StrungEnd::passes)
                    .flatMap(List::stream)
                    .map(UndoReplay::holes)
                    .toList();
        breaches.addIf(
            !lies.equals(wanted),
            Invariant.I10_ROUTE,
            "After the undoing the %s end runs %s, but it is said to run %s."
                .formatted(end.word(), lies, wanted));
        boolean knotted =
            said != null
                && said.ends().stream().anyMatch(e -> e.name() == end && e.knot().isPresent());
        breaches.addIf(
            knotted != state.knotted(end),
            Invariant.I10_ROUTE,
            "After the undoing it is wrong whether the %s end is knotted.".formatted(end.word()));
      }
    }
    List<String> on =
        state.clamps().stream()
            .map(c -> c.name() + " " + c.near() + " " + c.distanceMm())
            .sorted()
            .toList();
    List<String> saidOn =
        way.after().clamps().stream()
            .map((ClampOn c) -> c.clamp() + " " + c.near() + " " + c.distanceMm())
            .sorted()
            .toList();
    breaches.addIf(
        !on.equals(saidOn),
        Invariant.I2_CLAMPS,
        "After the undoing the clamps are %s, but they are said to be %s.".formatted(on, saidOn));
    breaches.addIf(
        state.pulled().size() != way.after().pulled().size(),
        Invariant.I6_OWN_PULL,
        "After the undoing %s spans have had their own pull, but %s are said to have."
            .formatted(state.pulled().size(), way.after().pulled().size()));
  }

  private static String holes(Pass p) {
    return p.from() + ">" + p.to();
  }
}
