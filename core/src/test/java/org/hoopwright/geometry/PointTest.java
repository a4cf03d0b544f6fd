package org.hoopwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PointTest {

  @Test
  void negativeZeroIsStoredAsZero() {
    Point p = new Point(-0.0, -0.0);
    assertThat(p).isEqualTo(new Point(0, 0)).hasToString("Point[x=0.0, y=0.0]");
    assertThat(Double.doubleToRawLongBits(p.x())).isZero();
    assertThat(new Point(0, 3).mirrored()).isEqualTo(new Point(0, 3));
  }

  @Test
  void smallestNumbersAreKept() {
    Point p = new Point(-Double.MIN_VALUE, Double.MAX_VALUE);
    assertThat(p.x()).isEqualTo(-Double.MIN_VALUE);
    assertThat(p.y()).isEqualTo(Double.MAX_VALUE);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void coordinatesThatAreNotFiniteAreACallersMistake(double bad) {
    assertThatThrownBy(() -> new Point(bad, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("x is " + bad)
        .hasMessageContaining("finite")
        .hasMessageContaining("pass millimetres");
    assertThatThrownBy(() -> new Point(0, bad))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("y is " + bad);
    assertThatThrownBy(() -> Point.interpolate(new Point(0, 0), new Point(1, 1), bad))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("t is " + bad);
  }

  @Test
  void distanceIsPythagoras() {
    assertThat(new Point(-1, 2).distanceTo(new Point(2, -2))).isEqualTo(5);
    assertThat(new Point(1e-300, 0).distanceTo(new Point(0, 0))).isEqualTo(1e-300);
    assertThat(new Point(3e200, 0).distanceTo(new Point(0, 4e200))).isCloseTo(5e200, within(1e186));
  }

  @Test
  void mirroringIsInTheLongAxis() {
    assertThat(new Point(5.1, 164.9).mirrored()).isEqualTo(new Point(-5.1, 164.9));
  }

  @Test
  void interpolationWorksBeyondTheEndsAndNearTheLargestNumbers() {
    Point a = new Point(1, 10);
    Point b = new Point(3, 20);
    assertThat(Point.interpolate(a, b, 0.5)).isEqualTo(new Point(2, 15));
    assertThat(Point.interpolate(a, b, -1)).isEqualTo(new Point(-1, 0));
    assertThat(Point.interpolate(a, b, 2)).isEqualTo(new Point(5, 30));
    Point far = new Point(Double.MAX_VALUE, 0);
    assertThat(Point.interpolate(far, far.mirrored(), 0.5)).isEqualTo(new Point(0, 0));
    assertThat(Point.interpolate(far, far.mirrored(), 0)).isEqualTo(far);
    assertThatThrownBy(() -> Point.interpolate(a, far, 2))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Property
  void interpolationGivesItsEndsToTheBitAndStaysBetween(
      @ForAll @DoubleRange(min = -1e4, max = 1e4) double x,
      @ForAll @DoubleRange(min = -1e4, max = 1e4) double y,
      @ForAll @DoubleRange(min = 0, max = 1) double t) {
    Point a = new Point(x, y);
    Point b = new Point(y, x);
    assertThat(Point.interpolate(a, b, 0)).isEqualTo(a);
    assertThat(Point.interpolate(a, b, 1)).isEqualTo(b);
    assertThat(Point.interpolate(a, a, t)).isEqualTo(a);
    double between = Point.interpolate(a, b, t).x();
    assertThat(between).isBetween(Math.min(x, y), Math.max(x, y));
  }
}
