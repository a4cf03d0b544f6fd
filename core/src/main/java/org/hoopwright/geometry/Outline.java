package org.hoopwright.geometry;

import java.util.Optional;

/**
 * The inside line of a hoop, where strings touch it: a closed curve without self-crossing that
 * meets the long axis (x = 0) twice, at the head and at the throat.
 *
 * <p>These two axis points cut it into a left and a right <em>half</em>, which may differ. A place
 * on a half is named by its arc length from the head's axis point. All lengths are millimetres.
 */
public sealed interface Outline permits Superellipse, PolygonOutline {

  /**
   * The inside length of the hoop, along the long axis from axis point to axis point.
   *
   * @return millimetres, more than 0
   */
  double lengthMm();

  /**
   * The inside width of the hoop: the distance in x between its outermost places.
   *
   * @return millimetres, more than 0
   */
  double widthMm();

  /**
   * The area inside the outline.
   *
   * @return square millimetres, more than 0
   */
  double areaMm2();

  /**
   * The length of the whole outline: both halves.
   *
   * @return millimetres, more than 0
   */
  double perimeterMm();

  /**
   * The arc length of one half, from the head's axis point to the throat's.
   *
   * @param side which half
   * @return millimetres, more than 0
   */
  double halfLengthMm(Side side);

  /**
   * The place where the outline crosses the long axis at the head.
   *
   * @return a point with x = 0
   */
  Point headAxisPoint();

  /**
   * The place where the outline crosses the long axis at the throat.
   *
   * @return a point with x = 0
   */
  Point throatAxisPoint();

  /**
   * The place at an arc length along one half.
   *
   * @param side which half
   * @param arcMm millimetres from the head's axis point, 0 to {@link #halfLengthMm}; these two ends
   *     give the axis points to the bit
   * @return the point
   * @throws IllegalArgumentException if the arc length is not on the half
   */
  Point atArc(Side side, double arcMm);

  /**
   * The arc length of the place on one half that is nearest to a point.
   *
   * @param side which half
   * @param point any point, also far from the outline or on the other side
   * @return millimetres from the head's axis point, 0 to {@link #halfLengthMm}; of several equally
   *     near places the one nearest the head
   */
  double arcOf(Side side, Point point);

  /**
   * The distance of a point from the outline.
   *
   * @param point any point
   * @return millimetres: negative inside, positive outside, about 0 on the outline
   */
  double distanceTo(Point point);

  /**
   * Where a string parallel to the long axis meets the head's end of one half: the first place at
   * that distance from the axis on the way from the head's axis point.
   *
   * @param side which half
   * @param x distance from the long axis in millimetres, not negative on either side
   * @return the point, whose distance from the axis is {@code x} to the bit; empty if the half does
   *     not reach so far out
   * @throws IllegalArgumentException if the distance is negative or not finite
   */
  Optional<Point> headAtX(Side side, double x);

  /**
   * Where a string parallel to the long axis meets the throat's end of one half: the first place at
   * that distance from the axis on the way from the throat's axis point.
   *
   * @param side which half
   * @param x distance from the long axis in millimetres, not negative on either side
   * @return the point, whose distance from the axis is {@code x} to the bit; empty if the half does
   *     not reach so far out
   * @throws IllegalArgumentException if the distance is negative or not finite
   */
  Optional<Point> throatAtX(Side side, double x);

  /**
   * Where a string across the hoop meets one half: the place at that height farthest from the long
   * axis, and of several the one nearest the head.
   *
   * @param side which half
   * @param y the height in millimetres, positive towards the head; finite
   * @return the point, whose y is {@code y} to the bit; empty if the half has no place so high or
   *     low
   * @throws IllegalArgumentException if the height is not finite
   */
  Optional<Point> atY(Side side, double y);

  /**
   * This outline mirrored in the long axis: left and right change places.
   *
   * @return an outline of the same kind
   */
  Outline mirrored();

  /**
   * This outline made larger or smaller about the origin.
   *
   * @param factor more than 0
   * @return an outline of the same kind
   * @throws IllegalArgumentException if the factor is not a finite number above 0, or the result is
   *     no outline because it is too large or too small
   */
  Outline scaled(double factor);
}
