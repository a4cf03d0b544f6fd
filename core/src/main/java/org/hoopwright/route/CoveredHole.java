package org.hoopwright.route;

import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;

/**
 * A hole that is covered when a pass needs it.
 *
 * @param hole the hole
 * @param span the span whose pass needs it
 * @param by what covers it
 */
public record CoveredHole(HoleId hole, SpanId span, By by) {

  /** What covers a hole. */
  public enum By {
    /** A run laid earlier lies over its mouth. */
    RUN,
    /** An earlier pass lies in it. */
    PASS,
    /** The tail of a knot lies in it. */
    KNOT
  }

  /** A way to keep a hole open for a later pass. */
  public enum KeepOpen {
    /** Thread the later pass first and leave it slack. */
    THREAD_FIRST("thread-first"),
    /** Keep a scrap of string in the hole; the later pass follows it under the run. */
    SCRAP_STRING("scrap-string"),
    /** Open a way beside the string in the hole with an awl. */
    AWL("awl");

    private final String word;

    KeepOpen(String word) {
      this.word = word;
    }

    /** {@code thread-first}, {@code scrap-string} or {@code awl}, as in plans. */
    public String word() {
      return word;
    }
  }

  /**
   * How the hole is kept open (common practice, no source): under a run a scrap of string is laid
   * in beforehand; where string already lies in the hole an awl makes room beside it.
   */
  public KeepOpen keepOpen() {
    return by == By.RUN ? KeepOpen.SCRAP_STRING : KeepOpen.AWL;
  }
}
