package org.hoopwright.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Finds all that keeps a list of points from being an outline. */
final class PolygonChecks {

  private final List<Point> points;
  private final List<Flaw> flaws = new ArrayList<>();

  private PolygonChecks(List<Point> points) {
    this.points = points;
  }

  static List<Flaw> flaws(List<Point> points) {
    return new PolygonChecks(points).run();
  }

  private List<Flaw> run() {
    int size = points.size();
    if (size > PolygonOutline.MAX_POINTS) {
      add(
          Flaw.Kind.TOO_MANY_POINTS,
          -1,
          "The outline has "
              + size
              + " points and may have at most "
              + PolygonOutline.MAX_POINTS
              + "; leave some out.");
      return List.copyOf(flaws); // nothing else is worth the time
    }
    if (size < PolygonOutline.MIN_POINTS) {
      add(
          Flaw.Kind.TOO_FEW_POINTS,
          -1,
          "The outline has "
              + size
              + " points and needs at least "
              + PolygonOutline.MIN_POINTS
              + "; measure more places.");
    }
    checkRange();
    int[] kept = checkRepeats();
    if (kept.length >= 3) {
      checkCrossings(kept);
      checkAxis(kept);
    }
    flaws.sort(Comparator.comparingInt(Flaw::index)); // stable: kinds stay in the order above
    return List.copyOf(flaws);
  }

  private void add(Flaw.Kind kind, int index, String message) {
    flaws.add(new Flaw(kind, index, message));
  }

  private String place(int index) {
    Point p = points.get(index);
    return "point " + index + " (" + p.x() + ", " + p.y() + ")";
  }

  private void checkRange() {
    for (int i = 0; i < points.size(); i++) {
      Point p = points.get(i);
      if (Math.max(Math.abs(p.x()), Math.abs(p.y())) > PolygonOutline.MAX_COORDINATE_MM) {
        add(
            Flaw.Kind.TOO_FAR_OUT,
            i,
            "The outline's "
                + place(i)
                + " is more than "
                + PolygonOutline.MAX_COORDINATE_MM
                + " mm from the origin; check the number and the units.");
      }
    }
  }

  /** Reports points that repeat the one before them, and returns the indices of the others. */
  private int[] checkRepeats() {
    int[] kept = new int[points.size()];
    int count = 0;
    for (int i = 0; i < kept.length; i++) {
      if (count > 0 && same(i, kept[count - 1])) {
        add(
            Flaw.Kind.REPEATED_POINT,
            i,
            "The outline's " + place(i) + " repeats the point before it; leave one of them out.");
      } else {
        kept[count] = i;
        count++;
      }
    }
    while (count > 1 && same(kept[count - 1], kept[0])) {
      count--;
      add(
          Flaw.Kind.REPEATED_POINT,
          kept[count],
          "The outline's "
              + place(kept[count])
              + " repeats the first point; the outline closes by itself, so leave it out.");
    }
    return Arrays.copyOf(kept, count);
  }

  private boolean same(int i, int j) {
    return points.get(i).distanceTo(points.get(j)) < PolygonOutline.MIN_STEP_MM;
  }

  /**
   * Edges are swept by their least x, and each is reported once, with the first edge that it meets
   * later in the list, so that a scribble costs little time and few messages.
   */
  private void checkCrossings(int[] kept) {
    int edges = kept.length;
    Integer[] order = new Integer[edges];
    double[] least = new double[edges];
    double[] greatest = new double[edges];
    for (int i = 0; i < edges; i++) {
      order[i] = i;
      double from = points.get(kept[i]).x();
      double to = points.get(kept[(i + 1) % edges]).x();
      least[i] = Math.min(from, to);
      greatest[i] = Math.max(from, to);
    }
    Arrays.sort(order, Comparator.comparingDouble(i -> least[i])); // stable
    int[] partner = new int[edges];
    Arrays.fill(partner, Integer.MAX_VALUE);
    for (int i = 0; i < edges; i++) {
      for (int j = i + 1; j < edges && least[order[j]] <= greatest[order[i]]; j++) {
        int first = Math.min(order[i], order[j]);
        int second = Math.max(order[i], order[j]);
        if (second < partner[first] && meet(kept, first, second)) {
          partner[first] = second;
        }
      }
    }
    for (int i = 0; i < edges; i++) {
      if (partner[i] != Integer.MAX_VALUE) {
        add(
            Flaw.Kind.SELF_CROSSING,
            kept[i],
            "The outline's edge from "
                + place(kept[i])
                + " crosses or touches the edge from "
                + place(kept[partner[i]])
                + "; list the points in order round the hoop.");
      }
    }
  }

  /** Whether two edges share more than the corner that neighbours have in common. */
  private boolean meet(int[] kept, int first, int second) {
    int edges = kept.length;
    Point a = points.get(kept[first]);
    Point b = points.get(kept[first + 1]); // first is less than second, so it is not the last
    Point c = points.get(kept[second]);
    Point d = points.get(kept[(second + 1) % edges]);
    if (second == first + 1) {
      return foldsBack(a, b, d);
    }
    if (first == 0 && second == edges - 1) {
      return foldsBack(c, a, b);
    }
    return Segments.intersection(a, b, c, d).isPresent();
  }

  /** Whether the way on from the corner goes back over the way to it. */
  private static boolean foldsBack(Point before, Point corner, Point after) {
    double dot =
        (before.x() - corner.x()) * (after.x() - corner.x())
            + (before.y() - corner.y()) * (after.y() - corner.y());
    return dot > 0 && Orientation.sign(before, corner, after) == 0;
  }

  private void checkAxis(int[] kept) {
    int crossings = 0;
    int third = -1;
    for (int i = 0; i < kept.length; i++) {
      double x = Math.signum(points.get(kept[i]).x());
      double next = Math.signum(points.get(kept[(i + 1) % kept.length]).x());
      double before = Math.signum(points.get(kept[(i + kept.length - 1) % kept.length]).x());
      boolean crosses = x * next < 0 || (x == 0 && before * next < 0);
      if (crosses) {
        crossings++;
        third = crossings == 3 ? kept[i] : third;
      } else if (x == 0) {
        add(
            Flaw.Kind.AXIS_TOUCHED,
            kept[i],
            "The outline's "
                + place(kept[i])
                + " is on the long axis (x = 0) but the outline does not cross the axis there;"
                + " move the point to its side, or leave it out.");
      }
    }
    if (crossings != 2) {
      add(
          Flaw.Kind.AXIS_CROSSINGS,
          third,
          "The outline crosses the long axis (x = 0) "
              + crossings
              + " times, but a hoop crosses it twice, at head and throat;"
              + " check the signs of x and the order of the points.");
    }
  }
}
