package org.hoopwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

class PolygonFlawsTest {

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

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

  private static List<Point> boxWith(int index, Point point) {
    List<Point> points = new ArrayList<>(BOX);
    points.add(index, point);
    return points;
  }

  private static List<Flaw.Kind> kinds(List<Point> points) {
    return PolygonOutline.flaws(points).stream().map(Flaw::kind).toList();
  }

  @Test
  void aGoodListHasNone() {
    assertThat(PolygonOutline.flaws(BOX)).isEmpty();
  }

  @Test
  void anyListMayBeAskedAbout() {
    assertThat(kinds(List.of())).containsExactly(Flaw.Kind.TOO_FEW_POINTS);
    assertThat(kinds(List.of(p(0, 0)))).containsExactly(Flaw.Kind.TOO_FEW_POINTS);
    assertThat(kinds(List.of(p(0, 0), p(0, 0))))
        .containsExactly(Flaw.Kind.TOO_FEW_POINTS, Flaw.Kind.REPEATED_POINT);
    assertThat(kinds(Collections.nCopies(2001, p(0, 0))))
        .containsExactly(Flaw.Kind.TOO_MANY_POINTS);
    assertThat(kinds(Collections.nCopies(2000, p(0, 0))))
        .hasSize(1999)
        .containsOnly(Flaw.Kind.REPEATED_POINT);
    assertThatThrownBy(() -> PolygonOutline.flaws(Arrays.asList(p(0, 0), null)))
        .isInstanceOf(NullPointerException.class);
  }

  @Test
  void repeatedNeighboursAreNamed() {
    List<Flaw> flaws = PolygonOutline.flaws(boxWith(3, p(60, 70)));
    assertThat(flaws)
        .containsExactly(
            new Flaw(
                Flaw.Kind.REPEATED_POINT,
                3,
                "The outline's point 3 (60.0, 70.0) repeats the point before it;"
                    + " leave one of them out."));
    assertThat(kinds(boxWith(3, p(60, 70 - 1e-12)))).containsExactly(Flaw.Kind.REPEATED_POINT);
    assertThat(kinds(boxWith(3, p(60, 70 - 1e-5)))).isEmpty();
  }

  @Test
  void theFirstPointIsNotGivenAgainAtTheEnd() {
    List<Flaw> flaws = PolygonOutline.flaws(boxWith(8, BOX.get(0)));
    assertThat(flaws).hasSize(1);
    assertThat(flaws.get(0).index()).isEqualTo(8);
    assertThat(flaws.get(0).message()).contains("closes by itself, so leave it out");
  }

  @Test
  void crossingEdgesAreNamedOnce() {
    List<Point> swapped = new ArrayList<>(BOX);
    Collections.swap(swapped, 2, 3);
    List<Flaw> flaws = PolygonOutline.flaws(swapped);
    assertThat(flaws).hasSize(1);
    assertThat(flaws.get(0).kind()).isEqualTo(Flaw.Kind.SELF_CROSSING);
    assertThat(flaws.get(0).index()).isEqualTo(1);
    assertThat(flaws.get(0).message())
        .contains("edge from point 1 (30.0, 100.0)")
        .contains("edge from point 3 (60.0, 70.0)");
  }

  @Test
  void touchingAndFoldingBackCountAsCrossing() {
    // A spike out and back along itself.
    List<Point> spike = new ArrayList<>(BOX);
    spike.addAll(3, List.of(p(60, 0), p(90, 0), p(60, 0)));
    assertThat(kinds(spike)).contains(Flaw.Kind.SELF_CROSSING);
    // The right flank bends over to touch the left one at a corner.
    assertThat(kinds(boxWith(3, p(-40, 80)))).contains(Flaw.Kind.SELF_CROSSING);
    // A fold at the seam of the list.
    assertThat(kinds(boxWith(8, p(-40, 100)))).isEmpty();
    assertThat(kinds(boxWith(8, p(30, 100)))).contains(Flaw.Kind.SELF_CROSSING);
  }

  @Test
  void theAxisIsCrossedTwiceAndNotTouched() {
    List<Flaw> oneSide = PolygonOutline.flaws(BOX.stream().map(q -> p(q.x() + 50, q.y())).toList());
    assertThat(oneSide).hasSize(1);
    assertThat(oneSide.get(0).kind()).isEqualTo(Flaw.Kind.AXIS_CROSSINGS);
    assertThat(oneSide.get(0).message()).contains("0 times").contains("twice");

    List<Point> fourTimes = boxWith(3, p(-10, 0));
    assertThat(kinds(fourTimes)).containsExactly(Flaw.Kind.AXIS_CROSSINGS);
    assertThat(PolygonOutline.flaws(fourTimes).get(0).index()).isEqualTo(3);

    List<Flaw> touched = PolygonOutline.flaws(boxWith(3, p(0, 0)));
    assertThat(touched).hasSize(1);
    assertThat(touched.get(0).kind()).isEqualTo(Flaw.Kind.AXIS_TOUCHED);
    assertThat(touched.get(0).index()).isEqualTo(3);

    List<Point> along = new ArrayList<>(BOX);
    along.addAll(1, List.of(p(0, 100), p(0, 110)));
    assertThat(kinds(along)).contains(Flaw.Kind.AXIS_TOUCHED);
  }

  @Test
  void numbersThatAreNoHoopAreTold() {
    List<Point> metres = BOX.stream().map(q -> p(q.x() * 1000, q.y() * 1000)).toList();
    assertThat(kinds(metres)).hasSize(8).containsOnly(Flaw.Kind.TOO_FAR_OUT);
    double max = Double.MAX_VALUE;
    List<Point> huge = BOX.stream().map(q -> p(q.x() / 110 * max, q.y() / 110 * max)).toList();
    assertThat(kinds(huge)).contains(Flaw.Kind.TOO_FAR_OUT);
  }

  @Test
  void allFlawsAreCollectedInTheOrderOfTheList() {
    List<Point> bad =
        List.of(p(20_000, 5), p(20_000, 5), p(10, 0), p(0, 5), p(10, 10), p(10, 5), p(-3, -9));
    List<Flaw> flaws = PolygonOutline.flaws(bad);
    assertThat(flaws)
        .extracting(Flaw::kind)
        .contains(
            Flaw.Kind.TOO_FEW_POINTS,
            Flaw.Kind.TOO_FAR_OUT,
            Flaw.Kind.REPEATED_POINT,
            Flaw.Kind.AXIS_TOUCHED);
    assertThat(flaws).extracting(Flaw::index).isSorted();
    assertThat(flaws).allSatisfy(f -> assertThat(f.message()).endsWith("."));
  }

  @Property
  void starsHaveNone(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    assertThat(PolygonOutline.flaws(Hoops.star(seed))).isEmpty();
  }

  @Property
  void selfCrossingAgreesWithAnIndependentLibrary(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @IntRange(min = 0, max = 2) int swaps) {
    List<Point> points = new ArrayList<>(Hoops.star(seed));
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < swaps; i++) {
      Collections.swap(points, random.nextInt(points.size()), random.nextInt(points.size()));
    }
    assertThat(kinds(points).contains(Flaw.Kind.SELF_CROSSING)).isEqualTo(!isSimple(points));
  }

  /** On a small grid touching corners, overlaps and folds are common. */
  @Property(tries = 3000)
  void degenerateSelfCrossingAgreesToo(@ForAll @LongRange(min = 0, max = 1L << 40) long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Point> points = new ArrayList<>();
    int count = random.nextInt(4, 7);
    while (points.size() < count) {
      Point next = p(random.nextInt(5) + 0.5, random.nextInt(5));
      if (points.isEmpty() || !points.get(points.size() - 1).equals(next)) {
        points.add(next);
      }
    }
    if (points.get(0).equals(points.get(count - 1))) {
      points.remove(count - 1);
    }
    assertThat(kinds(points).contains(Flaw.Kind.SELF_CROSSING)).isEqualTo(!isSimple(points));
  }

  private static boolean isSimple(List<Point> points) {
    Coordinate[] ring = new Coordinate[points.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Point q = points.get(i % points.size());
      ring[i] = new Coordinate(q.x(), q.y());
    }
    return new GeometryFactory().createLinearRing(ring).isSimple();
  }

  /** Lists made to be slow: all edges overlap, all boxes overlap, all turns are nearly straight. */
  @Test
  void hostileListsCostLittleTime() {
    List<Point> backAndForth =
        IntStream.range(0, 2000).mapToObj(i -> p(i % 2 * 0.3 + 0.1, i % 2 * 0.3 + 0.1)).toList();
    SplittableRandom random = new SplittableRandom(1);
    List<Point> scribble =
        IntStream.range(0, 2000)
            .mapToObj(i -> p(random.nextDouble(-100, 100), random.nextDouble(-100, 100)))
            .toList();
    // Combs of long slanting teeth that are almost on one line.
    List<Point> comb = comb(1e-12);
    List<Point> finerComb = comb(3e-14);
    assertTimeout(
        Duration.ofSeconds(20),
        () -> {
          assertThat(kinds(backAndForth)).contains(Flaw.Kind.SELF_CROSSING);
          assertThat(kinds(scribble)).contains(Flaw.Kind.SELF_CROSSING);
          assertThat(kinds(comb)).contains(Flaw.Kind.AXIS_CROSSINGS);
          assertThat(kinds(finerComb)).contains(Flaw.Kind.AXIS_CROSSINGS);
        });
  }

  private static List<Point> comb(double step) {
    return IntStream.range(0, 2000)
        .mapToObj(i -> p(i % 2 * 100.1 - 50 + i * step, i % 2 * 70.3 - 35 - i * step))
        .toList();
  }
}
