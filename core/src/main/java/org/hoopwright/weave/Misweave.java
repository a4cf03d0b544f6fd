package org.hoopwright.weave;

import org.hoopwright.bed.SpanId;

/**
 * Two crossings in a row on the same side: a flat stretch of string (Tennis Industry, "Weave Your
 * Way to Consistency", 2015/04).
 *
 * @param along the string that does not alternate
 * @param from the first of the two strings that it meets, the one nearer to the left or the head
 * @param to the next one
 * @param over whether {@code along} lies over both
 */
public record Misweave(SpanId along, SpanId from, SpanId to, boolean over) {

  /** For example {@code X3 lies over L2 and L1}. */
  @Override
  public String toString() {
    return along + " lies " + (over ? "over " : "under ") + from + " and " + to;
  }
}
