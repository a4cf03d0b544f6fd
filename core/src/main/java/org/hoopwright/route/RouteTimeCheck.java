package org.hoopwright.route;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.Direction;
import org.hoopwright.geometry.Side;

/** Whether a route's time order keeps to the order of the crosses and to the turns of the ends. */
final class RouteTimeCheck {

  /** So many crosses at each end of their order are early, and so many may the short end string. */
  private static final int EARLY = 2;

  /**
   * A starting clamp on the first cross gives way to a knot after so many (Racquet Sports Industry,
   * "Starting clamp", 2004/03).
   */
  private static final int REPULL = 3;

  private final Bed bed;
  private final Route route;
  private final List<RouteEvent> events;
  private final List<Violation> found = new ArrayList<>();

  private RouteTimeCheck(Bed bed, Route route, List<RouteEvent> events) {
    this.bed = bed;
    this.route = route;
    this.events = events;
  }

  static List<Violation> check(Bed bed, Route route, List<RouteEvent> events) {
    RouteTimeCheck check = new RouteTimeCheck(bed, route, events);
    check.crosses();
    check.lateMains();
    check.shortEnd();
    check.turns();
    if (route.pieces().size() == 2) {
      check.secondPiece();
    }
    return List.copyOf(check.found);
  }

  private void report(Violation.Rule rule, String what) {
    found.add(new Violation(rule, what));
  }

  /** The place of a cross in the order of crosses, from 0. */
  private int index(SpanId cross) {
    return route.direction() == Direction.HEAD_TO_THROAT
        ? cross.number() - 1
        : bed.crossCount() - cross.number();
  }

  private boolean outermost(SpanId cross) {
    return index(cross) < EARLY || index(cross) >= bed.crossCount() - EARLY;
  }

  private void crosses() {
    Set<SpanId> strung = new HashSet<>();
    TreeSet<Integer> open = new TreeSet<>();
    for (int i = 0; i < bed.crossCount(); i++) {
      open.add(i);
    }
    for (RouteEvent event : events) {
      SpanId span = event.pass().map(Pass::span).orElse(null);
      if (span == null) {
        continue;
      }
      if (span.isCross() && !open.isEmpty()) {
        int i = index(span);
        boolean mainsIn =
            strung.contains(SpanId.main(Side.LEFT, bed.mainsPerSide()))
                && strung.contains(SpanId.main(Side.RIGHT, bed.mainsPerSide()));
        boolean next = i == open.first();
        boolean lastNext = i == open.last();
        boolean early = (next && i < EARLY) || (lastNext && i >= bed.crossCount() - EARLY);
        if (mainsIn ? !next : !early) {
          report(
              Violation.Rule.CROSSES,
              "Cross %s is out of turn %s the outermost mains are in."
                  .formatted(span, mainsIn ? "when" : "before"));
        }
        open.remove(i);
      }
      strung.add(span);
    }
  }

  /** A main that no cross comes before is an opening main, and those go in without a gap. */
  private void lateMains() {
    int firstCross = first(e -> e.pass().filter(p -> p.span().isCross()).isPresent());
    for (int i = 0; i < firstCross; i++) {
      RouteEvent event = events.get(i);
      if (event.pass().isPresent() && !event.isOpening(route)) {
        report(
            Violation.Rule.MAINS,
            "Main %s is strung before the first cross and is not stated as an opening main."
                .formatted(event.pass().get().span()));
      }
    }
  }

  private void shortEnd() {
    List<SpanId> crosses =
        route.end(EndName.SHORT).map(StringEnd::passes).orElse(List.of()).stream()
            .map(Pass::span)
            .filter(SpanId::isCross)
            .toList();
    int most = route.pieces().size() == 1 ? EARLY : 0;
    if (crosses.size() > most) {
      report(
          Violation.Rule.TIME_ORDER,
          "The short end strings %s crosses, more than %s.".formatted(crosses.size(), most));
    }
    for (SpanId cross : crosses) {
      if (!outermost(cross)) {
        report(
            Violation.Rule.TIME_ORDER,
            "The short end strings %s, which is not among the first or last two crosses."
                .formatted(cross));
      }
    }
  }

  private int first(Predicate<RouteEvent> which) {
    for (int i = 0; i < events.size(); i++) {
      if (which.test(events.get(i))) {
        return i;
      }
    }
    return events.size();
  }

  private int last(Predicate<RouteEvent> which) {
    int found = -1;
    for (int i = 0; i < events.size(); i++) {
      if (which.test(events.get(i))) {
        found = i;
      }
    }
    return found;
  }

  private void require(boolean ok, String what) {
    if (!ok) {
      report(Violation.Rule.TIME_ORDER, what);
    }
  }

  private void turns() {
    int lastOpening = last(e -> e.isOpening(route));
    int firstBeyond = first(e -> !e.isOpening(route));
    int longBeyond = first(e -> e.isPassOf(EndName.LONG) && !e.isOpening(route));
    int lastShort = last(e -> e.isPassOf(EndName.SHORT));
    int lastLong = last(e -> e.isPassOf(EndName.LONG));
    int shortKnot = first(e -> e.isKnotOf(EndName.SHORT));
    int longKnot = first(e -> e.isKnotOf(EndName.LONG));
    require(
        lastOpening < firstBeyond, "The opening mains of both ends come before everything else.");
    require(
        lastShort < longBeyond,
        "The long end goes beyond its opening mains before the short end has strung all.");
    if (route.pieces().size() == 2) {
      require(
          shortKnot < longBeyond,
          "The long end goes beyond its opening mains before the short end is tied.");
    }
    SpanId anchor =
        route.end(EndName.SHORT).map(end -> end.finish().anchor()).orElse(SpanId.cross(1));
    int anchored = first(e -> e.pass().filter(p -> p.span().equals(anchor)).isPresent());
    require(
        shortKnot == 1 + Math.max(anchored, Math.max(lastShort, lastOpening)),
        "The short end is tied at once, or as soon as its anchor is in.");
    require(
        longKnot == 1 + Math.max(lastLong, shortKnot),
        "The long end is tied when it has strung all, after the short end.");
  }

  private void secondPiece() {
    int firstOfSecond = first(e -> e.moment().piece() == 1);
    int lastOfFirst = last(e -> e.moment().piece() == 0);
    require(
        lastOfFirst < firstOfSecond,
        "The second piece begins before the first is tied at both ends.");
    int firstCross = first(e -> e.isPassOf(EndName.FINISH));
    int clamp = first(e -> e.moment().what() == Moment.What.CLAMP);
    int startKnot = first(e -> e.isKnotOf(EndName.START));
    boolean clamped = clamp < events.size();
    require(
        (clamped ? clamp : startKnot) < firstCross,
        "The second piece is held before its first cross.");
    if (clamped) {
      int count = route.end(EndName.FINISH).map(e -> e.passes().size()).orElse(0);
      int repull = Math.min(REPULL, count) - 1;
      require(
          startKnot == 1 + first(e -> e.isPassOf(EndName.FINISH) && e.moment().pass() == repull),
          "The starting clamp gives way to a knot after the third cross.");
    }
    require(
        first(e -> e.isKnotOf(EndName.FINISH)) == events.size() - 1,
        "The second piece is tied when it has strung all.");
  }
}
