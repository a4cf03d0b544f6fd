package org.hoopwright.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.Pass;
import org.hoopwright.route.RouteRequest;

/**
 * What is settled before a constraint solver begins: start end, direction, short side, openings;
 * and the names that the model has for the rest.
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
  final End start;
  final Direction direction;
  final Side shortSide;
  final int shortOpening;
  final int longOpening;
  final List<Pass> shortOpens;
  final List<Pass> longOpens;
  final int crosses;
  final int late;
  private final List<Span> spans = new ArrayList<>(); // late mains, then crosses in their order

  private ChocoReading(
      Bed bed,
      RouteRequest request,
      End start,
      Direction direction,
      Side shortSide,
      int shortOpening,
      int longOpening) {
    this.bed = bed;
    this.request = request;
    this.start = start;
    this.direction = direction;
    this.shortSide = shortSide;
    this.shortOpening = shortOpening;
    this.longOpening = longOpening;
    shortOpens = opening(shortSide, shortOpening);
    longOpens = opening(shortSide.other(), longOpening);
    crosses = bed.crossCount();
    int n = bed.mainsPerSide();
    if (shortOpening < n) {
      spans.add(bed.mains(shortSide).get(n - 1));
    }
    if (longOpening < n) {
      spans.add(bed.mains(shortSide.other()).get(n - 1));
    }
    late = spans.size();
    for (int i = 0; i < crosses; i++) {
      spans.add(bed.crosses().get(direction == Direction.HEAD_TO_THROAT ? i : crosses - 1 - i));
    }
  }

  /** All readings whose opening mains can be strung, plain ones first. */
  static List<ChocoReading> all(Bed bed, RouteRequest request) {
    List<ChocoReading> all = new ArrayList<>();
    int n = bed.mainsPerSide();
    if (n < 2 || bed.crossCount() < 2) {
      return all;
    }
    int least = n >= 4 && bed.crossCount() >= 5 ? n - 1 : n;
    for (int out = 0; out <= 2 * (n - least); out++) {
      for (Direction direction : Direction.values()) {
        for (End start : End.values()) {
          for (Side side : Side.values()) {
            for (int s = n; s >= least; s--) {
              int l = 2 * n - out - s;
              if (l >= least
                  && l <= n
                  && request.mainsStart().orElse(start) == start
                  && bed.layout().mainsStart().orElse(start) == start
                  && request.direction().orElse(direction) == direction) {
                all.add(new ChocoReading(bed, request, start, direction, side, s, l));
              }
            }
          }
        }
      }
    }
    all.removeIf(r -> !r.trail(r.shortOpens) || !r.trail(r.longOpens) || r.goesRoundForbidden());
    return all;
  }

  private List<Pass> opening(Side side, int count) {
    List<Pass> passes = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      Span main = bed.mains(side).get(k);
      boolean down = (k % 2 == 0) == (start == End.HEAD);
      passes.add(
          down
              ? new Pass(main.id(), main.from(), main.to())
              : new Pass(main.id(), main.to(), main.from()));
    }
    return passes;
  }

  private boolean trail(List<Pass> passes) {
    return IntStream.range(1, passes.size())
        .allMatch(i -> run(passes.get(i - 1).to(), passes.get(i).from()));
  }

  private boolean goesRoundForbidden() {
    End mainsEnd = bed.mainsPerSide() % 2 == 0 ? start : start.other();
    return late > 0 && direction.from() != mainsEnd && !bed.layout().aroundTheWorld();
  }

  boolean run(HoleId a, HoleId b) {
    return bed.ring().runAllowed(a, b) && apart(a, b) <= request.runLimit();
  }

  int apart(HoleId a, HoleId b) {
    return Math.abs(bed.ring().place(a) - bed.ring().place(b));
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
      List<Pass> opens = code / 2 == OPEN ? shortOpens : longOpens;
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
    return inTurn(x, y) && run(pass(c).to(), pass(d).from());
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
