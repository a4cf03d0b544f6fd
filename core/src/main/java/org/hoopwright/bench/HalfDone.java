package org.hoopwright.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Pass;

/**
 * A job that somebody has begun: what is strung, what has had its own pull, where the tails, knots
 * and clamps are. Immutable.
 *
 * @param pieces the piece with the mains, and the crosses' piece when it has been begun
 * @param pulled spans that have had a pull of their own
 * @param clamps the clamps that are on
 * @param misweaves spans that go over or under where they must not, and have to come out
 */
public record HalfDone(
    List<StrungPiece> pieces, Set<SpanId> pulled, List<ClampOn> clamps, List<SpanId> misweaves) {

  /**
   * Copies everything.
   *
   * @throws IllegalArgumentException when there is not one piece with short and long ends, or a
   *     second one that has not start and finish ends
   */
  public HalfDone {
    pieces = List.copyOf(pieces);
    pulled = Collections.unmodifiableSet(new TreeSet<>(pulled));
    clamps = List.copyOf(clamps);
    misweaves = List.copyOf(misweaves);
    if (pieces.isEmpty() || pieces.size() > 2) {
      throw new IllegalArgumentException(
          "The pieces of a half-done job (%s) must be 1 or 2.".formatted(pieces.size()));
    }
    for (int i = 0; i < pieces.size(); i++) {
      EndName first = pieces.get(i).low().name();
      if (first != (i == 0 ? EndName.SHORT : EndName.START)) {
        throw new IllegalArgumentException(
            "Piece %s begins with the %s end, but the first piece has short and long ends and the second start and finish."
                .formatted(i, first.word()));
      }
    }
  }

  /** An empty frame. */
  public static HalfDone nothing() {
    return new HalfDone(List.of(emptyPiece(0)), Set.of(), List.of(), List.of());
  }

  /**
   * The state after so many steps of a plan.
   *
   * @throws IllegalArgumentException when the plan has fewer steps or the number is negative
   */
  public static HalfDone after(BenchPlan plan, int steps) {
    if (steps < 0 || steps > plan.steps().size()) {
      throw new IllegalArgumentException(
          "The number of steps (%s) must be from 0 to %s.".formatted(steps, plan.steps().size()));
    }
    return new StepTracker(plan).after(steps);
  }

  static StrungPiece emptyPiece(int piece) {
    return piece == 0
        ? new StrungPiece(
            List.of(StrungEnd.empty(EndName.SHORT), StrungEnd.empty(EndName.LONG)), false)
        : new StrungPiece(
            List.of(StrungEnd.empty(EndName.START), StrungEnd.empty(EndName.FINISH)), false);
  }

  /** Every pass of every end. */
  public List<Pass> passes() {
    return pieces.stream()
        .flatMap(p -> p.ends().stream())
        .flatMap(e -> e.passes().stream())
        .toList();
  }

  /** The same with this end called short: which end is short is a label. */
  public HalfDone withShort(Side side) {
    StrungPiece mains = pieces.get(0);
    boolean right =
        mains.isEmpty()
            || sideOf(mains.low()).map(side::equals).orElse(false)
            || sideOf(mains.high()).map(s -> s != side).orElse(false);
    if (right) {
      return this;
    }
    List<StrungPiece> all = new ArrayList<>(pieces);
    all.set(
        0,
        new StrungPiece(
            List.of(mains.high().named(EndName.SHORT), mains.low().named(EndName.LONG)),
            mains.broken()));
    return new HalfDone(all, pulled, clamps, misweaves);
  }

  private static Optional<Side> sideOf(StrungEnd end) {
    return end.passes().stream().findFirst().flatMap(p -> p.span().side());
  }

  /**
   * The same on another bed of the frame: a strung span is the one that runs between the same two
   * holes. Spans that the bed does not have keep their names.
   */
  public HalfDone on(Bed bed) {
    List<StrungPiece> all = new ArrayList<>();
    for (StrungPiece piece : pieces) {
      all.add(
          new StrungPiece(
              piece.ends().stream()
                  .map(
                      e ->
                          new StrungEnd(
                              e.name(),
                              e.passes().stream().map(p -> onBed(bed, p)).toList(),
                              e.knot(),
                              e.tailMm()))
                  .toList(),
              piece.broken()));
    }
    List<Pass> before = passes();
    Set<SpanId> own = new TreeSet<>();
    List<ClampOn> on = new ArrayList<>();
    for (Pass p : before) {
      if (pulled.contains(p.span())) {
        own.add(onBed(bed, p).span());
      }
    }
    for (ClampOn c : clamps) {
      SpanId span =
          before.stream()
              .filter(p -> p.span().equals(c.span()))
              .map(p -> onBed(bed, p).span())
              .findFirst()
              .orElse(c.span());
      on.add(new ClampOn(c.clamp(), span, c.near(), c.distanceMm(), c.side()));
    }
    return new HalfDone(all, own, on, misweaves);
  }

  private static Pass onBed(Bed bed, Pass pass) {
    return bed.spans().stream()
        .filter(s -> s.uses(pass.from()) && s.other(pass.from()).equals(pass.to()))
        .map(Span::id)
        .findFirst()
        .map(id -> new Pass(id, pass.from(), pass.to()))
        .orElse(pass);
  }
}
