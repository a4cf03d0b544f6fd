package org.hoopwright.bench;

import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.Bed;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Moment;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Piece;
import org.hoopwright.route.Route;
import org.hoopwright.route.StringEnd;

/**
 * Writes the bench plan of a route: cut, start, opening mains a side at a time, the rest in the
 * route's time order, knots, trimming.
 *
 * <p>Each end of a piece has a machine clamp of its own that follows from span to span: the new
 * span is pulled while the old clamp still holds, the clamp moves while the grip holds, then the
 * tensioner lets go. A clamp that would be in the way of a span woven meanwhile is set beyond it,
 * and a finding says what that costs. A second piece needs one machine clamp, and another for the
 * moment in which a starting clamp is replaced by a knot.
 *
 * <p>Pure and deterministic. {@code org.hoopwright.replay} proves what this makes.
 */
public final class Planner {

  private Planner() {}

  /**
   * Writes the plan.
   *
   * @param bed the bed
   * @param route a route of that bed
   * @param job what is asked
   * @return the plan, or empty when a clamp that the route needs has no free place on its span, as
   *     may happen where an end waits long for the anchor of its knot; another route or another
   *     knot then serves
   */
  public static Optional<BenchPlan> plan(Bed bed, Route route, Job job) {
    Script script = new Script(bed, route, job);
    List<EndLength> lengths = Lengths.of(bed, route, job);
    List<Double> cut = Lengths.cut(route, lengths);
    try {
      script.add(
          new Step.Check(
              "Look the frame, grommets and holes over, and mount it as the makers of frame and machine say."));
      cut(script, 0, cut.get(0), lengths);
      StartScript startScript = new StartScript(script);
      StartScript.Started started = startScript.write();
      openingMains(script, startScript.anchorEnd(), started.pulledA(), started.pulledB());
      rest(script, cut, lengths, false);
      finish(script);
      script.findings.addAll(script.startingClamps.refusals());
      return Optional.of(
          new BenchPlan(
              bed,
              route,
              job,
              Optional.of(started.start()),
              lengths,
              cut,
              script.steps,
              script.findings));
    } catch (Script.NoPlaceForClamp e) {
      return Optional.empty();
    }
  }

  private static void cut(Script script, int piece, double mm, List<EndLength> lengths) {
    Piece p = script.route.pieces().get(piece);
    String what =
        switch (p.role()) {
          case WHOLE -> "for mains and crosses";
          case MAINS -> "for the mains";
          case CROSSES -> "for the crosses";
        };
    Optional<EndLength> shortEnd =
        lengths.stream().filter(l -> l.end() == EndName.SHORT).findFirst();
    String share =
        piece == 0 && shortEnd.isPresent()
            ? ", and mark "
                + Say.mm(Math.ceil(shortEnd.get().totalMm() / 10) * 10)
                + " of it as the short end"
            : "";
    script.add(new Step.Cut(piece, mm, "Cut " + Say.mm(mm) + " of string " + what + share + "."));
  }

  /** Strings the opening mains that the start has left, always on the side that is behind. */
  static void openingMains(Script script, EndName a, int pulledA, int pulledB)
      throws Script.NoPlaceForClamp {
    EndName b = a == EndName.SHORT ? EndName.LONG : EndName.SHORT;
    int doneA = pulledA;
    int doneB = pulledB;
    while (doneA < script.route.opening(a) || doneB < script.route.opening(b)) {
      boolean turnOfA =
          doneB >= script.route.opening(b) || (doneA <= doneB && doneA < script.route.opening(a));
      if (turnOfA) {
        string(script, a, doneA++);
      } else {
        string(script, b, doneB++);
      }
    }
  }

  private static void string(Script script, EndName end, int index) throws Script.NoPlaceForClamp {
    script.thread(end, index);
    script.pullAndClamp(end, index, script.freeMachineClamp());
  }

  /** Everything after the openings that is not done, in the route's time order. */
  static void rest(Script script, List<Double> cut, List<EndLength> lengths, boolean secondBegun)
      throws Script.NoPlaceForClamp {
    boolean secondCut = secondBegun;
    for (Moment m : script.route.order()) {
      if (script.done(m)) {
        continue;
      }
      if (m.piece() == 1 && !secondCut) {
        script.add(
            new Step.Check(
                "Look at the mains: none slack, none twisted, as many on the left as on the right."));
        cut(script, 1, cut.get(1), lengths);
        secondCut = true;
      }
      switch (m.what()) {
        case PASS -> {
          if (m.pass() >= script.route.opening(m.end())) {
            pass(script, m);
          }
        }
        case KNOT -> script.tie(m.end());
        case CLAMP -> {
          // The clamp goes on the tail of the first cross, which must be woven first: see pass.
        }
      }
    }
  }

  private static void pass(Script script, Moment m) throws Script.NoPlaceForClamp {
    boolean first = m.end() == EndName.FINISH && m.pass() == 0;
    Optional<HoleId> clampAt = first ? script.end(EndName.START).startingClamp() : Optional.empty();
    if (clampAt.isEmpty()) {
      string(script, m.end(), m.pass());
      return;
    }
    Pass pass = script.pass(m.end(), 0);
    script.thread(m.end(), 0);
    String starting = script.startingClamps.take();
    script.add(
        new Step.SetClamp(
            starting,
            pass.span(),
            clampAt.get(),
            0,
            ClampSide.OUTSIDE,
            "Set "
                + Say.clamp(starting)
                + " on the string outside the frame at "
                + clampAt.get()
                + ", close to it: it holds "
                + pass.span()
                + " until its knot is tied."));
    script.holdByStartingClamp(EndName.START, starting, pass.span(), clampAt.get());
    script.pullAndClamp(m.end(), 0, script.freeMachineClamp());
  }

  static void finish(Script script) {
    for (Piece piece : script.route.pieces()) {
      for (StringEnd end : piece.ends()) {
        script.add(new Step.Trim(script.piece(end.name()), end.name(), Say.trim(end.name())));
      }
    }
    script.add(
        new Step.Check(
            "Straighten the strings, look along every cross for two overs or two unders in a row, and feel that every clamp is off."));
  }
}
