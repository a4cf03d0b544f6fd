package org.hoopwright.material;

import java.util.Arrays;
import java.util.Optional;

/**
 * What a string is made of, with the range of its stretch at 55 lbf on the first pull, creep
 * included.
 *
 * <p>Source of the stretch: stringer blog "Difficulties of Hybriding Strings", 2014/11; one
 * person's measurements.
 */
public enum Material {
  /** Natural gut. */
  NATURAL_GUT("natural-gut", 0.06, 0.07),
  /** Nylon with a solid core. */
  NYLON("nylon", 0.09, 0.10),
  /** Nylon of many filaments. */
  MULTIFILAMENT("multifilament", 0.10, 0.12),
  /** Polyester monofilament. */
  POLYESTER("polyester", 0.03, 0.04),
  /** Aramid. */
  ARAMID("aramid", 0.01, 0.02);

  /** The tension at which the stretch was measured: 55 lbf, in newtons. */
  public static final double STRETCH_AT_NEWTONS = 55 * 4.4482216152605;

  private final String word;
  private final double minStretch;
  private final double maxStretch;

  Material(String word, double minStretch, double maxStretch) {
    this.word = word;
    this.minStretch = minStretch;
    this.maxStretch = maxStretch;
  }

  /** The word used in plans and on the command line, such as {@code natural-gut}. */
  public String word() {
    return word;
  }

  /** Least stretch at {@link #STRETCH_AT_NEWTONS}, as a fraction of the length. */
  public double minStretch() {
    return minStretch;
  }

  /** Greatest stretch at {@link #STRETCH_AT_NEWTONS}, as a fraction of the length. */
  public double maxStretch() {
    return maxStretch;
  }

  /** The material of this word, compared exactly, or empty. */
  public static Optional<Material> ofWord(String word) {
    return Arrays.stream(values()).filter(m -> m.word.equals(word)).findFirst();
  }
}
