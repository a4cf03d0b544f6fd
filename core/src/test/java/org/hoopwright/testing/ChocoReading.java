package org.hoopwright.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.Direction;
import org.hoopwright.route.Pass;
import org.hoopwright.route.RouteRequest;

/**
 * The names that a constraint model has for what is strung after given openings.
 *
 * <p>Items are what is put in a sequence: three marks, late mains, crosses in their order. A code
 * is twice an item, plus one for a span that is run against its own sense.
 */
final class ChocoReading {

  /** The mark that begins the sequence; it stands for the last opening main of the short end. */
  static final int OPEN = 0;

  /** The mark where the long end takes over; it stands for its last opening main. */
  static final int TURN = 1;

  /** The mark where a second piece takes over; last of all in one piece. */
  static final int CUT = 2;

  private static final int MARKS = 3;
  private static final int EARLY = 2;

  final Bed bed;
  final RouteRequest request;
  final Openings openings;
  final int crosses;
  final int late;
  private final List<Span> spans = new ArrayList<>(); // late mains, then crosses in their order

  ChocoReading(Openings openings) {
    this.openings = openings;
    bed = openings.bed;
    request = openings.request;
    crosses = bed.crossCount();
    int n = bed.mainsPerSide();
    if (openings.shortOpening < n) {
      spans.add(bed.mains(openings.shortSide).get(n - 1));
    }
    if (openings.longOpening < n) {
      spans.add(bed.mains(openings.shortSide.other()).get(n - 1));
    }
    late = spans.size();
    boolean down = openings.direction == Direction.HEAD_TO_THROAT;
    for (int i = 0; i < crosses; i++) {
      spans.add(bed.crosses().get(down ? i : crosses - 1 - i));
    }
  }

  int items() {
    return MARKS + spans.size();
  }

  int lateItem(int i) {
    return MARKS + i;
  }

  int crossItem(int index) {
    return MARKS + late + index;
  }

  boolean isMark(int item) {
    return item < MARKS;
  }

  boolean isLate(int item) {
    return item >= MARKS && item < MARKS + late;
  }

  boolean isCross(int item) {
    return item >= MARKS + late;
  }

  /** The index of a cross in the order of crosses. */
  int index(int item) {
    return item - MARKS - late;
  }

  boolean outermost(int index) {
    return index < EARLY || index >= crosses - EARLY;
  }

  Span span(int item) {
    return spans.get(item - MARKS);
  }

  /** The item that is this span; empty when the span is strung with the openings. */
  Optional<Integer> item(SpanId id) {
    for (int i = 0; i < spans.size(); i++) {
      if (spans.get(i).id().equals(id)) {
        return Optional.of(MARKS + i);
      }
    }
    return Optional.empty();
  }

  /** All codes: one for a mark, two for a span. */
  IntStream codes() {
    return IntStream.range(0, 2 * items()).filter(c -> c % 2 == 0 || !isMark(c / 2));
  }

  /** The pass that a code stands for; a mark's is the last opening main's. */
  Pass pass(int code) {
    if (isMark(code / 2)) {
      List<Pass> opens = code / 2 == OPEN ? openings.shortOpens : openings.longOpens;
      return opens.get(opens.size() - 1);
    }
    Span span = span(code / 2);
    return code % 2 == 0
        ? new Pass(span.id(), span.from(), span.to())
        : new Pass(span.id(), span.to(), span.from());
  }

  /** Whether string runs along the frame where one code follows another. */
  boolean joins(int c, int d) {
    return c / 2 != CUT && !isMark(d / 2);
  }

  /** Whether one code may follow another. */
  boolean follows(int c, int d) {
    int x = c / 2;
    int y = d / 2;
    if (x == y || y == OPEN) {
      return false;
    }
    if (y == TURN) {
      return x == OPEN || isLate(x) || (isCross(x) && outermost(index(x)));
    }
    if (y == CUT) {
      return x != OPEN;
    }
    if (x == CUT) {
      return isCross(y);
    }
    if (x == OPEN && !(isCross(y) && outermost(index(y)))) {
      return false;
    }
    return inTurn(x, y) && openings.run(pass(c).to(), pass(d).from());
  }

  /** What rule 5 leaves of two crosses strung one after the other by one end. */
  private boolean inTurn(int x, int y) {
    if (!isCross(x) || !isCross(y)) {
      return true;
    }
    int i = index(x);
    int k = index(y);
    boolean iBack = i >= crosses - EARLY;
    boolean kBack = k >= crosses - EARLY;
    return k == i + 1
        || (late > 0 && ((iBack && k == i - 1) || (i < EARLY && kBack) || (iBack && k < EARLY)));
  }
}
