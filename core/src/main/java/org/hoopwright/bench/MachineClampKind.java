package org.hoopwright.bench;

import java.util.Arrays;
import java.util.Optional;

/**
 * How a machine clamp is built, which says what it can reach and how much it gives when it takes a
 * load. The ranges are our choice by kind, since no number is published: measure your clamp.
 */
public enum MachineClampKind {
  /** Stands on a rail or base; reaches any string. */
  FIXED("fixed", 0.2, 1.0, false),
  /** A fixed clamp that turns freely; reaches any string. */
  SWIVEL("swivel", 0.2, 1.2, false),
  /**
   * Stands on nothing: it grips two neighbouring strings, and the one that has been pulled before
   * bears the load of the other. It tilts when it takes the load, so it gives more.
   */
  FLOATING("floating", 0.5, 3.0, true);

  private final String word;
  private final double leastDrawbackMm;
  private final double mostDrawbackMm;
  private final boolean needsNeighbour;

  MachineClampKind(
      String word, double leastDrawbackMm, double mostDrawbackMm, boolean needsNeighbour) {
    this.word = word;
    this.leastDrawbackMm = leastDrawbackMm;
    this.mostDrawbackMm = mostDrawbackMm;
    this.needsNeighbour = needsNeighbour;
  }

  /** The word used on the command line, such as {@code fixed}. */
  public String word() {
    return word;
  }

  /** The least it gives when it takes a load, in mm. */
  public double leastDrawbackMm() {
    return leastDrawbackMm;
  }

  /** The most it gives when it takes a load, in mm. */
  public double mostDrawbackMm() {
    return mostDrawbackMm;
  }

  /** Whether it must bite a tight neighbour of the string that it holds. */
  public boolean needsNeighbour() {
    return needsNeighbour;
  }

  /** The kind of this word, compared exactly, or empty. */
  public static Optional<MachineClampKind> ofWord(String word) {
    return Arrays.stream(values()).filter(k -> k.word.equals(word)).findFirst();
  }
}
