package org.hoopwright.geometry;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One half of a polygon outline: its corners from the head's axis point to the throat's, all on one
 * side between these two.
 */
final class Polyline {

  private final Side side;
  private final List<Point> corners;

  /** The arc length from the head to each corner. */
  private final double[] arcs;

  private final double reach;

  Polyline(Side side, List<Point> corners) {
    this.side = side;
    this.corners = List.copyOf(corners);
    this.arcs = new double[corners.size()];
    double out = 0;
    for (int i = 1; i < arcs.length; i++) {
      arcs[i] = arcs[i - 1] + corners.get(i - 1).distanceTo(corners.get(i));
      out = Math.max(out, Math.abs(corners.get(i).x()));
    }
    this.reach = out;
  }

  double length() {
    return arcs[arcs.length - 1];
  }

  /** The greatest distance from the long axis. */
  double reach() {
    return reach;
  }

  Point head() {
    return corners.get(0);
  }

  Point throat() {
    return corners.get(arcs.length - 1);
  }

  Point at(double arc) {
    int found = Arrays.binarySearch(arcs, arc);
    if (found >= 0) {
      return corners.get(found);
    }
    int edge = -found - 2;
    double t = (arc - arcs[edge]) / (arcs[edge + 1] - arcs[edge]);
    return Point.interpolate(corners.get(edge), corners.get(edge + 1), t);
  }

  /** A place on the half: its arc length, and its distance from the point asked about. */
  record Nearest(double arc, double distance) {}

  Nearest nearest(Point p) {
    Nearest best = new Nearest(0, head().distanceTo(p));
    for (int edge = 0; edge + 1 < arcs.length; edge++) {
      double t = projection(p, corners.get(edge), corners.get(edge + 1));
      Point foot = Point.interpolate(corners.get(edge), corners.get(edge + 1), t);
      double distance = foot.distanceTo(p);
      if (distance < best.distance()) {
        double arc = t < 1 ? arcs[edge] + t * (arcs[edge + 1] - arcs[edge]) : arcs[edge + 1];
        best = new Nearest(arc, distance);
      }
    }
    return best;
  }

  /** The fraction, 0 to 1, of the place on the edge a → b nearest to p. */
  private static double projection(Point p, Point a, Point b) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double square = dx * dx + dy * dy;
    if (square < 1e-200) { // a corner next to its axis point: any place on the edge will do
      return 0;
    }
    // Far points are scaled to keep the products finite.
    double scale = Math.max(1, Math.max(Math.abs(p.x()), Math.abs(p.y())));
    double along = (p.x() - a.x()) / scale * dx + (p.y() - a.y()) / scale * dy;
    double t = along * (scale / square);
    return Math.min(1, Math.max(0, t));
  }

  /** The first place from the head at a distance from the long axis. */
  Optional<Point> firstAtX(double x) {
    if (x > reach) {
      return Optional.empty();
    }
    int i = 0;
    while (Math.abs(corners.get(i).x()) < x) {
      i++;
    }
    return Optional.of(i == 0 ? head() : atX(x, corners.get(i - 1), corners.get(i)));
  }

  /** The first place from the throat at a distance from the long axis. */
  Optional<Point> lastAtX(double x) {
    if (x > reach) {
      return Optional.empty();
    }
    int i = arcs.length - 1;
    while (Math.abs(corners.get(i).x()) < x) {
      i--;
    }
    return Optional.of(
        i == arcs.length - 1 ? throat() : atX(x, corners.get(i + 1), corners.get(i)));
  }

  /** The place at distance x on an edge whose inner end is nearer to the axis than x. */
  private Point atX(double x, Point inner, Point outer) {
    double in = Math.abs(inner.x());
    double t = (x - in) / (Math.abs(outer.x()) - in);
    return new Point(side.sign() * x, Point.interpolate(inner, outer, t).y());
  }

  /** The place at a height that is farthest out; the first from the head of several. */
  Optional<Point> outermostAtY(double y) {
    double best = -1;
    for (int i = 0; i + 1 < arcs.length; i++) {
      Point a = corners.get(i);
      Point b = corners.get(i + 1);
      if (Math.min(a.y(), b.y()) <= y && y <= Math.max(a.y(), b.y())) {
        best = Math.max(best, outermostAtY(y, a, b));
      }
    }
    return best < 0 ? Optional.empty() : Optional.of(new Point(side.sign() * best, y));
  }

  private static double outermostAtY(double y, Point a, Point b) {
    if (a.y() == b.y()) {
      return Math.max(Math.abs(a.x()), Math.abs(b.x()));
    }
    double t = (y - a.y()) / (b.y() - a.y());
    return Math.abs(Point.interpolate(a, b, t).x());
  }
}
