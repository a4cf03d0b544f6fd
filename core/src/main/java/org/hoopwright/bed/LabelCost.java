package org.hoopwright.bed;

/**
 * What a labelling of holes costs, split by term. Whole micrometres, so that sums do not depend on
 * their order and equal labellings are seen to be equal.
 *
 * @param mainSkewUm mains against the smooth fan
 * @param crossSkewUm ends of crosses at different heights
 * @param unevennessUm gaps between neighbouring strings of a kind
 * @param borderUm outermost strings too near the hoop or too far from it
 * @param emptyUm holes left empty
 * @param sharedUm holes with two strings
 * @param changedUm labels that are not the stated ones
 */
public record LabelCost(
    long mainSkewUm,
    long crossSkewUm,
    long unevennessUm,
    long borderUm,
    long emptyUm,
    long sharedUm,
    long changedUm) {

  /** The sum of all terms, in micrometres. */
  public long totalUm() {
    return mainSkewUm + crossSkewUm + unevennessUm + borderUm + emptyUm + sharedUm + changedUm;
  }

  /** The sum of all terms, in mm. */
  public double totalMm() {
    return totalUm() / 1000.0;
  }
}
