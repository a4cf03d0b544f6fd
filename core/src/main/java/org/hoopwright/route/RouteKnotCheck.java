package org.hoopwright.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Ring;

/** Whether each end of a route has a knot that can be tied when the route ties it. */
final class RouteKnotCheck {

  private final Bed bed;
  private final Route route;
  private final RouteRequest request;
  private final List<Violation> found = new ArrayList<>();

  private RouteKnotCheck(Bed bed, Route route, RouteRequest request) {
    this.bed = bed;
    this.route = route;
    this.request = request;
  }

  static List<Violation> check(
      Bed bed, Route route, RouteRequest request, List<RouteEvent> events) {
    RouteKnotCheck check = new RouteKnotCheck(bed, route, request);
    check.places();
    Set<SpanId> pulled = new HashSet<>();
    for (RouteEvent event : events) {
      event.pass().ifPresent(p -> pulled.add(p.span()));
      if (event.isKnot()) {
        check.knot(event.end(), pulled);
      }
    }
    check.clamp();
    return List.copyOf(check.found);
  }

  private void report(String what) {
    found.add(new Violation(Violation.Rule.KNOTS, what));
  }

  private List<StringEnd> ends() {
    return route.pieces().stream().flatMap(p -> p.ends().stream()).toList();
  }

  private void places() {
    Map<HoleId, Integer> knots = new HashMap<>();
    for (StringEnd end : ends()) {
      HoleId hole = end.finish().hole();
      knots.merge(hole, 1, Integer::sum);
      if (!bed.ring().isTieOff(hole)) {
        report("Hole %s is no tie-off hole.".formatted(hole));
      }
      if (knots.getOrDefault(hole, 0) == 2) {
        report("Hole %s has two knots.".formatted(hole));
      }
      if (bed.spansAt(hole).size() + 1 > bed.ring().bore(hole)) {
        report("Hole %s has no room for a knot beside its strings.".formatted(hole));
      }
    }
  }

  /** The pass at whose outside this end is knotted. */
  private Pass lastPass(StringEnd end) {
    if (end.name() == EndName.START) {
      return route.end(EndName.FINISH).orElseThrow().passes().get(0);
    }
    return end.passes().get(end.passes().size() - 1);
  }

  private void knot(StringEnd end, Set<SpanId> pulled) {
    Ring ring = bed.ring();
    Knot knot = end.finish();
    Pass last = lastPass(end);
    HoleId exit = end.name() == EndName.START ? last.from() : last.to();
    String name = end.name().word();
    if (!ring.runAllowed(exit, knot.hole())) {
      report(
          "No string may lie from %s to the knot of the %s end at %s."
              .formatted(exit, name, knot.hole()));
    } else if (Math.abs(ring.place(exit) - ring.place(knot.hole())) > request.knotLimit()) {
      report(
          "The knot of the %s end at %s is more than %s places from %s."
              .formatted(name, knot.hole(), request.knotLimit(), exit));
    }
    if (!bed.span(knot.anchor()).uses(knot.hole())) {
      report("The anchor %s does not run through hole %s.".formatted(knot.anchor(), knot.hole()));
    }
    if (!pulled.contains(knot.anchor())) {
      report("The anchor %s is not in when the %s end is tied.".formatted(knot.anchor(), name));
    }
    if (knot.anchor().equals(last.span())) {
      report("The %s end is tied round its own span %s.".formatted(name, knot.anchor()));
    }
  }

  private void clamp() {
    for (StringEnd end : ends()) {
      end.startingClamp()
          .ifPresent(
              hole -> {
                if (!hole.equals(lastPass(end).from())) {
                  report(
                      "The starting clamp is at %s, not where the first cross enters."
                          .formatted(hole));
                }
                if (bed.inHeadZone(hole)) {
                  report("The starting clamp at %s is outside in the head zone.".formatted(hole));
                }
                if (request.startingClamps() == 0) {
                  report("A starting clamp is used at %s, and there is none.".formatted(hole));
                }
              });
    }
  }
}
