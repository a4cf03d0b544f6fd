package org.hoopwright.material;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A string gauge: a range of diameters. Ranges overlap, so a diameter belongs to a set of gauges;
 * "L" is a thinner half step.
 *
 * <p>Source of the ranges: article "Tennis String Gauge" and stringer page "How to select the best
 * gauge", which agree in every diameter. Other tables differ by a few hundredths of a millimetre:
 * measure the string.
 */
public enum Gauge {
  /** 13. */
  G13("13", 1.65, 1.80),
  /** 14. */
  G14("14", 1.50, 1.65),
  /** 15. */
  G15("15", 1.41, 1.49),
  /** 15L. */
  G15L("15L", 1.33, 1.41),
  /** 16. */
  G16("16", 1.26, 1.34),
  /** 16L. */
  G16L("16L", 1.22, 1.30),
  /** 17. */
  G17("17", 1.16, 1.24),
  /** 18. */
  G18("18", 1.06, 1.16),
  /** 19. */
  G19("19", 0.90, 1.06),
  /** 20. */
  G20("20", 0.80, 0.90),
  /** 21. */
  G21("21", 0.70, 0.80),
  /** 22. */
  G22("22", 0.60, 0.70);

  private final String word;
  private final double minMm;
  private final double maxMm;

  Gauge(String word, double minMm, double maxMm) {
    this.word = word;
    this.minMm = minMm;
    this.maxMm = maxMm;
  }

  /** The gauge as written on a pack, such as {@code 16L}. */
  public String word() {
    return word;
  }

  /** The least diameter, in mm. */
  public double minMm() {
    return minMm;
  }

  /** The greatest diameter, in mm. */
  public double maxMm() {
    return maxMm;
  }

  /** The gauge of this word, compared exactly, or empty. */
  public static Optional<Gauge> ofWord(String word) {
    return Arrays.stream(values()).filter(g -> g.word.equals(word)).findFirst();
  }

  /** Every gauge whose range holds this diameter in mm, thickest first; empty when none does. */
  public static List<Gauge> ofDiameter(double mm) {
    return Arrays.stream(values()).filter(g -> mm >= g.minMm && mm <= g.maxMm).toList();
  }
}
