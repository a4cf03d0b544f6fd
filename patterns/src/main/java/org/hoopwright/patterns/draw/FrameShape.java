package org.hoopwright.patterns.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Outline;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;

/**
 * The hoop on the page: where each hole is, which way is outwards, and lines that follow the frame
 * outside.
 *
 * <p>A place on the ring is its way along the outline in page units, from the head's axis point
 * down the left side to the throat and up the right side. Page units are chosen so that holes stand
 * far enough apart for their names, whatever the size of the frame.
 */
final class FrameShape {

  /** How thick the frame is drawn, in page units. */
  static final double BAND = 20;

  private static final double HOLE_PITCH = 27;
  private static final double LEAST_LENGTH = 560;
  private static final double MOST_LENGTH = 1150;
  private static final double FARTHEST = 30;
  private static final int SAMPLES = 1440;

  private final double scale;
  private final boolean back;
  private final double left;
  private final double ring;
  private final List<Point> samples = new ArrayList<>(SAMPLES);
  private final Map<HoleId, Mouth> mouths = new TreeMap<>();

  /**
   * A hole on the page.
   *
   * @param ring its place on the ring
   * @param inner its inner mouth, where the span begins
   * @param centre the middle of its way through the frame
   * @param outer its outer mouth
   * @param out the direction outwards, of length 1
   */
  record Mouth(double ring, Point inner, Point centre, Point outer, Point out) {}

  FrameShape(Outline outline, Map<HoleId, Point> positions, boolean back) {
    this.back = back;
    double pitchScale = HOLE_PITCH * positions.size() / outline.perimeterMm();
    double length = Math.max(outline.lengthMm(), outline.widthMm());
    scale = Math.max(LEAST_LENGTH / length, Math.min(MOST_LENGTH / length, pitchScale));
    double leftMm = outline.halfLengthMm(Side.LEFT);
    double rightMm = outline.halfLengthMm(Side.RIGHT);
    left = leftMm * scale;
    ring = (leftMm + rightMm) * scale;
    for (int i = 0; i < SAMPLES; i++) {
      double mm = i * (leftMm + rightMm) / SAMPLES;
      Point p =
          mm <= leftMm
              ? outline.atArc(Side.LEFT, mm)
              : outline.atArc(Side.RIGHT, Math.min(rightMm, leftMm + rightMm - mm));
      samples.add(page(p));
    }
    positions.forEach((hole, p) -> mouths.put(hole, mouthAt(outline, hole, p)));
  }

  private Mouth mouthAt(Outline outline, HoleId hole, Point mm) {
    double arc = outline.arcOf(hole.side(), mm) * scale;
    double u = hole.side() == Side.LEFT ? arc : ring - arc;
    Point foot = onRing(u, 0);
    double dx = Math.max(-1e9, Math.min(1e9, page(mm).x())) - foot.x();
    double dy = Math.max(-1e9, Math.min(1e9, page(mm).y())) - foot.y();
    // A hole far from the hoop is a mistake in the layout; it is drawn as far out as fits the page.
    double shrink = Math.min(1, FARTHEST / Math.max(1e-9, StrictMath.hypot(dx, dy)));
    Point inner = new Point(foot.x() + dx * shrink, foot.y() + dy * shrink);
    Point out = outwards(u);
    return new Mouth(u, inner, along(inner, out, BAND / 2), along(inner, out, BAND), out);
  }

  /** Page units to the millimetre. */
  double scale() {
    return scale;
  }

  /** Whether the frame is seen from the back. */
  boolean back() {
    return back;
  }

  /** A point of the frame, in mm, on the page. */
  Point page(Point mm) {
    double x = Math.max(-1e6, Math.min(1e6, mm.x()));
    double y = Math.max(-1e6, Math.min(1e6, mm.y()));
    return new Point((back ? -x : x) * scale, -y * scale);
  }

  /** The point at a distance from another in a direction of length 1. */
  static Point along(Point from, Point direction, double distance) {
    return new Point(from.x() + direction.x() * distance, from.y() + direction.y() * distance);
  }

  Mouth mouth(HoleId hole) {
    Mouth mouth = mouths.get(hole);
    if (mouth == null) {
      throw new IllegalArgumentException("The hole (" + hole + ") must be one of the layout's.");
    }
    return mouth;
  }

  boolean has(HoleId hole) {
    return mouths.containsKey(hole);
  }

  Map<HoleId, Mouth> mouths() {
    return mouths;
  }

  /** The length of the whole ring, in page units. */
  double ringLength() {
    return ring;
  }

  /** The throat's axis point on the ring. */
  double throat() {
    return left;
  }

  /** A place on the ring, moved outwards. */
  Point onRing(double u, double outwards) {
    Point foot = sample(u);
    return outwards == 0 ? foot : along(foot, outwards(u), outwards);
  }

  private Point sample(double u) {
    double at = wrapped(u) / ring * SAMPLES;
    int i = (int) Math.floor(at);
    return Point.interpolate(
        samples.get(Math.floorMod(i, SAMPLES)), samples.get(Math.floorMod(i + 1, SAMPLES)), at - i);
  }

  private double wrapped(double u) {
    double w = u % ring;
    return w < 0 ? w + ring : w;
  }

  /** The direction outwards at a place on the ring, of length 1. */
  Point outwards(double u) {
    double step = Math.max(2, ring / 400);
    Point a = sample(u - step);
    Point b = sample(u + step);
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double length = Math.max(1e-9, StrictMath.hypot(dx, dy));
    // From the head down the left side and up the right one the outside is on the right hand; seen
    // from the back it is on the left hand.
    double turn = back ? -1 : 1;
    return new Point(-turn * dy / length, turn * dx / length);
  }

  /** The way from one place on the ring to another, the shorter way round; negative backwards. */
  double way(double from, double to) {
    double w = wrapped(to - from);
    return w > ring / 2 ? w - ring : w;
  }

  /** Points along the ring from one place on, at a distance outwards, evenly spaced. */
  List<Point> curve(double from, double way, double outwards) {
    int steps = Math.max(2, (int) Math.ceil(Math.abs(way) / 6));
    List<Point> points = new ArrayList<>(steps + 1);
    for (int i = 0; i <= steps; i++) {
      points.add(onRing(from + way * i / steps, outwards));
    }
    return points;
  }

  /** The whole ring at a distance outwards, as a closed path. */
  String closed(double outwards) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < SAMPLES; i += 8) {
      points.add(onRing(ring * i / SAMPLES, outwards));
    }
    return path(points) + "Z";
  }

  /** A path through these points. */
  static String path(List<Point> points) {
    StringBuilder d = new StringBuilder();
    for (Point p : points) {
      d.append(d.length() == 0 ? 'M' : 'L')
          .append(Element.number(p.x()))
          .append(' ')
          .append(Element.number(p.y()));
    }
    return d.toString();
  }
}
