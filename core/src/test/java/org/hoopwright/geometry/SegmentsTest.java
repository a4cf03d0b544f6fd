package org.hoopwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;

class SegmentsTest {

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  @Test
  void aMainAndACrossMeet() {
    Point hit =
        Segments.intersection(p(-5, 160), p(-5, -160), p(-100, 40), p(100, 44)).orElseThrow();
    assertThat(hit.x()).isEqualTo(-5);
    assertThat(hit.y()).isCloseTo(41.9, within(1e-12));
  }

  @Test
  void segmentsThatStopShortDoNotMeet() {
    assertThat(Segments.intersection(p(0, 0), p(1, 1), p(3, 0), p(2, 1))).isEmpty();
    assertThat(Segments.intersection(p(0, 0), p(10, 10), p(0, 1), p(10, 11))).isEmpty();
  }

  @Test
  void touchingGivesTheTouchingEndToTheBit() {
    Point end = p(0.1 + 0.2, 0.3);
    assertThat(Segments.intersection(p(0, 0), end, end, p(5, 7))).contains(end);
    assertThat(Segments.intersection(p(0, 0), p(4, 0), p(1, 0), p(1, 9))).contains(p(1, 0));
    assertThat(Segments.intersection(p(1, 9), p(1, 0), p(0, 0), p(4, 0))).contains(p(1, 0));
  }

  @Test
  void overlapGivesThePointNearestToTheFirstEnd() {
    assertThat(Segments.intersection(p(0, 0), p(9, 0), p(7, 0), p(2, 0))).contains(p(2, 0));
    assertThat(Segments.intersection(p(9, 0), p(0, 0), p(7, 0), p(2, 0))).contains(p(7, 0));
    assertThat(Segments.intersection(p(3, 3), p(4, 4), p(0, 0), p(9, 9))).contains(p(3, 3));
    assertThat(Segments.intersection(p(0, 0), p(4, 4), p(3, 3), p(9, 9))).contains(p(3, 3));
    assertThat(Segments.intersection(p(0, 0), p(1, 1), p(2, 2), p(9, 9))).isEmpty();
  }

  @Test
  void aSegmentOfNoLengthCountsAsItsPoint() {
    assertThat(Segments.intersection(p(1, 1), p(1, 1), p(0, 0), p(2, 2))).contains(p(1, 1));
    assertThat(Segments.intersection(p(0, 0), p(2, 2), p(1, 1), p(1, 1))).contains(p(1, 1));
    assertThat(Segments.intersection(p(1, 1), p(1, 1), p(1, 1), p(1, 1))).contains(p(1, 1));
    assertThat(Segments.intersection(p(1, 1), p(1, 1), p(0, 0), p(2, 1.5))).isEmpty();
    assertThat(Segments.intersection(p(1, 1), p(1, 1), p(2, 2), p(2, 2))).isEmpty();
  }

  @Test
  void theParameterCountsFromTheFirstPoint() {
    assertThat(Segments.lineParameter(p(0, 0), p(10, 0), p(2.5, 1), p(2.5, 2))).isEqualTo(0.25);
    assertThat(Segments.lineParameter(p(0, 0), p(10, 0), p(-5, 1), p(-5, 2))).isEqualTo(-0.5);
    assertThat(Segments.lineParameter(p(0, 0), p(10, 0), p(20, 1), p(20, 2))).isEqualTo(2);
    assertThat(Segments.lineParameter(p(0, 0), p(10, 0), p(0, 1), p(0, 2))).isEqualTo(0);
  }

  @Test
  void parallelLinesHaveNoParameter() {
    assertThat(Segments.lineParameter(p(0, 0), p(3, 1), p(0, 1), p(6, 3))).isNaN();
    assertThat(Segments.lineParameter(p(0, 0), p(3, 1), p(6, 2), p(9, 3))).isNaN();
    assertThat(Segments.lineParameter(p(1, 1), p(1, 1), p(0, 0), p(9, 3))).isNaN();
    assertThat(Segments.lineParameter(p(0, 0), p(9, 3), p(1, 1), p(1, 1))).isNaN();
  }

  @Test
  void almostParallelLinesKeepTheirDigits() {
    // y = 0 and y = (x - 300) * 1e-15 over hundreds of millimetres: they meet at x = 300.
    double slope = 0x1p-50;
    assertThat(
            Segments.lineParameter(p(0, 0), p(400, 0), p(-212, -512 * slope), p(812, 512 * slope)))
        .isEqualTo(0.75);
  }

  @Test
  void hugeAndTinyCoordinatesStillMeet() {
    for (double s : new double[] {1e-320, 1e-200, 1e-12, 1e200, 8e307}) {
      Optional<Point> hit = Segments.intersection(p(-s, -s), p(s, s), p(-s, s), p(s, -s));
      assertThat(hit).as("size %s", s).contains(p(0, 0));
    }
  }

  @Property
  void agreesWithAnIndependentIntersectorOnRandomSegments(
      @ForAll @Size(8) List<@DoubleRange(min = -200, max = 200) Double> c) {
    compare(
        p(c.get(0), c.get(1)), p(c.get(2), c.get(3)), p(c.get(4), c.get(5)), p(c.get(6), c.get(7)));
  }

  /** On a small grid touching, overlap and collinear gaps are common. */
  @Property(tries = 2000)
  void agreesWithAnIndependentIntersectorOnAGrid(
      @ForAll @Size(8) List<@IntRange(min = 0, max = 4) Integer> c) {
    compare(
        p(c.get(0), c.get(1)), p(c.get(2), c.get(3)), p(c.get(4), c.get(5)), p(c.get(6), c.get(7)));
  }

  private static void compare(Point a, Point b, Point c, Point d) {
    RobustLineIntersector oracle = new RobustLineIntersector();
    oracle.computeIntersection(jts(a), jts(b), jts(c), jts(d));
    Optional<Point> hit = Segments.intersection(a, b, c, d);
    assertThat(hit.isPresent()).isEqualTo(oracle.hasIntersection());
    assertThat(Segments.intersection(c, d, a, b).isPresent()).isEqualTo(hit.isPresent());
    assertThat(Segments.intersection(b, a, c, d).isPresent()).isEqualTo(hit.isPresent());
    if (hit.isPresent() && oracle.getIntersectionNum() == 1) {
      Coordinate expected = oracle.getIntersection(0);
      assertThat(hit.get().x()).isCloseTo(expected.x, within(1e-9));
      assertThat(hit.get().y()).isCloseTo(expected.y, within(1e-9));
    }
  }

  private static Coordinate jts(Point p) {
    return new Coordinate(p.x(), p.y());
  }
}
