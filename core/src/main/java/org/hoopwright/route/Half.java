package org.hoopwright.route;

/**
 * One half of the frame's outside, and of a hole that takes more than one string: the one nearer
 * the face, or the one nearer the back.
 */
public enum Half {
  /** The half nearer the face, on which the stringer looks. */
  FACE("face"),
  /** The half nearer the back. */
  BACK("back");

  private final String word;

  Half(String word) {
    this.word = word;
  }

  /** {@code face} or {@code back}, as in plans. */
  public String word() {
    return word;
  }

  /** The other half. */
  public Half other() {
    return this == FACE ? BACK : FACE;
  }
}
