package org.hoopwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class PolygonOutlineTest {

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  /** A box with bevelled corners, flat at head, throat and flanks; wider on the right. */
  private static final List<Point> BOX =
      List.of(
          p(-20, 100),
          p(30, 100),
          p(60, 70),
          p(60, -70),
          p(30, -100),
          p(-20, -100),
          p(-40, -80),
          p(-40, 80));

  private final PolygonOutline box = PolygonOutline.of(BOX);

  private static Polygon jts(List<Point> points) {
    Coordinate[] ring = new Coordinate[points.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Point q = points.get(i % points.size());
      ring[i] = new Coordinate(q.x(), q.y());
    }
    return new GeometryFactory().createPolygon(ring);
  }

  @Test
  void aBoxIsMeasuredByHand() {
    assertThat(box.points()).isEqualTo(BOX);
    assertThat(box.headAxisPoint()).isEqualTo(p(0, 100));
    assertThat(box.throatAxisPoint()).isEqualTo(p(0, -100));
    assertThat(box.lengthMm()).isEqualTo(200);
    assertThat(box.widthMm()).isEqualTo(100);
    assertThat(box.areaMm2()).isEqualTo(100 * 200 - 30 * 30 - 20 * 20);
    double left = 20 + Math.hypot(20, 20) + 160 + Math.hypot(20, 20) + 20;
    double right = 30 + Math.hypot(30, 30) + 140 + Math.hypot(30, 30) + 30;
    assertThat(box.halfLengthMm(Side.LEFT)).isCloseTo(left, within(1e-12));
    assertThat(box.halfLengthMm(Side.RIGHT)).isCloseTo(right, within(1e-12));
    assertThat(box.perimeterMm()).isCloseTo(left + right, within(1e-12));
    assertThat(box.atArc(Side.LEFT, 20)).isEqualTo(p(-20, 100));
    assertThat(box.atArc(Side.RIGHT, 12.5)).isEqualTo(p(12.5, 100));
  }

  @Test
  void stringsMeetFlatPlacesAtTheirOuterEnds() {
    assertThat(box.headAtX(Side.RIGHT, 60)).contains(p(60, 70));
    assertThat(box.throatAtX(Side.RIGHT, 60)).contains(p(60, -70));
    assertThat(box.headAtX(Side.LEFT, 60)).isEmpty();
    assertThat(box.headAtX(Side.LEFT, 0)).contains(p(0, 100));
    assertThat(box.throatAtX(Side.LEFT, 0)).contains(p(0, -100));
    assertThat(box.headAtX(Side.RIGHT, 45)).contains(p(45, 85));
    assertThat(box.throatAtX(Side.LEFT, 30)).contains(p(-30, -90));
    assertThat(box.atY(Side.RIGHT, 100)).contains(p(30, 100));
    assertThat(box.atY(Side.LEFT, -100)).contains(p(-20, -100));
    assertThat(box.atY(Side.LEFT, 90)).contains(p(-30, 90));
    assertThat(box.atY(Side.LEFT, 100.1)).isEmpty();
  }

  @Test
  void aBulgeIsMetAtItsFirstAndItsOutermostPlace() {
    // The head dips to the axis like a heart, and the right flank bends in at half height.
    PolygonOutline heart =
        PolygonOutline.of(
            List.of(
                p(0, 80),
                p(30, 110),
                p(60, 80),
                p(40, 0),
                p(60, -80),
                p(0, -100),
                p(-60, -80),
                p(-60, 80),
                p(-30, 110)));
    assertThat(heart.lengthMm()).isEqualTo(180);
    assertThat(heart.axisOffsetMm()).isEqualTo(-10);
    assertThat(heart.atY(Side.RIGHT, 100)).contains(p(40, 100));
    assertThat(heart.headAtX(Side.RIGHT, 15)).contains(p(15, 95));
    assertThat(heart.headAtX(Side.RIGHT, 45)).contains(p(45, 95));
    assertThat(heart.distanceTo(p(0, 90))).isPositive();
    assertThat(heart.distanceTo(p(0, 70))).isNegative();
    assertThat(heart.distanceTo(p(50, 0))).isPositive();
  }

  @Test
  void theAxisOffsetIsToldAndTheOutlineUsedAsGiven() {
    assertThat(box.axisOffsetMm()).isZero();
    PolygonOutline raised =
        PolygonOutline.of(BOX.stream().map(q -> p(q.x(), q.y() + 100)).toList());
    assertThat(raised.axisOffsetMm()).isEqualTo(100);
    assertThat(raised.lengthMm()).isEqualTo(200);
    assertThat(raised.throatAxisPoint()).isEqualTo(p(0, 0));
  }

  // source: a regular n-gon in a circle of radius r has the perimeter 2nr·sin(π/n) and the area
  // nr²·sin(2π/n)/2 (from memory)
  @Test
  void regularPolygonsFollowTheirFormulas() {
    for (int n : new int[] {8, 9, 64, 1999, 2000}) {
      PolygonOutline polygon = PolygonOutline.of(Hoops.regular(n, 150));
      assertThat(polygon.perimeterMm())
          .isCloseTo(2 * n * 150 * Math.sin(Math.PI / n), within(1e-9));
      assertThat(polygon.areaMm2())
          .isCloseTo(n * 150.0 * 150 * Math.sin(2 * Math.PI / n) / 2, within(1e-7));
      assertThat(polygon.headAxisPoint()).isEqualTo(p(0, 150));
      assertThat(polygon.halfLengthMm(Side.LEFT))
          .isCloseTo(polygon.halfLengthMm(Side.RIGHT), within(1e-9));
    }
  }

  @Test
  void manyPointsOfASuperellipseComeNearIt() {
    Superellipse hoop = Superellipse.of(330, 248, 2.1);
    List<Point> points = new ArrayList<>();
    for (Side side : Side.values()) {
      for (int i = 0; i < 1000; i++) {
        double arc = hoop.halfLengthMm(side) * (i + 0.5) / 1000;
        points.add(hoop.atArc(side, side == Side.LEFT ? arc : hoop.halfLengthMm(side) - arc));
      }
    }
    PolygonOutline polygon = PolygonOutline.of(points);
    assertThat(polygon.perimeterMm()).isCloseTo(hoop.perimeterMm(), within(0.002));
    assertThat(polygon.areaMm2()).isCloseTo(hoop.areaMm2(), within(0.5));
    for (int i = 0; i <= 70; i++) {
      double part = i / 70.0;
      for (Side side : Side.values()) {
        Point on = polygon.atArc(side, part * polygon.halfLengthMm(side));
        assertThat(on.distanceTo(hoop.atArc(side, part * hoop.halfLengthMm(side))))
            .isLessThan(0.002);
      }
    }
  }

  @Test
  void anyOrientationAndStartGiveTheSameHoop() {
    for (int turn = 0; turn < BOX.size(); turn++) {
      List<Point> points = new ArrayList<>(BOX);
      Collections.rotate(points, turn);
      for (int way = 0; way < 2; way++) {
        PolygonOutline same = PolygonOutline.of(points);
        for (Side side : Side.values()) {
          assertThat(same.halfLengthMm(side)).isEqualTo(box.halfLengthMm(side));
          assertThat(same.atArc(side, 77)).isEqualTo(box.atArc(side, 77));
        }
        assertThat(same.areaMm2()).isEqualTo(box.areaMm2());
        assertThat(same.equals(box)).isEqualTo(turn == 0 && way == 0);
        Collections.reverse(points);
      }
    }
  }

  @Test
  void pointsOnAndNextToTheAxisAreFine() {
    for (double x : new double[] {0, Double.MIN_VALUE, -1e-320, 1e-160, -1e-12, 1e-7}) {
      List<Point> points =
          List.of(
              p(x, 165),
              p(50, 150),
              p(120, 0),
              p(50, -150),
              p(-x, -165),
              p(-50, -150),
              p(-120, 0),
              p(-50, 150));
      for (int turn = 0; turn < points.size(); turn++) {
        List<Point> rotated = new ArrayList<>(points);
        Collections.rotate(rotated, turn);
        PolygonOutline outline = PolygonOutline.of(rotated);
        assertThat(outline.lengthMm()).isCloseTo(330, within(1e-5));
        assertThat(outline.halfLengthMm(Side.LEFT))
            .isCloseTo(outline.halfLengthMm(Side.RIGHT), within(1e-5));
        for (Side side : Side.values()) {
          assertThat(outline.arcOf(side, p(0, 400))).isLessThan(1e-5);
          assertThat(outline.headAtX(side, 25).orElseThrow().y()).isCloseTo(157.5, within(1e-5));
          assertThat(outline.arcOf(side, outline.atArc(side, 300))).isCloseTo(300, within(1e-9));
        }
      }
    }
  }

  @Property
  void lengthAreaAndDistanceAgreeWithAnIndependentLibrary(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @DoubleRange(min = -260, max = 260) double x,
      @ForAll @DoubleRange(min = -260, max = 260) double y) {
    List<Point> points = Hoops.star(seed);
    PolygonOutline outline = PolygonOutline.of(points);
    Polygon oracle = jts(points);
    assertThat(outline.areaMm2()).isCloseTo(oracle.getArea(), within(1e-8));
    assertThat(outline.perimeterMm()).isCloseTo(oracle.getLength(), within(1e-9));
    assertThat(outline.widthMm()).isCloseTo(oracle.getEnvelopeInternal().getWidth(), within(1e-9));
    org.locationtech.jts.geom.Point point = oracle.getFactory().createPoint(new Coordinate(x, y));
    double distance = oracle.getExteriorRing().distance(point);
    double signed = oracle.contains(point) ? -distance : distance;
    assertThat(outline.distanceTo(p(x, y))).isCloseTo(signed, within(1e-9));
  }

  @Test
  void aListWithFlawsIsACallersMistake() {
    List<Point> seven = BOX.subList(0, 7);
    assertThatThrownBy(() -> PolygonOutline.of(seven))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("The outline has 7 points and needs at least 8; measure more places.");
    assertThatThrownBy(() -> box.scaled(1e9))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("more than 10000.0 mm from the origin");
    assertThatThrownBy(() -> box.scaled(1e-9)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> box.scaled(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("factor is NaN");
    double beyond = box.halfLengthMm(Side.RIGHT) + 1;
    assertThatThrownBy(() -> box.atArc(Side.RIGHT, beyond))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("right half");
    assertThatThrownBy(() -> box.headAtX(Side.LEFT, -1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> box.throatAtX(Side.LEFT, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> box.atY(Side.LEFT, Double.POSITIVE_INFINITY))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void laterChangesOfTheListDoNotReachTheOutline() {
    List<Point> mine = new ArrayList<>(BOX);
    PolygonOutline outline = PolygonOutline.of(mine);
    mine.clear();
    assertThat(outline.points()).isEqualTo(BOX).isUnmodifiable();
    assertThat(outline).isEqualTo(box).hasSameHashCodeAs(box);
    assertThat(outline.toString()).startsWith("PolygonOutline[Point[x=-20.0, y=100.0]");
  }

  @Test
  void farPointsAreWorkedOutToo() {
    double max = Double.MAX_VALUE;
    assertThat(box.distanceTo(p(1e300, 0))).isEqualTo(1e300);
    assertThat(box.distanceTo(p(0, -1e300))).isEqualTo(1e300);
    assertThat(box.arcOf(Side.RIGHT, p(max, -max))).isBetween(0.0, box.halfLengthMm(Side.RIGHT));
  }
}
