package org.hoopwright.replay;

import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.ClampSide;
import org.hoopwright.frame.HoleId;

/**
 * A clamp where it was set.
 *
 * @param name which clamp
 * @param span the span it bites; outside, the span whose string leaves at {@code near}
 * @param near the hole it sits near
 * @param distanceMm along the string from that hole's mouth to the clamp's near edge, in mm
 * @param side inside or outside the hoop
 */
record PlacedClamp(String name, SpanId span, HoleId near, double distanceMm, ClampSide side) {

  boolean inside() {
    return side == ClampSide.INSIDE;
  }
}
