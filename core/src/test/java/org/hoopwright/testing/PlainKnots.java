package org.hoopwright.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Ring;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Pass;
import org.hoopwright.route.RouteRequest;

/** Where ends of string can be tied on a bed. */
final class PlainKnots {

  /** A knot; clamped when a starting clamp holds the end before. */
  record Tie(Knot knot, boolean clamped) {}

  private final Ring ring;
  private final RouteRequest request;
  private final List<Knot> places = new ArrayList<>();

  PlainKnots(Bed bed, RouteRequest request, Map<HoleId, List<Span>> spansAt) {
    this.ring = bed.ring();
    this.request = request;
    spansAt.forEach(
        (hole, spans) -> {
          if (ring.isTieOff(hole) && spans.size() < ring.bore(hole)) {
            spans.forEach(s -> places.add(new Knot(Knot.Kind.TIE_OFF, hole, s.id())));
          }
        });
  }

  /** Knots for an end that comes out of this pass. */
  List<Tie> near(Pass last, boolean clamped) {
    List<Tie> near = new ArrayList<>();
    for (Knot knot : places) {
      if (!knot.anchor().equals(last.span())
          && ring.runAllowed(last.to(), knot.hole())
          && Math.abs(ring.place(last.to()) - ring.place(knot.hole())) <= request.knotLimit()) {
        near.add(new Tie(knot, clamped));
      }
    }
    return near;
  }
}
