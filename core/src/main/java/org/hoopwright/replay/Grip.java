package org.hoopwright.replay;

import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.EndName;

/**
 * A free tail: where one end of a piece leaves the frame for the hand, the knot or the tensioner.
 *
 * @param piece index of the piece
 * @param end which end
 * @param span the span out of which the tail comes
 * @param at the hole where it leaves the frame
 */
record Grip(int piece, EndName end, SpanId span, HoleId at) {}
