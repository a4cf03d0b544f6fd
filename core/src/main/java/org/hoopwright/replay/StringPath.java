package org.hoopwright.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Piece;

/**
 * One piece of string as it lies in the frame: a line from the tail of its first end (short or
 * start) through the laced spans to the tail of its second end (long or finish). Confined to one
 * replay.
 */
final class StringPath {

  /**
   * A laced span as the line runs through it.
   *
   * @param span the span
   * @param low the hole nearer to the tail of the first end, along the string
   * @param high the hole nearer to the tail of the second end
   */
  record Stretch(SpanId span, HoleId low, HoleId high) {}

  private final int piece;
  private final EndName lowEnd;
  private final EndName highEnd;
  private final List<Pass> lowPasses = new ArrayList<>();
  private final List<Pass> highPasses = new ArrayList<>();
  private List<Stretch> line = List.of();

  StringPath(int piece, Piece.Role role) {
    this.piece = piece;
    lowEnd = role == Piece.Role.CROSSES ? EndName.START : EndName.SHORT;
    highEnd = role == Piece.Role.CROSSES ? EndName.FINISH : EndName.LONG;
  }

  int piece() {
    return piece;
  }

  EndName lowEnd() {
    return lowEnd;
  }

  EndName highEnd() {
    return highEnd;
  }

  boolean has(EndName end) {
    return end == lowEnd || end == highEnd;
  }

  /** The spans that this end has laced, in order. */
  List<Pass> passes(EndName end) {
    return end == lowEnd ? lowPasses : highPasses;
  }

  /** All laced spans along the string. */
  List<Stretch> line() {
    return line;
  }

  void lace(EndName end, Pass pass) {
    passes(end).add(pass);
    redraw();
  }

  void unlaceLast(EndName end) {
    List<Pass> own = passes(end);
    own.remove(own.size() - 1);
    redraw();
  }

  /**
   * Where the tail of this end leaves the frame: out of its last span, or, while it has laced none,
   * over the centre loop (or before the first cross) at the entry of the other end's first span.
   * Empty while nothing is laced.
   */
  Optional<Grip> tail(EndName end) {
    List<Pass> own = passes(end);
    if (!own.isEmpty()) {
      Pass last = own.get(own.size() - 1);
      return Optional.of(new Grip(piece, end, last.span(), last.to()));
    }
    List<Pass> other = passes(end == lowEnd ? highEnd : lowEnd);
    return other.isEmpty()
        ? Optional.empty()
        : Optional.of(new Grip(piece, end, other.get(0).span(), other.get(0).from()));
  }

  private void redraw() {
    List<Stretch> all = new ArrayList<>(lowPasses.size() + highPasses.size());
    for (int i = lowPasses.size() - 1; i >= 0; i--) {
      Pass p = lowPasses.get(i);
      all.add(new Stretch(p.span(), p.to(), p.from()));
    }
    for (Pass p : highPasses) {
      all.add(new Stretch(p.span(), p.from(), p.to()));
    }
    line = List.copyOf(all);
  }
}
