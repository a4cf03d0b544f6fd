package org.hoopwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;

/** Laws that hold for every outline. */
class OutlineLawsTest {

  @Property
  void theArcOfThePointAtAnArcIsThatArc(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll Side side,
      @ForAll @DoubleRange(min = 0, max = 1) double part) {
    Outline outline = Hoops.any(seed);
    double arc = part * outline.halfLengthMm(side);
    Point point = outline.atArc(side, arc);
    assertThat(outline.arcOf(side, point)).isCloseTo(arc, within(1e-9));
    assertThat(outline.distanceTo(point)).isCloseTo(0, within(1e-10));
    assertThat(side == Side.LEFT ? -point.x() : point.x()).isGreaterThanOrEqualTo(-0.0);
  }

  @Property
  void arcsRiseFromHeadToThroatAndChordsAreNeverLonger(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed, @ForAll Side side) {
    Outline outline = Hoops.any(seed);
    double half = outline.halfLengthMm(side);
    assertThat(outline.atArc(side, 0)).isEqualTo(outline.headAxisPoint());
    assertThat(outline.atArc(side, -0.0)).isEqualTo(outline.headAxisPoint());
    assertThat(outline.atArc(side, half)).isEqualTo(outline.throatAxisPoint());
    int steps = 200;
    double before = 0;
    double chords = 0;
    Point last = outline.headAxisPoint();
    for (int i = 1; i <= steps; i++) {
      Point point = outline.atArc(side, half * ((double) i / steps));
      double chord = last.distanceTo(point);
      assertThat(chord).isPositive().isLessThanOrEqualTo(half / steps + 1e-9);
      double arc = outline.arcOf(side, point);
      assertThat(arc).isGreaterThan(before);
      before = arc;
      chords += chord;
      last = point;
    }
    assertThat(chords).isBetween(0.8 * half, half + 1e-9);
    assertThat(outline.halfLengthMm(Side.LEFT) + outline.halfLengthMm(Side.RIGHT))
        .isCloseTo(outline.perimeterMm(), within(1e-9));
  }

  @Property
  void mirroringSwapsTheSidesToTheBit(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll Side side,
      @ForAll @DoubleRange(min = 0, max = 1) double part,
      @ForAll @DoubleRange(min = -300, max = 300) double x,
      @ForAll @DoubleRange(min = -300, max = 300) double y) {
    Outline outline = Hoops.any(seed);
    Outline mirrored = outline.mirrored();
    Side other = side.other();
    double half = outline.halfLengthMm(side);
    Point point = new Point(x, y);
    assertThat(mirrored.halfLengthMm(other)).isEqualTo(half);
    assertThat(mirrored.atArc(other, part * half))
        .isEqualTo(outline.atArc(side, part * half).mirrored());
    assertThat(mirrored.arcOf(other, point.mirrored())).isEqualTo(outline.arcOf(side, point));
    assertThat(mirrored.distanceTo(point.mirrored())).isEqualTo(outline.distanceTo(point));
    assertThat(mirrored.headAtX(other, Math.abs(x)))
        .isEqualTo(outline.headAtX(side, Math.abs(x)).map(Point::mirrored));
    assertThat(mirrored.throatAtX(other, Math.abs(x)))
        .isEqualTo(outline.throatAtX(side, Math.abs(x)).map(Point::mirrored));
    assertThat(mirrored.atY(other, y)).isEqualTo(outline.atY(side, y).map(Point::mirrored));
    assertThat(mirrored.mirrored()).isEqualTo(outline);
    assertThat(mirrored.areaMm2()).isCloseTo(outline.areaMm2(), within(1e-8));
    assertThat(mirrored.widthMm()).isEqualTo(outline.widthMm());
    assertThat(mirrored.lengthMm()).isEqualTo(outline.lengthMm());
  }

  @Property
  void scalingScalesLengthsOnceAndAreaTwice(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll Side side,
      @ForAll @DoubleRange(min = 0.05, max = 20) double factor,
      @ForAll @DoubleRange(min = 0, max = 1) double part) {
    Outline outline = Hoops.any(seed);
    Outline scaled = outline.scaled(factor);
    double half = outline.halfLengthMm(side);
    close(scaled.lengthMm(), outline.lengthMm() * factor);
    close(scaled.widthMm(), outline.widthMm() * factor);
    close(scaled.perimeterMm(), outline.perimeterMm() * factor);
    close(scaled.halfLengthMm(side), half * factor);
    close(scaled.areaMm2(), outline.areaMm2() * factor * factor);
    Point point = outline.atArc(side, part * half);
    Point there = scaled.atArc(side, part * scaled.halfLengthMm(side));
    assertThat(there.x()).isCloseTo(point.x() * factor, within(1e-9 * factor));
    assertThat(there.y()).isCloseTo(point.y() * factor, within(1e-9 * factor));
    assertThat(outline.scaled(1)).isEqualTo(outline);
  }

  private static void close(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(1e-11 * expected));
  }

  @Property
  void theNearestPlaceIsNotBeatenByAnyOther(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll Side side,
      @ForAll @DoubleRange(min = -260, max = 260) double x,
      @ForAll @DoubleRange(min = -260, max = 260) double y) {
    Outline outline = Hoops.any(seed);
    Point point = new Point(x, y);
    double half = outline.halfLengthMm(side);
    double found = outline.atArc(side, outline.arcOf(side, point)).distanceTo(point);
    double least = Double.POSITIVE_INFINITY;
    int steps = 600;
    for (int i = 0; i <= steps; i++) {
      least = Math.min(least, outline.atArc(side, half * ((double) i / steps)).distanceTo(point));
    }
    assertThat(found).isLessThanOrEqualTo(least + 1e-6);
    double otherSide =
        outline.atArc(side.other(), outline.arcOf(side.other(), point)).distanceTo(point);
    assertThat(Math.abs(outline.distanceTo(point)))
        .isCloseTo(Math.min(found, otherSide), within(1e-6));
  }

  @Property
  void theSignOfTheDistanceTellsInsideFromOutside(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll Side side,
      @ForAll @DoubleRange(min = 0, max = 1) double part) {
    // All outlines here are stars seen from the origin, so scaling a point crosses them once.
    Outline outline = Hoops.any(seed);
    Point on = outline.atArc(side, part * outline.halfLengthMm(side));
    Point in = Point.interpolate(new Point(0, 0), on, 0.99);
    Point out = Point.interpolate(new Point(0, 0), on, 1.01);
    assertThat(outline.distanceTo(in)).isNegative().isGreaterThanOrEqualTo(-in.distanceTo(on));
    assertThat(outline.distanceTo(out)).isPositive().isLessThanOrEqualTo(out.distanceTo(on));
  }

  @Property
  void stringsMeetTheOutlineWhereTheySay(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll Side side,
      @ForAll @DoubleRange(min = 0, max = 220) double x,
      @ForAll @DoubleRange(min = -220, max = 220) double y) {
    Outline outline = Hoops.any(seed);
    Optional<Point> head = outline.headAtX(side, x);
    Optional<Point> throat = outline.throatAtX(side, x);
    assertThat(head.isPresent()).isEqualTo(throat.isPresent());
    if (head.isPresent() && throat.isPresent()) {
      assertThat(head.get().x()).isEqualTo(side.sign() * x);
      assertThat(throat.get().x()).isEqualTo(side.sign() * x);
      assertThat(outline.distanceTo(head.get())).isCloseTo(0, within(1e-9));
      assertThat(outline.distanceTo(throat.get())).isCloseTo(0, within(1e-9));
      assertThat(outline.arcOf(side, head.get()))
          .isLessThanOrEqualTo(outline.arcOf(side, throat.get()));
    }
    Optional<Point> across = outline.atY(side, y);
    if (across.isPresent()) {
      assertThat(across.get().y()).isEqualTo(y);
      assertThat(side == Side.LEFT ? -across.get().x() : across.get().x())
          .isGreaterThanOrEqualTo(-0.0);
      assertThat(outline.distanceTo(across.get())).isCloseTo(0, within(1e-9));
    }
    boolean within = y < outline.headAxisPoint().y() && y > outline.throatAxisPoint().y();
    assertThat(across.isPresent() || !within).isTrue();
  }
}
