package org.hoopwright.patterns.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Piece;
import org.hoopwright.route.Route;
import org.hoopwright.route.StringEnd;

/**
 * A stretch of string outside the hoop.
 *
 * @param id its name, unique in its route
 * @param from the hole where the string comes out
 * @param to the hole where it goes in again
 * @param end whose string it is; the centre loop is the short end's
 * @param after the span before it
 * @param before the span after it; empty before a knot
 */
record Run(String id, HoleId from, HoleId to, EndName end, SpanId after, Optional<SpanId> before) {

  /** The centre loop of this name joins both ends of the piece with the mains. */
  static final String CENTRE_LOOP = "run-centre-loop";

  /** All runs of a route, with the stretches to its knots. */
  static List<Run> of(Route route) {
    List<Run> runs = new ArrayList<>();
    for (Piece piece : route.pieces()) {
      centreLoop(piece).ifPresent(runs::add);
      for (StringEnd end : piece.ends()) {
        List<Pass> passes = end.passes();
        for (int i = 0; i + 1 < passes.size(); i++) {
          Pass next = passes.get(i + 1);
          runs.add(
              new Run(
                  "run-" + passes.get(i).span() + "-" + next.span(),
                  passes.get(i).to(),
                  next.from(),
                  end.name(),
                  passes.get(i).span(),
                  Optional.of(next.span())));
        }
        toKnot(piece, end).ifPresent(runs::add);
      }
    }
    return List.copyOf(runs);
  }

  private static Optional<Run> centreLoop(Piece piece) {
    Optional<Pass> a = first(piece, EndName.SHORT);
    Optional<Pass> b = first(piece, EndName.LONG);
    return a.isEmpty() || b.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Run(
                CENTRE_LOOP,
                a.get().from(),
                b.get().from(),
                EndName.SHORT,
                a.get().span(),
                Optional.of(b.get().span())));
  }

  private static Optional<Pass> first(Piece piece, EndName name) {
    return piece.end(name).flatMap(e -> e.passes().stream().findFirst());
  }

  private static Optional<Run> toKnot(Piece piece, StringEnd end) {
    Knot knot = end.finish();
    List<Pass> passes = end.passes();
    Optional<Run> run;
    if (passes.isEmpty()) {
      // The start of the crosses has no pass of its own: its string leads from where the first
      // cross goes in back to the knot.
      run =
          first(piece, EndName.FINISH)
              .map(p -> knotRun(end.name(), p.from(), knot.hole(), p.span()));
    } else {
      Pass last = passes.get(passes.size() - 1);
      run = Optional.of(knotRun(end.name(), last.to(), knot.hole(), last.span()));
    }
    return run.filter(r -> !r.from().equals(r.to()));
  }

  private static Run knotRun(EndName end, HoleId from, HoleId to, SpanId after) {
    return new Run("run-" + end.word() + "-knot", from, to, end, after, Optional.empty());
  }
}
