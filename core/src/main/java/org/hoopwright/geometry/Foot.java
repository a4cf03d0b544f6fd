package org.hoopwright.geometry;

import java.util.Optional;

/**
 * A place on one half of an outline that is not far from a point: beside it at the same height, or
 * above or below it at the same distance from the long axis. It costs next to nothing, unlike the
 * nearest place, and says enough about most points.
 *
 * @param at the place
 * @param awayMm how far it is from the point, in millimetres; the nearest place is no farther
 */
public record Foot(Point at, double awayMm) {

  /** A point that lies on the outline itself. */
  public static Foot on(Point point) {
    return new Foot(point, 0);
  }

  /**
   * The nearer of the two feet of a point on one half of an outline.
   *
   * @return empty when the half has no place at that height nor at that distance from the axis, or
   *     when the point lies on the other side of the axis
   */
  public static Optional<Foot> of(Outline outline, Side side, Point point) {
    double out = side.sign() * point.x();
    if (out < 0) {
      return Optional.empty();
    }
    Optional<Point> beside = outline.atY(side, point.y());
    double aside = beside.map(p -> Math.abs(p.x() - point.x())).orElse(Double.POSITIVE_INFINITY);
    if (aside <= Math.abs(point.y()) * NEAR) {
      return beside.map(p -> new Foot(p, aside));
    }
    Optional<Point> along =
        point.y() >= 0 ? outline.headAtX(side, out) : outline.throatAtX(side, out);
    double above = along.map(p -> Math.abs(p.y() - point.y())).orElse(Double.POSITIVE_INFINITY);
    return above < aside ? along.map(p -> new Foot(p, above)) : beside.map(p -> new Foot(p, aside));
  }

  /** A foot as near as this part of the height is not worth a second look. */
  private static final double NEAR = 1e-3;

  /**
   * Whether the place nearest to this foot's point surely comes before the one nearest to another's
   * on the way from the head to the throat, on a half that falls all the way and is symmetric about
   * the short axis. Each nearest place lies within twice its distance of its foot.
   *
   * @return false when it does not, or when the feet are not near enough to tell
   */
  public boolean surelyBefore(Foot other) {
    double slack = 2 * (awayMm + other.awayMm);
    if (at.y() - other.at.y() > slack) {
      return true;
    }
    double outwards = Math.abs(other.at.x()) - Math.abs(at.x());
    boolean head = at.y() > 2 * awayMm && other.at.y() > 2 * other.awayMm;
    boolean throat = at.y() < -2 * awayMm && other.at.y() < -2 * other.awayMm;
    return (head && outwards > slack) || (throat && -outwards > slack);
  }
}
