package org.hoopwright.bench;

import java.util.Arrays;
import java.util.Optional;

/**
 * How a tensioner works, which says how much of the reference tension still acts on the string when
 * the clamp goes on. The shares are our choice where no source is named.
 */
public enum Tensioner {
  /** Goes on pulling while the string creeps: all of the reference acts. */
  CONSTANT_PULL("constant-pull", 1.0),
  /**
   * Locks at the set value, and the string relaxes from there, so that the bed comes out softer
   * (Racquet Sports Industry, "Constant pull vs. lockout", 2008/11); by how much is our choice.
   */
  LOCKOUT("lockout", 0.90),
  /**
   * A weight on a bar: a constant pull, right only with the bar level (common practice, no source).
   * At 14° from level it pulls cos 14° of what is set; how level a bar is kept is our choice.
   */
  DROP_WEIGHT("drop-weight", 0.97);

  private final String word;
  private final double leastShare;

  Tensioner(String word, double leastShare) {
    this.word = word;
    this.leastShare = leastShare;
  }

  /** The word used on the command line, such as {@code lockout}. */
  public String word() {
    return word;
  }

  /** The least share of the reference tension that acts when the clamp goes on; at most 1. */
  public double leastShare() {
    return leastShare;
  }

  /** The tensioner of this word, compared exactly, or empty. */
  public static Optional<Tensioner> ofWord(String word) {
    return Arrays.stream(values()).filter(t -> t.word.equals(word)).findFirst();
  }
}
