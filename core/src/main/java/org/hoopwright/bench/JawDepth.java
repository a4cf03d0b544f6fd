package org.hoopwright.bench;

import java.util.Arrays;
import java.util.Optional;

/** How deep a string lies in a clamp's jaws; deeper holds at least as well. Shallowest first. */
public enum JawDepth {
  /** At the tip of the jaws. */
  TIP("tip"),
  /** Half-way in. */
  MIDDLE("middle"),
  /** As deep as it goes. */
  DEEP("deep");

  private final String word;

  JawDepth(String word) {
    this.word = word;
  }

  /** {@code tip}, {@code middle} or {@code deep}. */
  public String word() {
    return word;
  }

  /** The depth of this word, compared exactly, or empty. */
  public static Optional<JawDepth> ofWord(String word) {
    return Arrays.stream(values()).filter(d -> d.word.equals(word)).findFirst();
  }
}
