package org.hoopwright.bed;

import org.hoopwright.geometry.Point;

/**
 * Where a main and a cross meet.
 *
 * @param main the main
 * @param cross the cross
 * @param at the point, in mm
 * @param fromHeadMm distance along the main from its head hole, in mm
 * @param fromLeftMm distance along the cross from its left hole, in mm
 * @param crossOver whether the cross lies over the main, as seen on the face
 */
public record Crossing(
    SpanId main, SpanId cross, Point at, double fromHeadMm, double fromLeftMm, boolean crossOver) {}
