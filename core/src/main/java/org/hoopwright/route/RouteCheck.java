package org.hoopwright.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Side;

/**
 * Proves that a route is legal and complete, from the bed alone.
 *
 * <p>Each rule of {@link RouteSearch} is looked at by itself on the finished route, and everything
 * that the route states about itself (measures, families) is worked out anew. The check shares no
 * code with the search, so that a fault of the one does not hide in the other.
 */
public final class RouteCheck {

  /** Early crosses and late mains need so many crosses and mains a side. */
  private static final int CROSSES_FOR_EARLY = 5;

  private static final int MAINS_FOR_EARLY = 4;

  private final Bed bed;
  private final Route route;
  private final RouteRequest request;
  private final Ring ring;
  private final List<Violation> found = new ArrayList<>();

  private RouteCheck(Bed bed, Route route, RouteRequest request) {
    this.bed = bed;
    this.route = route;
    this.request = request;
    this.ring = bed.ring();
  }

  /**
   * Checks a route against the rules, the layout and the request.
   *
   * @param bed the bed that the route strings
   * @param route any route, also one of another bed
   * @param request what was asked
   * @return what is wrong; empty when the route is legal and complete. When the route does not fit
   *     together at all ({@link Violation.Rule#FORM}), nothing else is looked at
   */
  public static List<Violation> check(Bed bed, Route route, RouteRequest request) {
    List<Violation> form = RouteFormCheck.check(bed, route);
    if (!form.isEmpty()) {
      return form;
    }
    RouteCheck check = new RouteCheck(bed, route, request);
    check.everySpanOnce();
    check.holes();
    check.runs();
    check.mains();
    check.request();
    List<RouteEvent> events = RouteEvent.of(route);
    check.found.addAll(RouteTimeCheck.check(bed, route, events));
    check.found.addAll(RouteKnotCheck.check(bed, route, request, events));
    check.found.addAll(RouteMeasureCheck.check(bed, route, events));
    return List.copyOf(check.found);
  }

  private void report(Violation.Rule rule, String what) {
    found.add(new Violation(rule, what));
  }

  private List<StringEnd> ends() {
    return route.pieces().stream().flatMap(p -> p.ends().stream()).toList();
  }

  private void everySpanOnce() {
    Map<SpanId, Integer> times = new HashMap<>();
    for (StringEnd end : ends()) {
      end.passes().forEach(p -> times.merge(p.span(), 1, Integer::sum));
    }
    for (Span span : bed.spans()) {
      int n = times.getOrDefault(span.id(), 0);
      if (n != 1) {
        report(
            Violation.Rule.EVERY_SPAN_ONCE,
            "Span %s is strung %s times, not once.".formatted(span.id(), n));
      }
    }
  }

  private void holes() {
    Map<HoleId, Integer> passes = new HashMap<>();
    Map<HoleId, Integer> knots = new HashMap<>();
    for (StringEnd end : ends()) {
      for (Pass pass : end.passes()) {
        passes.merge(pass.from(), 1, Integer::sum);
        passes.merge(pass.to(), 1, Integer::sum);
      }
      knots.merge(end.finish().hole(), 1, Integer::sum);
    }
    for (Side side : Side.values()) {
      for (HoleId hole : ring.list(side)) {
        int through = passes.getOrDefault(hole, 0);
        int all = through + knots.getOrDefault(hole, 0);
        if (through > ring.passLimit(hole)) {
          report(
              Violation.Rule.HOLES,
              "Hole %s carries %s passes, more than %s."
                  .formatted(hole, through, ring.passLimit(hole)));
        }
        if (all > ring.bore(hole)) {
          report(
              Violation.Rule.HOLES,
              "Hole %s carries %s strings, more than its bore, %s."
                  .formatted(hole, all, ring.bore(hole)));
        }
      }
    }
  }

  private void runs() {
    for (StringEnd end : ends()) {
      for (int i = 1; i < end.passes().size(); i++) {
        HoleId a = end.passes().get(i - 1).to();
        HoleId b = end.passes().get(i).from();
        if (!ring.runAllowed(a, b)) {
          report(Violation.Rule.RUNS, "No run may join %s and %s.".formatted(a, b));
        } else if (Math.abs(ring.place(a) - ring.place(b)) > request.runLimit()) {
          report(
              Violation.Rule.RUNS,
              "The run from %s to %s is longer than %s places."
                  .formatted(a, b, request.runLimit()));
        }
      }
    }
  }

  private void mains() {
    int n = bed.mainsPerSide();
    boolean early = n >= MAINS_FOR_EARLY && bed.crossCount() >= CROSSES_FOR_EARLY;
    for (EndName name : List.of(EndName.SHORT, EndName.LONG)) {
      Side side = name == EndName.SHORT ? route.shortSide() : route.shortSide().other();
      List<Pass> passes = route.end(name).map(StringEnd::passes).orElse(List.of());
      int opening = route.opening(name);
      if (opening > n || opening < (early ? n - 1 : n) || opening > passes.size()) {
        report(
            Violation.Rule.MAINS,
            "The %s end opens with %s of %s mains a side.".formatted(name.word(), opening, n));
        continue;
      }
      for (int i = 0; i < passes.size(); i++) {
        Pass pass = passes.get(i);
        int k = i + 1;
        if (i < opening) {
          // The first main leaves the centre loop, and each next one begins where the last ended.
          End entry = k % 2 == 1 ? route.mainsStart() : route.mainsStart().other();
          Span span = bed.span(SpanId.main(side, k));
          HoleId hole = entry == End.HEAD ? span.from() : span.to();
          if (!pass.span().equals(span.id()) || !pass.from().equals(hole)) {
            report(
                Violation.Rule.MAINS,
                "Pass %s of the %s end is %s, not %s from hole %s."
                    .formatted(k, name.word(), pass, span.id(), hole));
          }
        } else if (pass.span().isMain() && pass.span().number() != n) {
          report(
              Violation.Rule.MAINS,
              "Main %s is strung after the opening mains of the %s end, and only main %s may be."
                  .formatted(pass.span(), name.word(), n));
        }
      }
    }
  }

  private void request() {
    int pieces = route.pieces().size();
    if (request.pieces().orElse(pieces) != pieces) {
      report(
          Violation.Rule.REQUEST,
          "The route has %s piece(s), which was excluded.".formatted(pieces));
    }
    if (request.crossesOfOtherString() && route.pieces().stream().anyMatch(RouteCheck::mixed)) {
      report(
          Violation.Rule.REQUEST,
          "String of the mains goes on into crosses, which are of another string.");
    }
    excluded("direction", request.direction(), route.direction(), Direction::word);
    excluded("start of the mains", request.mainsStart(), route.mainsStart(), End::word);
    excluded("start of the mains", bed.layout().mainsStart(), route.mainsStart(), End::word);
    if (!bed.layout().aroundTheWorld() && RouteMeasureCheck.aroundTheWorld(bed, route)) {
      report(Violation.Rule.REQUEST, "The frame's maker forbids around-the-world.");
    }
  }

  private static boolean mixed(Piece piece) {
    return piece.ends().stream()
            .flatMap(e -> e.passes().stream())
            .map(p -> p.span().isMain())
            .distinct()
            .count()
        > 1;
  }

  private <T> void excluded(String what, Optional<T> wanted, T is, Function<T, String> word) {
    if (wanted.isPresent() && !wanted.get().equals(is)) {
      report(
          Violation.Rule.REQUEST,
          "The %s is %s, not %s.".formatted(what, word.apply(is), word.apply(wanted.get())));
    }
  }
}
