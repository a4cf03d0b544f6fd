package org.hoopwright.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * An outline of straight edges through a closed list of measured points. The list may run either
 * way round and start anywhere; it is kept as given, and two outlines are equal when their lists
 * are.
 *
 * <p>The two halves may differ. A point on the long axis is fine where the outline crosses it; else
 * the axis points lie on the edges that cross it.
 */
public final class PolygonOutline implements Outline {

  /** The fewest points. */
  public static final int MIN_POINTS = 8;

  /** The most points. */
  public static final int MAX_POINTS = 2000;

  /** Points nearer to the one before than this count as repeated, in millimetres. */
  public static final double MIN_STEP_MM = 1e-6;

  /** The greatest x and y, either sign, in millimetres. */
  public static final double MAX_COORDINATE_MM = 10_000;

  private final List<Point> points;
  private final Polyline left;
  private final Polyline right;
  private final double width;
  private final double area;

  private PolygonOutline(List<Point> points) {
    this.points = points;
    List<List<Point>> halves = halves(points);
    Polyline first = polyline(halves.get(0));
    Polyline second = polyline(halves.get(1));
    boolean leftFirst = halves.get(0).get(1).x() < 0;
    this.left = leftFirst ? first : second;
    this.right = leftFirst ? second : first;
    this.width = left.reach() + right.reach();
    this.area = area(points);
  }

  /**
   * Makes an outline.
   *
   * @param points {@link #MIN_POINTS} to {@link #MAX_POINTS} points in order round the hoop, either
   *     way, the first not repeated at the end; no repeated neighbours, no self-crossing, exactly
   *     two crossings of the long axis
   * @return the outline
   * @throws IllegalArgumentException if {@link #flaws} finds anything
   */
  public static PolygonOutline of(List<Point> points) {
    List<Point> copy = List.copyOf(points);
    Arguments.requireNone(PolygonChecks.flaws(copy));
    return new PolygonOutline(copy);
  }

  /**
   * All that keeps a list of points from being an outline; any list may be asked about. Takes time
   * in the square of {@link #MAX_POINTS} at worst.
   *
   * @param points points in order round the hoop
   * @return the flaws by rising index, those about the whole list first; of crossing edges each is
   *     reported once, with one edge that it meets. Of a list that is too long only that is said.
   *     Empty if {@link #of} takes the list.
   */
  public static List<Flaw> flaws(List<Point> points) {
    return PolygonChecks.flaws(List.copyOf(points));
  }

  /** The two chains of corners between the axis points, each with both axis points as its ends. */
  private static List<List<Point>> halves(List<Point> points) {
    List<List<Point>> chains = new ArrayList<>();
    List<Point> chain = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Point p = points.get(i);
      Point next = points.get((i + 1) % points.size());
      chain.add(p);
      Point crossing = null;
      if (p.x() == 0) {
        crossing = p;
      } else if (Math.signum(p.x()) * Math.signum(next.x()) < 0) {
        double t = p.x() / (p.x() - next.x());
        crossing = new Point(0, Point.interpolate(p, next, t).y());
        chain.add(crossing);
      }
      if (crossing != null) {
        chains.add(chain);
        chain = new ArrayList<>(List.of(crossing));
      }
    }
    // The first chain began in mid-half; what is left over at the end belongs before it.
    chain.addAll(chains.get(0));
    return List.of(chain, chains.get(1));
  }

  private static Polyline polyline(List<Point> chain) {
    List<Point> fromHead = new ArrayList<>(chain);
    if (chain.get(0).y() < chain.get(chain.size() - 1).y()) {
      Collections.reverse(fromHead);
    }
    return new Polyline(chain.get(1).x() < 0 ? Side.LEFT : Side.RIGHT, fromHead);
  }

  /** Half the sum of cross products (the shoelace formula), taken about the first point. */
  private static double area(List<Point> points) {
    Point o = points.get(0);
    double twice = 0;
    for (int i = 1; i + 1 < points.size(); i++) {
      Point p = points.get(i);
      Point q = points.get(i + 1);
      twice += (p.x() - o.x()) * (q.y() - o.y()) - (p.y() - o.y()) * (q.x() - o.x());
    }
    return Math.abs(twice) / 2;
  }

  private Polyline half(Side side) {
    return side == Side.LEFT ? left : right;
  }

  /**
   * The points as given.
   *
   * @return an unmodifiable list, in the given order
   */
  public List<Point> points() {
    return points;
  }

  /**
   * How far the middle of the inside length is from the origin, where it should be. An outline
   * measured from some other zero shows it here; it is used as given all the same.
   *
   * @return millimetres, positive towards the head
   */
  public double axisOffsetMm() {
    return (headAxisPoint().y() + throatAxisPoint().y()) / 2;
  }

  @Override
  public double lengthMm() {
    return headAxisPoint().y() - throatAxisPoint().y();
  }

  @Override
  public double widthMm() {
    return width;
  }

  @Override
  public double areaMm2() {
    return area;
  }

  @Override
  public double perimeterMm() {
    return left.length() + right.length();
  }

  @Override
  public double halfLengthMm(Side side) {
    return half(side).length();
  }

  @Override
  public Point headAxisPoint() {
    return left.head();
  }

  @Override
  public Point throatAxisPoint() {
    return left.throat();
  }

  @Override
  public Point atArc(Side side, double arcMm) {
    return half(side).at(Arguments.requireArc(side, arcMm, halfLengthMm(side)));
  }

  @Override
  public double arcOf(Side side, Point point) {
    return half(side).nearest(point).arc();
  }

  @Override
  public double distanceTo(Point point) {
    double distance = Math.min(left.nearest(point).distance(), right.nearest(point).distance());
    return distance > 0 && isInside(point) ? -distance : distance;
  }

  /** Whether a ray to the right meets the outline an odd number of times. */
  private boolean isInside(Point p) {
    boolean inside = false;
    for (int i = 0; i < points.size(); i++) {
      Point a = points.get(i);
      Point b = points.get((i + 1) % points.size());
      if ((a.y() > p.y()) != (b.y() > p.y())) {
        int turn = Orientation.sign(a, b, p);
        inside ^= a.y() < b.y() ? turn > 0 : turn < 0;
      }
    }
    return inside;
  }

  @Override
  public Optional<Point> headAtX(Side side, double x) {
    Arguments.requireDistance(x);
    return half(side).firstAtX(x);
  }

  @Override
  public Optional<Point> throatAtX(Side side, double x) {
    Arguments.requireDistance(x);
    return half(side).lastAtX(x);
  }

  @Override
  public Optional<Point> atY(Side side, double y) {
    Arguments.requireHeight(y);
    return half(side).outermostAtY(y);
  }

  @Override
  public PolygonOutline mirrored() {
    return of(points.stream().map(Point::mirrored).toList());
  }

  @Override
  public PolygonOutline scaled(double factor) {
    Arguments.requireFactor(factor);
    return of(points.stream().map(p -> scaled(p, factor)).toList());
  }

  private static Point scaled(Point p, double factor) {
    double limit = 2 * MAX_COORDINATE_MM; // beyond the range, which the factory then reports
    return new Point(
        Math.max(-limit, Math.min(limit, p.x() * factor)),
        Math.max(-limit, Math.min(limit, p.y() * factor)));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PolygonOutline that && points.equals(that.points);
  }

  @Override
  public int hashCode() {
    return points.hashCode();
  }

  @Override
  public String toString() {
    return "PolygonOutline" + points;
  }
}
