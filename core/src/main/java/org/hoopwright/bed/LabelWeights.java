package org.hoopwright.bed;

/**
 * What makes one labelling of holes dearer than another. Every weight is the cost in mm of one unit
 * of its term; 0 leaves a term out. All values are our choice; {@code docs/bed.md} gives the
 * reasons.
 *
 * @param mainSkew for each mm by which a main's throat end lies away from the smooth fan
 * @param crossSkew for each mm by which the two ends of a cross differ in height
 * @param unevenness for each mm of (gap − pitch)² / pitch between neighbouring strings of a kind
 * @param skip for each hole that mains leave out, blocked ones not counted
 * @param doubleSkip for each hole beyond one that neighbouring mains leave out in a row, blocked
 *     ones not counted
 * @param border for each mm of (gap − target)² / target between the outermost string of a kind and
 *     the farthest hole beyond it
 * @param empty for each hole that could take a string and takes none
 * @param shared for each hole that takes two strings
 * @param doubtful for each hole that takes two strings though the layout does not say that it can
 * @param changed for each hole whose label is not the stated one
 */
public record LabelWeights(
    double mainSkew,
    double crossSkew,
    double unevenness,
    double skip,
    double doubleSkip,
    double border,
    double empty,
    double shared,
    double doubtful,
    double changed) {

  /** The largest weight that is accepted. */
  public static final double MAX = 1000;

  /** For reading a pattern off the holes. */
  public static final LabelWeights INFER =
      new LabelWeights(0.15, 0.75, 0.8, 4, 4, 0.9, 10, 10, 0, 0);

  /** For the pattern nearest to a stated one. */
  public static final LabelWeights DETOUR =
      new LabelWeights(0.15, 0.75, 0.8, 0, 0, 0.9, 2, 5, 10, 5);

  /**
   * Checks the weights.
   *
   * @throws IllegalArgumentException when one is not from 0 to {@link #MAX}
   */
  public LabelWeights {
    check("mainSkew", mainSkew);
    check("crossSkew", crossSkew);
    check("unevenness", unevenness);
    check("skip", skip);
    check("doubleSkip", doubleSkip);
    check("border", border);
    check("empty", empty);
    check("shared", shared);
    check("doubtful", doubtful);
    check("changed", changed);
  }

  private static void check(String name, double value) {
    if (!(value >= 0 && value <= MAX)) {
      throw new IllegalArgumentException(
          "The weight " + name + " (" + value + ") must be from 0 to " + MAX + ".");
    }
  }
}
