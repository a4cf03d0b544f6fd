package org.hoopwright.bed;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;

/**
 * One side's holes in numbers, and what strings in them cost: places in whole micrometres, so that
 * equal choices are seen to be equal on every machine. {@code docs/bed.md} writes the terms down.
 */
final class SideMeasure {

  /**
   * How far the outermost main is expected from the widest hole, in pitches of mains. Our choice,
   * near what measured frames have: 1.6 to 2.4.
   */
  static final double MAIN_BORDER = 2.2;

  /**
   * How far the first and the last cross are expected from the hole next to the axis, in pitches of
   * crosses. Our choice, near what measured frames have: 2.3 to 2.7.
   */
  static final double CROSS_BORDER = 1.7;

  private static final double UM = 1000;
  private static final double LIMIT_MM = 10_000;
  private static final long LEAST_PITCH_UM = 1000;

  final int size;

  /** How many of the holes are counted from the head. */
  final int head;

  private final long[] x; // distance from the axis
  private final long[] y;
  private final long[] mainPitch = new long[2]; // head, throat
  private final long crossPitch;
  private final long widest;
  private final int[] usableBefore;
  private final LabelWeights weights;

  /**
   * @param statedPitchMm the pitch of crosses; 0 to take it from the flank
   */
  SideMeasure(
      Ring ring,
      Side side,
      int mains,
      Map<HoleId, Point> positions,
      List<Set<HoleLabel>> allowed,
      double statedPitchMm,
      LabelWeights weights) {
    this.weights = weights;
    List<HoleId> list = ring.list(side);
    size = list.size();
    int atHead = 0;
    x = new long[size];
    y = new long[size];
    long far = 0;
    for (int p = 0; p < size; p++) {
      HoleId hole = list.get(p);
      Point at = positions.getOrDefault(hole, new Point(0, 0));
      x[p] = um(side == Side.LEFT ? -at.x() : at.x());
      y[p] = um(at.y());
      far = Math.max(far, x[p]);
      atHead += hole.end() == End.HEAD ? 1 : 0;
    }
    usableBefore = new int[size + 1];
    for (int p = 0; p < size; p++) {
      usableBefore[p + 1] = usableBefore[p] + (LabelCosts.usable(allowed.get(p)) ? 1 : 0);
    }
    head = atHead;
    widest = far;
    mainPitch[0] = innerPitch(0, Math.min(head, Math.max(1, mains / 2)), 1);
    mainPitch[1] = innerPitch(size - 1, Math.min(size - head, Math.max(1, mains / 2)), -1);
    crossPitch = statedPitchMm > 0 ? Math.max(LEAST_PITCH_UM, um(statedPitchMm)) : flankPitch();
  }

  private static long um(double mm) {
    return Math.round(Math.max(-LIMIT_MM, Math.min(LIMIT_MM, mm)) * UM);
  }

  /** The pitch of the inner mains: that of the inner half of the holes that mains need. */
  private long innerPitch(int from, int count, int step) {
    if (count < 1) {
      return LEAST_PITCH_UM;
    }
    return Math.max(LEAST_PITCH_UM, Math.round(x[from + step * (count - 1)] / (count - 0.5)));
  }

  /** The pitch of the crosses: that of the middle half of all holes. */
  private long flankPitch() {
    int from = size / 4;
    int to = size - 1 - from;
    return to <= from
        ? LEAST_PITCH_UM
        : Math.max(LEAST_PITCH_UM, Math.round((y[from] - y[to]) / (double) (to - from)));
  }

  private int end(int place) {
    return place < head ? 0 : 1;
  }

  private static long square(double weight, double off, double pitch) {
    return Math.round(weight * off * (off / pitch));
  }

  /** Neighbouring mains of one end in these holes. */
  long mainGap(int a, int b) {
    double pitch = mainPitch[end(a)];
    int leftOut = usableBefore[Math.max(a, b)] - usableBefore[Math.min(a, b) + 1];
    return square(weights.unevenness(), Math.abs(x[a] - x[b]) - pitch, pitch)
        + Math.round(
            UM * (weights.skip() * leftOut + weights.doubleSkip() * Math.max(0, leftOut - 1)));
  }

  /** Main 1 in this hole: half of what the gap to the other side's main 1 would cost. */
  long axisGap(int p) {
    double pitch = mainPitch[end(p)];
    return square(weights.unevenness() / 2, 2.0 * x[p] - pitch, pitch);
  }

  /** The outermost main in this hole. */
  long mainBorder(int p) {
    double target = MAIN_BORDER * mainPitch[end(p)];
    return square(weights.border(), widest - x[p] - target, target);
  }

  /** Neighbouring crosses in these holes, the first nearer the head. */
  long crossGap(int a, int b) {
    return square(weights.unevenness(), y[a] - y[b] - (double) crossPitch, (double) crossPitch);
  }

  /** The first cross in this hole. */
  long firstBorder(int p) {
    double target = CROSS_BORDER * crossPitch;
    return square(weights.border(), y[0] - y[p] - target, target);
  }

  /** The last cross in this hole. */
  long lastBorder(int p) {
    double target = CROSS_BORDER * crossPitch;
    return square(weights.border(), y[p] - y[size - 1] - target, target);
  }

  /** A main from this hole at the head to that at the throat. */
  long mainSkew(int atHead, int atThroat) {
    double fan = mainPitch[1] / (double) mainPitch[0];
    return Math.round(weights.mainSkew() * Math.abs(x[atThroat] - fan * x[atHead]));
  }

  /** A cross from this hole to that of another side. */
  long crossSkew(int here, SideMeasure other, int there) {
    return Math.round(weights.crossSkew() * Math.abs(y[here] - other.y[there]));
  }
}
