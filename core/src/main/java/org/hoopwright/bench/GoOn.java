package org.hoopwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Route;

/** Writes the plan that goes on by a route from a half-done job that agrees with it. */
final class GoOn {

  private GoOn() {}

  /**
   * The plan from here; empty when a clamp finds no place.
   *
   * @param bed the bed
   * @param route the route
   * @param job the job
   * @param from the state: a beginning of the route, each open end held by a machine clamp on its
   *     last span
   * @param bridged spans whose pull must be bridged
   */
  static Optional<BenchPlan> plan(
      Bed bed, Route route, Job job, HalfDone from, Set<SpanId> bridged) {
    if (from.passes().isEmpty()) {
      return Planner.plan(bed, route, job);
    }
    Script script = new Script(bed, route, job);
    script.bridge(bridged);
    List<EndLength> lengths = Lengths.of(bed, route, job);
    List<Double> cut = Lengths.cut(route, lengths);
    try {
      script.add(
          new Step.Check(
              "Look over what is strung: every string as listed, every clamp tight, no string worn."));
      resume(script, from);
      EndName a = EndName.SHORT;
      Planner.openingMains(script, a, script.done(EndName.SHORT), script.done(EndName.LONG));
      Planner.rest(script, cut, lengths, from.pieces().size() == 2);
      Planner.finish(script);
      script.findings.addAll(script.startingClamps.refusals());
      return Optional.of(
          new BenchPlan(
              bed, route, job, Optional.empty(), lengths, cut, script.steps, script.findings));
    } catch (Script.NoPlaceForClamp e) {
      return Optional.empty();
    }
  }

  private static void resume(Script script, HalfDone from) throws Script.NoPlaceForClamp {
    for (StrungPiece piece : from.pieces()) {
      for (StrungEnd end : piece.ends()) {
        end.passes().forEach(p -> script.laced.add(p.span()));
        script.done(end.name(), end.passes().size(), end.knot().isPresent());
      }
    }
    from.pulled().forEach(script.startingClamps::pulled);
    List<EndName> open = new ArrayList<>();
    for (StrungPiece piece : from.pieces()) {
      for (StrungEnd end : piece.ends()) {
        if (end.knot().isEmpty() && !end.passes().isEmpty()) {
          Pass last = end.passes().get(end.passes().size() - 1);
          if (hold(script, from, end.name(), last.span(), last.to())) {
            open.add(end.name());
          }
        } else if (end.name() == EndName.START && end.knot().isEmpty() && !piece.isEmpty()) {
          Pass first = piece.high().passes().get(0);
          hold(script, from, end.name(), first.span(), first.from());
        }
      }
    }
    for (EndName end : open) {
      int last = script.done(end) - 1;
      Pass pass = script.pass(end, last);
      ClampOn clamp = clampOf(from, pass.span(), pass.to(), ClampSide.INSIDE).orElseThrow();
      if (script.inTheWay(end, last, clamp.distanceMm())) {
        // The pull takes the load off the clamp, which then finds a place clear of what is woven.
        script.pull(pass.span(), pass.to(), script.tension(end, last));
        script.moveClamp(end, last, clamp.clamp());
        script.release();
      }
    }
  }

  /**
   * Tells the script what holds an end: a machine clamp, a starting clamp outside, or both.
   *
   * @return whether a machine clamp does
   */
  private static boolean hold(Script script, HalfDone from, EndName end, SpanId span, HoleId at)
      throws Script.NoPlaceForClamp {
    Optional<String> machine = clampOf(from, span, at, ClampSide.INSIDE).map(ClampOn::clamp);
    Optional<String> starting = clampOf(from, span, at, ClampSide.OUTSIDE).map(ClampOn::clamp);
    starting.ifPresent(script.startingClamps::take);
    if (machine.isPresent()) {
      script.hold(end, machine.get(), span, at, starting);
    } else if (starting.isPresent()) {
      script.holdByStartingClamp(end, starting.get(), span, at);
    } else {
      throw new Script.NoPlaceForClamp("Nothing holds " + span + " at " + at + ".");
    }
    return machine.isPresent();
  }

  private static Optional<ClampOn> clampOf(
      HalfDone from, SpanId span, HoleId near, ClampSide side) {
    return from.clamps().stream()
        .filter(c -> c.side() == side && c.span().equals(span) && c.near().equals(near))
        .findFirst();
  }
}
