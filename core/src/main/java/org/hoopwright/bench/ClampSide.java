package org.hoopwright.bench;

/** Where a clamp sits. */
public enum ClampSide {
  /** Inside the hoop, on a span. */
  INSIDE("inside"),
  /** Outside the frame, on a tail. */
  OUTSIDE("outside");

  private final String word;

  ClampSide(String word) {
    this.word = word;
  }

  /** {@code inside} or {@code outside}, as in plans. */
  public String word() {
    return word;
  }
}
