package org.hoopwright.bench;

import java.util.Arrays;
import java.util.Optional;

/** When a starting clamp does more than start the mains. */
public enum ClampUse {
  /** Where the bench's own tests, or its kind of clamp, call for it. */
  AS_NEEDED("as-needed"),
  /** Wherever a starting clamp is free and may sit. */
  ALWAYS("always"),
  /** Nowhere. */
  NEVER("never");

  private final String word;

  ClampUse(String word) {
    this.word = word;
  }

  /** {@code as-needed}, {@code always} or {@code never}. */
  public String word() {
    return word;
  }

  /** The use of this word, compared exactly, or empty. */
  public static Optional<ClampUse> ofWord(String word) {
    return Arrays.stream(values()).filter(u -> u.word.equals(word)).findFirst();
  }
}
