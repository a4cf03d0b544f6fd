package org.hoopwright.judgement;

import org.hoopwright.bed.SpanId;

/**
 * Where a string is bitten by clamps inside the hoop.
 *
 * @param span the span
 * @param times how often the place that is bitten most often is bitten
 * @param fromMm where that place begins, from the span's first hole along it, in mm
 * @param toMm where it ends, in mm
 * @param sensitivity what bites do to this string
 */
public record Bites(SpanId span, int times, double fromMm, double toMm, Sensitivity sensitivity) {}
