package org.hoopwright.patterns.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.geometry.Point;

/**
 * Finds room for labels: none overlaps another or anything that was marked as taken. Not reused.
 */
final class Placer {

  private static final int TRIES = 90;
  private static final int STRAIGHT = 15;
  private static final double STEP = 4;
  private static final double GAP = 1;

  /** How far from where it is wanted a label may move to leave avoided places free. */
  private static final double DETOUR = 70;

  private final List<Box> taken = new ArrayList<>();
  private final List<Box> avoided = new ArrayList<>();

  /** Keeps labels away from here. */
  void take(Box box) {
    taken.add(box);
  }

  /** Keeps labels on lines away from here, as long as there is room elsewhere. */
  void avoid(Box box) {
    avoided.add(box);
  }

  private boolean free(Box box) {
    return clear(taken, box.grown(GAP));
  }

  private static boolean clear(List<Box> boxes, Box box) {
    for (Box b : boxes) {
      if (b.overlaps(box)) {
        return false;
      }
    }
    return true;
  }

  /**
   * A place outside, as near to a point as there is room, and takes it.
   *
   * @param from where to begin
   * @param out the direction in which to look, of length 1
   * @return the place, or empty when there is none within reach
   */
  Optional<Box> outside(Point from, Point out, double width, double height) {
    double reach = (Math.abs(out.x()) * width + Math.abs(out.y()) * height) / 2;
    Point across = new Point(-out.y(), out.x());
    for (int i = 0; i < TRIES; i++) {
      Point straight = FrameShape.along(from, out, reach + i * STEP);
      // Straight out as far as possible, so that neighbours keep their order; then also to a side.
      for (int side = 0; side < (i < STRAIGHT ? 1 : 3); side++) {
        double shift = side == 0 ? 0 : (side == 1 ? 1 : -1) * 4 * STEP;
        Box box = Box.around(FrameShape.along(straight, across, shift), width, height);
        if (free(box)) {
          taken.add(box);
          return Optional.of(box);
        }
      }
    }
    return Optional.empty();
  }

  /**
   * A place on a line, as near to a distance from its beginning as there is room, and takes it.
   *
   * @return the place, or empty when the line is full
   */
  Optional<Box> onLine(Point a, Point b, double at, double width, double height) {
    Optional<Box> best = onLine(a, b, at, width, height, DETOUR, true);
    return best.isPresent()
        ? best
        : onLine(a, b, at, width, height, Double.POSITIVE_INFINITY, false);
  }

  private Optional<Box> onLine(
      Point a, Point b, double at, double width, double height, double reach, boolean choosy) {
    double length = a.distanceTo(b);
    for (int i = 0; i * 3 <= 2 * length; i++) {
      int step = (i + 1) / 2;
      double away = 3.0 * step;
      double d = at + (i % 2 == 0 ? 1 : -1) * away;
      if (d < 0 || d > length || away > reach) {
        continue;
      }
      Box box = Box.around(Point.interpolate(a, b, d / length), width, height);
      if (free(box) && (!choosy || clear(avoided, box))) {
        taken.add(box);
        return Optional.of(box);
      }
    }
    return Optional.empty();
  }
}
