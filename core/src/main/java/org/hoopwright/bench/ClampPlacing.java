package org.hoopwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Crossing;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;

/** Finds where on a span a machine clamp can sit while other spans are woven across it. */
final class ClampPlacing {

  /**
   * A clamp keeps this far from a crossing that is woven while it is set, beside its own length, in
   * mm.
   */
  static final double CLEARANCE_MM = 4.0;

  /** Step in which a place is sought, in mm. */
  private static final double STEP_MM = 1.0;

  private final Bed bed;
  private final Bench bench;

  ClampPlacing(Bed bed, Bench bench) {
    this.bed = bed;
    this.bench = bench;
  }

  /**
   * Distance from a hole, along a span, of the near edge of a clamp that leaves these spans open;
   * empty when there is no such place.
   *
   * @param span the span that is clamped
   * @param near the hole to stay near
   * @param open spans that are woven while the clamp is set
   */
  Optional<Double> distance(SpanId span, HoleId near, List<SpanId> open) {
    double length = bed.span(span).lengthMm();
    double most = length - bench.clampLengthMm();
    double usual = Math.max(0, Math.min(bench.clampDistanceMm(), most / 2));
    List<Double> crossings = crossings(span, near, open);
    for (double d = usual; d <= most; d += STEP_MM) {
      if (clear(d, crossings)) {
        return Optional.of(d);
      }
    }
    return Optional.empty();
  }

  /** Whether a clamp at this distance leaves these spans open. */
  boolean clearAt(double distanceMm, SpanId span, HoleId near, List<SpanId> open) {
    return clear(distanceMm, crossings(span, near, open));
  }

  /** Distances from the hole at which these spans cross the clamped one, in mm. */
  List<Double> crossings(SpanId span, HoleId near, List<SpanId> open) {
    boolean fromStart = bed.span(span).from().equals(near);
    double length = bed.span(span).lengthMm();
    List<Double> at = new ArrayList<>();
    for (Crossing c : bed.crossings(span)) {
      SpanId other = c.main().equals(span) ? c.cross() : c.main();
      if (open.contains(other)) {
        double fromFirst = span.isMain() ? c.fromHeadMm() : c.fromLeftMm();
        at.add(fromStart ? fromFirst : length - fromFirst);
      }
    }
    return at;
  }

  /**
   * A clamp is as clear of a crossing on the near side as on the far side: its own length and the
   * clearance from its near edge.
   */
  private boolean clear(double d, List<Double> crossings) {
    double apart = bench.clampLengthMm() + CLEARANCE_MM;
    return crossings.stream().allMatch(x -> Math.abs(x - d) >= apart);
  }
}
