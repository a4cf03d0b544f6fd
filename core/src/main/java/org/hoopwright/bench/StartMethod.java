package org.hoopwright.bench;

import java.util.Arrays;
import java.util.Optional;

/** A way to start the mains. */
public enum StartMethod {
  /**
   * A shared pull, the anchor main held inside by a machine clamp and outside at the throat by a
   * starting clamp.
   */
  ANCHOR_MAIN("anchor-main"),
  /**
   * A hand on the anchor main's tail in place of the starting clamp; it keeps the string straight
   * and bears no tension.
   */
  HAND_HELD("hand-held"),
  /** Both machine clamps side by side on the anchor main. */
  DOUBLED_CLAMP("doubled-clamp");

  private final String word;

  StartMethod(String word) {
    this.word = word;
  }

  /** The word used in plans and on the command line. */
  public String word() {
    return word;
  }

  /** The method of this word, compared exactly, or empty. */
  public static Optional<StartMethod> ofWord(String word) {
    return Arrays.stream(values()).filter(m -> m.word.equals(word)).findFirst();
  }
}
