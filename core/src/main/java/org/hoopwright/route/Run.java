package org.hoopwright.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;

/**
 * String along the outside of the frame: from a span to the next of the same end, from a starting
 * knot to the first cross, from the last span to a knot, or the centre loop.
 *
 * @param end whose string it is; the centre loop is the short end's
 * @param after the span before it, with which it shares {@code from}; empty behind a starting knot
 * @param before the span after it, with which it shares {@code to}; empty before a knot
 * @param from the hole where the string comes out, or the hole of a starting knot
 * @param to the hole where it goes in again, or the hole of a knot
 */
public record Run(
    EndName end, Optional<SpanId> after, Optional<SpanId> before, HoleId from, HoleId to) {

  /** All runs of a route in the time order in which they are laid, the centre loop first. */
  public static List<Run> of(Route route) {
    List<Run> runs = new ArrayList<>();
    Pass left = first(route, EndName.SHORT);
    Pass right = first(route, EndName.LONG);
    runs.add(
        new Run(
            EndName.SHORT,
            Optional.of(left.span()),
            Optional.of(right.span()),
            left.from(),
            right.from()));
    for (Moment m : route.order()) {
      StringEnd end = route.end(m.end()).orElseThrow();
      if (m.what() == Moment.What.PASS && m.pass() > 0) {
        runs.add(between(end, m.pass()));
      } else if (m.what() == Moment.What.KNOT) {
        runs.add(toKnot(route, end));
      }
    }
    return List.copyOf(runs);
  }

  private static Pass first(Route route, EndName end) {
    return route.end(end).orElseThrow().passes().get(0);
  }

  private static Run between(StringEnd end, int pass) {
    Pass last = end.passes().get(pass - 1);
    Pass next = end.passes().get(pass);
    return new Run(
        end.name(), Optional.of(last.span()), Optional.of(next.span()), last.to(), next.from());
  }

  private static Run toKnot(Route route, StringEnd end) {
    HoleId knot = end.finish().hole();
    if (end.passes().isEmpty()) {
      Pass first = first(route, EndName.FINISH);
      return new Run(end.name(), Optional.empty(), Optional.of(first.span()), knot, first.from());
    }
    Pass last = end.passes().get(end.passes().size() - 1);
    return new Run(end.name(), Optional.of(last.span()), Optional.empty(), last.to(), knot);
  }

  /** Whether it joins left and right at the axis. */
  public boolean isCentreLoop() {
    return from.side() != to.side();
  }

  /** Its side; that of {@code from} for the centre loop. */
  public Side side() {
    return from.side();
  }

  /** Its name, unique in its route: {@code L7>L8}, {@code L8>L6T} to a knot, {@code L5H>X1}. */
  public String name() {
    return after.map(SpanId::toString).orElse(from.toString())
        + ">"
        + before.map(SpanId::toString).orElse(to.toString());
  }

  /** The name. */
  @Override
  public String toString() {
    return name();
  }
}
