package org.hoopwright.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An outline of the form |2x/w|^n + |2y/l|^n = 1 (the Lamé curve), with inside length l, inside
 * width w and exponent n: an ellipse for n = 2, fuller at the shoulders above it.
 *
 * <p>Arc lengths come from an adaptive quadrature done once when the value is made; their relative
 * error stays below 1e-11 for all allowed exponents. Two superellipses are equal when their three
 * numbers are.
 */
public final class Superellipse implements Outline {

  /** The least length and width, in millimetres. */
  public static final double MIN_SIZE_MM = 0.001;

  /** The greatest length and width, in millimetres. */
  public static final double MAX_SIZE_MM = 10_000;

  /** The least exponent; below 1 the curve is a star with four tips. */
  public static final double MIN_EXPONENT = 0.5;

  /** The greatest exponent; the curve is then almost a rectangle. */
  public static final double MAX_EXPONENT = 20;

  private final double length;
  private final double width;
  private final double exponent;
  private final SuperellipseQuarter quarter;

  private Superellipse(double length, double width, double exponent) {
    this.length = length;
    this.width = width;
    this.exponent = exponent;
    this.quarter = new SuperellipseQuarter(width / 2, length / 2, exponent);
  }

  /**
   * Makes an outline.
   *
   * @param lengthMm inside length, {@link #MIN_SIZE_MM} to {@link #MAX_SIZE_MM}
   * @param widthMm inside width, {@link #MIN_SIZE_MM} to {@link #MAX_SIZE_MM}
   * @param exponent {@link #MIN_EXPONENT} to {@link #MAX_EXPONENT}; 2 for an ellipse
   * @return the outline
   * @throws IllegalArgumentException if {@link #flaws} finds anything
   */
  public static Superellipse of(double lengthMm, double widthMm, double exponent) {
    Arguments.requireNone(flaws(lengthMm, widthMm, exponent));
    return new Superellipse(lengthMm, widthMm, exponent);
  }

  /**
   * All that keeps three numbers from being an outline; any numbers may be asked about.
   *
   * @param lengthMm inside length, millimetres
   * @param widthMm inside width, millimetres
   * @param exponent the exponent
   * @return length, width, exponent in this order, as far as they are out of range; empty if {@link
   *     #of} takes them. The index of each is -1.
   */
  public static List<Flaw> flaws(double lengthMm, double widthMm, double exponent) {
    List<Flaw> flaws = new ArrayList<>();
    checkSize("length", lengthMm, flaws);
    checkSize("width", widthMm, flaws);
    if (!(exponent >= MIN_EXPONENT && exponent <= MAX_EXPONENT)) {
      flaws.add(
          new Flaw(
              Flaw.Kind.EXPONENT,
              -1,
              "The exponent "
                  + exponent
                  + " is not from "
                  + MIN_EXPONENT
                  + " to "
                  + MAX_EXPONENT
                  + "; give 2 for an ellipse, a little more for a fuller hoop."));
    }
    return List.copyOf(flaws);
  }

  private static void checkSize(String name, double value, List<Flaw> flaws) {
    if (!(value >= MIN_SIZE_MM && value <= MAX_SIZE_MM)) {
      flaws.add(
          new Flaw(
              Flaw.Kind.SIZE,
              -1,
              "The hoop's inside "
                  + name
                  + " "
                  + value
                  + " mm is not from "
                  + MIN_SIZE_MM
                  + " to "
                  + MAX_SIZE_MM
                  + " mm; measure it from inside to inside."));
    }
  }

  /**
   * The exponent n.
   *
   * @return {@link #MIN_EXPONENT} to {@link #MAX_EXPONENT}
   */
  public double exponent() {
    return exponent;
  }

  @Override
  public double lengthMm() {
    return length;
  }

  @Override
  public double widthMm() {
    return width;
  }

  @Override
  public double areaMm2() {
    return 4 * quarter.area();
  }

  @Override
  public double perimeterMm() {
    return 4 * quarter.length();
  }

  @Override
  public double halfLengthMm(Side side) {
    return 2 * quarter.length();
  }

  @Override
  public Point headAxisPoint() {
    return new Point(0, length / 2);
  }

  @Override
  public Point throatAxisPoint() {
    return new Point(0, -length / 2);
  }

  @Override
  public Point atArc(Side side, double arcMm) {
    double half = halfLengthMm(side);
    double arc = Arguments.requireArc(side, arcMm, half);
    boolean headQuarter = arc <= quarter.length();
    double place = quarter.placeAt(headQuarter ? arc : half - arc);
    double y = quarter.y(place);
    return new Point(side.sign() * quarter.x(place), headQuarter ? y : -y);
  }

  @Override
  public double arcOf(Side side, Point point) {
    // The nearest place of a half is on the same side of the short axis as the point.
    double place = quarter.nearest(side.sign() * point.x(), Math.abs(point.y()));
    double arc = quarter.arcTo(place);
    return point.y() >= 0 ? arc : halfLengthMm(side) - arc;
  }

  @Override
  public double distanceTo(Point point) {
    double x = Math.abs(point.x());
    double y = Math.abs(point.y());
    double distance = quarter.distance(quarter.nearest(x, y), x, y);
    double level =
        StrictMath.pow(2 * (x / width), exponent) + StrictMath.pow(2 * (y / length), exponent);
    return level < 1 && distance > 0 ? -distance : distance;
  }

  @Override
  public Optional<Point> headAtX(Side side, double x) {
    Arguments.requireDistance(x);
    double ratio = 2 * (x / width);
    if (ratio > 1) {
      return Optional.empty();
    }
    return Optional.of(new Point(side.sign() * x, length / 2 * otherRatio(ratio)));
  }

  @Override
  public Optional<Point> throatAtX(Side side, double x) {
    return headAtX(side, x).map(p -> new Point(p.x(), -p.y()));
  }

  @Override
  public Optional<Point> atY(Side side, double y) {
    Arguments.requireHeight(y);
    double ratio = 2 * (Math.abs(y) / length);
    if (ratio > 1) {
      return Optional.empty();
    }
    return Optional.of(new Point(side.sign() * (width / 2) * otherRatio(ratio), y));
  }

  private double otherRatio(double ratio) {
    return StrictMath.pow(1 - StrictMath.pow(ratio, exponent), 1 / exponent);
  }

  @Override
  public Superellipse mirrored() {
    return this;
  }

  @Override
  public Superellipse scaled(double factor) {
    Arguments.requireFactor(factor);
    return of(length * factor, width * factor, exponent);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Superellipse that
        && length == that.length
        && width == that.width
        && exponent == that.exponent;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Double.hashCode(length) + Double.hashCode(width)) + Double.hashCode(exponent);
  }

  @Override
  public String toString() {
    return "Superellipse[length="
        + length
        + " mm, width="
        + width
        + " mm, exponent="
        + exponent
        + "]";
  }
}
