package org.hoopwright.bench;

import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;

/**
 * A clamp that is on in a half-done job.
 *
 * @param clamp which clamp, such as {@code machine-1}
 * @param span the span it bites; outside, the tail of that span
 * @param near the hole it sits near
 * @param distanceMm along the string from that hole's mouth to the clamp's near edge, in mm
 * @param side inside or outside the hoop
 */
public record ClampOn(String clamp, SpanId span, HoleId near, double distanceMm, ClampSide side) {}
