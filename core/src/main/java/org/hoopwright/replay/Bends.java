package org.hoopwright.replay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Crossing;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Point;

/**
 * By how much string bends, in radians: from a span over a run into the next span, and over and
 * under the strings that a span meets. Follows from where holes and crossings are. Confined to one
 * estimate.
 */
final class Bends {

  /** From where to where a run leads, and between which spans. */
  private record Way(SpanId span, HoleId out, SpanId next, HoleId in) {}

  private final Bed bed;
  private final double separationMm;
  private final Map<Way, Double> known = new HashMap<>(); // looked up, never gone through
  private final Map<SpanId, Double> woven = new HashMap<>(); // looked up, never gone through

  /**
   * Bends of a bed.
   *
   * @param separationMm how far apart the axes of two strings are where they cross: half of both
   *     diameters together, in mm
   */
  Bends(Bed bed, double separationMm) {
    this.bed = bed;
    this.separationMm = separationMm;
  }

  /** Out of one span at a hole, along the frame to another hole, and into the next span there. */
  double between(SpanId span, HoleId out, SpanId next, HoleId in) {
    return known.computeIfAbsent(new Way(span, out, next, in), this::angle);
  }

  private double angle(Way way) {
    Point from = bed.position(way.out());
    Point to = bed.position(way.in());
    Span next = bed.span(way.next());
    return towards(way.span(), way.out(), way.in())
        + between(
            to.x() - from.x(),
            to.y() - from.y(),
            bed.position(next.other(way.in())).x() - to.x(),
            bed.position(next.other(way.in())).y() - to.y());
  }

  /** Out of a span at a hole and towards another hole: the first of the two bends. */
  double towards(SpanId span, HoleId out, HoleId hole) {
    if (out.equals(hole) || !bed.ring().has(hole)) {
      return 0;
    }
    Point inside = bed.position(bed.span(span).other(out));
    Point from = bed.position(out);
    Point to = bed.position(hole);
    return between(
        from.x() - inside.x(), from.y() - inside.y(), to.x() - from.x(), to.y() - from.y());
  }

  private static double between(double ax, double ay, double bx, double by) {
    double cross = ax * by - ay * bx;
    double dot = ax * bx + ay * by;
    return StrictMath.abs(StrictMath.atan2(cross, dot));
  }

  /**
   * Over and under every string that the span meets and that is laced now, all bends together.
   *
   * <p>Both strings give way alike, so a string rises by half of the separation to the one side at
   * a crossing and to the other side at the next: it bends there by the slopes on both sides.
   */
  double woven(SpanId span, BenchState state) {
    return woven.computeIfAbsent(span, s -> overAndUnder(s, state));
  }

  /** Strings have been laced or unlaced since. */
  void lacedAnew() {
    woven.clear();
  }

  private double overAndUnder(SpanId span, BenchState state) {
    List<Double> at = new ArrayList<>();
    for (Crossing c : bed.crossings(span)) {
      if (state.isLaced(span.isMain() ? c.cross() : c.main())) {
        at.add(span.isMain() ? c.fromHeadMm() : c.fromLeftMm());
      }
    }
    if (at.isEmpty()) {
      return 0;
    }
    double sum = slope(separationMm / 2, at.get(0));
    for (int i = 0; i + 1 < at.size(); i++) {
      sum += 2 * slope(separationMm, at.get(i + 1) - at.get(i));
    }
    return sum + slope(separationMm / 2, bed.span(span).lengthMm() - at.get(at.size() - 1));
  }

  private static double slope(double rise, double run) {
    return StrictMath.atan2(rise, Math.max(run, 0));
  }
}
