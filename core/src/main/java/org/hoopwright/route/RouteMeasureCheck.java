package org.hoopwright.route;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Side;

/** Works out what a route measures, from its time order alone, and compares. */
final class RouteMeasureCheck {

  /** String used up by each passage through the frame, in mm: a usual beam; our choice. */
  private static final double PASSAGE_MM = 12.0;

  /** Half the last place of a rounded length, and room for another order of adding up. */
  private static final double ROUNDING_MM = 0.5 + 1e-6;

  private static final int EARLY = 2;

  private final Bed bed;
  private final Route route;
  private final Ring ring;
  private final List<Pass> passes = new ArrayList<>();
  private final Map<HoleId, CoveredHole.By> covering = new LinkedHashMap<>();
  private final Set<HoleId> stretches = new HashSet<>(); // from this hole to the next of its list
  private final List<CoveredHole> coveredHoles = new ArrayList<>();
  private int covered;
  private int doubled;
  private int longestRun = 1;
  private int knots;
  private double mm;

  private RouteMeasureCheck(Bed bed, Route route) {
    this.bed = bed;
    this.route = route;
    this.ring = bed.ring();
  }

  static List<Violation> check(Bed bed, Route route, List<RouteEvent> events) {
    RouteMeasureCheck own = new RouteMeasureCheck(bed, route);
    own.play(events);
    List<Violation> found = new ArrayList<>();
    RouteMeasures stated = route.measures();
    RouteMeasures is = own.measures();
    differ(found, "departures", stated.departures(), is.departures());
    differ(found, "covered", stated.covered(), is.covered());
    differ(found, "doubled", stated.doubled(), is.doubled());
    differ(found, "knots", stated.knots(), is.knots());
    differ(found, "longest run", stated.longestRun(), is.longestRun());
    differ(found, "covered holes", stated.coveredHoles(), is.coveredHoles());
    if (Math.abs(stated.stringMm() - own.mm) > ROUNDING_MM) {
      differ(found, "string", stated.stringMm(), own.mm);
    }
    Set<Family> families = own.families();
    if (!families.equals(route.families())) {
      found.add(
          new Violation(
              Violation.Rule.FAMILIES,
              "The route states the families %s and belongs to %s."
                  .formatted(route.families(), families)));
    }
    return found;
  }

  private static void differ(List<Violation> found, String what, Object stated, Object is) {
    if (!stated.equals(is)) {
      found.add(
          new Violation(
              Violation.Rule.MEASURES,
              "The route states %s for %s and has %s.".formatted(stated, what, is)));
    }
  }

  /** What a route measures, whatever it states. */
  static RouteMeasures measures(Bed bed, Route route) {
    RouteMeasureCheck own = new RouteMeasureCheck(bed, route);
    own.play(RouteEvent.of(route));
    return own.measures();
  }

  /** The families a route belongs to, whatever it states. */
  static Set<Family> families(Bed bed, Route route) {
    RouteMeasureCheck own = new RouteMeasureCheck(bed, route);
    own.play(RouteEvent.of(route));
    return own.families();
  }

  static boolean aroundTheWorld(Bed bed, Route route) {
    return families(bed, route).contains(Family.AROUND_THE_WORLD);
  }

  private RouteMeasures measures() {
    return new RouteMeasures(
        departures(), covered, doubled, knots, longestRun, Math.round(mm), coveredHoles);
  }

  private void play(List<RouteEvent> events) {
    Span left = bed.mains(Side.LEFT).get(0);
    Span right = bed.mains(Side.RIGHT).get(0);
    mm +=
        route.mainsStart() == End.HEAD
            ? left.fromPoint().distanceTo(right.fromPoint())
            : left.toPoint().distanceTo(right.toPoint());
    for (RouteEvent event : events) {
      if (event.pass().isPresent()) {
        Pass pass = event.pass().get();
        boolean entry = meets(pass.from(), pass.span());
        boolean exit = meets(pass.to(), pass.span());
        covered += entry || exit ? 1 : 0;
        if (event.moment().pass() > 0) {
          lay(event.end().passes().get(event.moment().pass() - 1).to(), pass.from());
        }
        covering.put(pass.from(), CoveredHole.By.PASS);
        covering.put(pass.to(), CoveredHole.By.PASS);
        passes.add(pass);
        mm += bed.span(pass.span()).lengthMm() + 2 * PASSAGE_MM;
      } else if (event.isKnot()) {
        HoleId hole = event.end().finish().hole();
        lay(exit(event.end()), hole);
        if (covering.get(hole) != CoveredHole.By.PASS) {
          covering.put(hole, CoveredHole.By.KNOT);
        }
        knots++;
      }
    }
  }

  private HoleId exit(StringEnd end) {
    if (end.name() == EndName.START) {
      return route.end(EndName.FINISH).orElseThrow().passes().get(0).from();
    }
    return end.passes().get(end.passes().size() - 1).to();
  }

  private boolean meets(HoleId hole, SpanId span) {
    CoveredHole.By by = covering.get(hole);
    if (by != null) {
      coveredHoles.add(new CoveredHole(hole, span, by));
    }
    return by != null;
  }

  private void lay(HoleId a, HoleId b) {
    if (a.side() != b.side()) {
      return; // no run at all; the rule of runs reports it
    }
    int low = Math.min(ring.place(a), ring.place(b));
    int high = Math.max(ring.place(a), ring.place(b));
    boolean shares = false;
    for (int place = low; place < high; place++) {
      HoleId hole = ring.at(a.side(), place);
      mm += bed.position(hole).distanceTo(bed.position(ring.at(a.side(), place + 1)));
      shares |= !stretches.add(hole);
      if (place > low) {
        covering.putIfAbsent(hole, CoveredHole.By.RUN);
      }
    }
    doubled += shares ? 1 : 0;
    longestRun = Math.max(longestRun, high - low);
  }

  private int departures() {
    int lastMain = -1;
    int firstCross = passes.size();
    for (int i = passes.size() - 1; i >= 0; i--) {
      if (passes.get(i).span().isCross()) {
        firstCross = i;
      } else {
        lastMain = Math.max(lastMain, i);
      }
    }
    int count = 0;
    for (int i = 0; i < passes.size(); i++) {
      boolean cross = passes.get(i).span().isCross();
      count += cross && i < lastMain ? 1 : 0;
      count += !cross && i > firstCross ? 1 : 0;
    }
    return count
        + (int)
            route.end(EndName.SHORT).orElseThrow().passes().stream()
                .filter(p -> p.span().isCross())
                .count();
  }

  private Set<Family> families() {
    Set<Family> families = EnumSet.noneOf(Family.class);
    boolean cross = false;
    boolean late = false;
    for (Pass pass : passes) {
      cross |= pass.span().isCross();
      late |= cross && pass.span().isMain();
    }
    End mainsEnd = bed.mainsPerSide() % 2 == 0 ? route.mainsStart() : route.mainsStart().other();
    if (late && route.direction().from() != mainsEnd) {
      families.add(Family.AROUND_THE_WORLD);
    }
    if (earlyAtBothEnds()) {
      families.add(Family.BOX);
    }
    return families;
  }

  private boolean earlyAtBothEnds() {
    Set<SpanId> outer = new TreeSet<>();
    outer.add(SpanId.main(Side.LEFT, bed.mainsPerSide()));
    outer.add(SpanId.main(Side.RIGHT, bed.mainsPerSide()));
    boolean first = false;
    boolean last = false;
    for (Pass pass : passes) {
      outer.remove(pass.span());
      if (pass.span().isCross() && !outer.isEmpty()) {
        int j = pass.span().number();
        int index = route.direction() == Direction.HEAD_TO_THROAT ? j - 1 : bed.crossCount() - j;
        first |= index < EARLY;
        last |= index >= bed.crossCount() - EARLY;
      }
    }
    return first && last;
  }
}
