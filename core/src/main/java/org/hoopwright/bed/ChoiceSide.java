package org.hoopwright.bed;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Point;

/**
 * One side of the question which shared holes carry two, in numbers: heights in whole nanometres,
 * so that sums of costs do not depend on their order and equal choices are seen to be equal.
 */
final class ChoiceSide {

  /** Cost of a mm by which the two ends of a cross differ in height. */
  static final double SKEW_WEIGHT = 1.0;

  /**
   * Cost of uneven spacing, for each mm of (gap − pitch)² / pitch between neighbouring crosses on
   * one side; half, because both sides have gaps and a cross has one skew.
   */
  static final double UNEVEN_WEIGHT = 0.5;

  /** Cost of a mm between where a hole is and where the cross in it was measured. */
  static final double MISFIT_WEIGHT = 1.0;

  private static final double NANOMETRES = 1e6;

  // No sound layout reaches so far, and with it no sum of costs can overflow.
  private static final double LIMIT_MM = 10_000;

  private static final double LEAST_PITCH = NANOMETRES; // 1 mm; below it nothing can be strung

  private final CrossItems items;
  private final boolean[] must;
  private final long[] heights;
  private final long[] measured; // empty when nothing was measured
  private final double pitch;

  /**
   * @param measured the height of each cross in mm as measured; empty when it was not
   */
  ChoiceSide(CrossItems items, Map<HoleId, Point> points, List<Double> measured) {
    this.items = items;
    int n = items.items().size();
    must = new boolean[n];
    heights = new long[n];
    for (int i = 0; i < n; i++) {
      must[i] = items.items().get(i).must();
      Point p = points.get(items.items().get(i).hole());
      heights[i] = p == null ? 0 : nanometres(p.y());
    }
    this.measured = measured.stream().mapToLong(ChoiceSide::nanometres).toArray();
    double reach = n == 0 ? 0 : heights[0] - heights[n - 1];
    pitch = Math.max(LEAST_PITCH, reach / Math.max(1, items.crosses() - 1));
  }

  private static long nanometres(double mm) {
    return Math.round(Math.max(-LIMIT_MM, Math.min(LIMIT_MM, mm)) * NANOMETRES);
  }

  CrossItems items() {
    return items;
  }

  int size() {
    return must.length;
  }

  /** Whether hole i must be taken. */
  boolean must(int i) {
    return must[i];
  }

  boolean[] must() {
    return must.clone();
  }

  long height(int i) {
    return heights[i];
  }

  /** Whether the crosses' heights were measured; then only the misfit counts. */
  boolean isMeasured() {
    return measured.length > 0;
  }

  /** Cost of hole i for cross j that does not depend on the other side. */
  long misfit(int i, int j) {
    return isMeasured() ? Math.round(MISFIT_WEIGHT * Math.abs(heights[i] - measured[j])) : 0;
  }

  /** Cost of the gap between two crosses that follow each other. */
  long unevenness(int i, int next) {
    if (isMeasured()) {
      return 0; // the measured heights fix every gap
    }
    double off = heights[i] - heights[next] - pitch;
    return Math.round(UNEVEN_WEIGHT * off * (off / pitch));
  }

  /** Cost of a cross between hole i here and hole k there. */
  long skew(int i, ChoiceSide other, int k) {
    return isMeasured() ? 0 : Math.round(SKEW_WEIGHT * Math.abs(heights[i] - other.heights[k]));
  }

  /** Whether the other side is the mirror image of this one as far as the choice goes. */
  boolean mirrors(ChoiceSide other) {
    return compare(other) == 0;
  }

  /** An order of sides that does not know which is left. */
  int compare(ChoiceSide other) {
    int byMust = Arrays.compare(must, other.must);
    if (byMust != 0) {
      return byMust;
    }
    int byHeight = Arrays.compare(heights, other.heights);
    return byHeight != 0 ? byHeight : Arrays.compare(measured, other.measured);
  }
}
