package org.hoopwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class RunningIntegralTest {

  @Test
  void sixteenPointsAreExactToDegreeThirtyOneAndNoFurther() {
    // source: M. Abramowitz, I. A. Stegun, "Handbook of Mathematical Functions", 25.4.29: n points
    // are exact for polynomials of degree 2n - 1 (from memory)
    for (int degree = 0; degree <= 31; degree++) {
      int power = degree;
      double value = GaussLegendre.integrate(x -> StrictMath.pow(x, power), -1, 2);
      double expected =
          (StrictMath.pow(2, degree + 1) - StrictMath.pow(-1, degree + 1)) / (degree + 1);
      assertThat(value).as("degree %d", degree).isCloseTo(expected, within(4e-15 * expected));
    }
    double even = GaussLegendre.integrate(x -> StrictMath.pow(x, 32), -1, 1);
    assertThat(even).isNotCloseTo(2.0 / 33, within(1e-11));
  }

  @Test
  void aMildSingularityAtTheStartDoesNotSpoilTheTotal() {
    for (double power : new double[] {0.02, 0.1, 0.5, 1.5}) {
      RunningIntegral integral = new RunningIntegral(x -> StrictMath.pow(x, power) + 1e-3);
      double expected = 1 / (power + 1) + 1e-3;
      assertThat(integral.total()).isCloseTo(expected, within(1e-12 * expected));
    }
  }

  @Test
  void aNarrowPeakIsFound() {
    // The integral of s/(s² + (x - 1/3)²) is the difference of two arc tangents.
    double s = 1e-4;
    RunningIntegral integral =
        new RunningIntegral(x -> s / (s * s + (x - 1 / 3.0) * (x - 1 / 3.0)));
    double expected = StrictMath.atan((2 / 3.0) / s) + StrictMath.atan((1 / 3.0) / s);
    assertThat(integral.total()).isCloseTo(expected, within(1e-12 * expected));
    assertThat(integral.panels()).isBetween(10, 200);
  }

  @Property
  void theWayBackIsTheInverse(@ForAll @DoubleRange(min = 0, max = 1) double x) {
    RunningIntegral integral = new RunningIntegral(v -> StrictMath.exp(-3 * v) + v * v);
    double value = integral.upTo(x);
    assertThat(value).isCloseTo((1 - StrictMath.exp(-3 * x)) / 3 + x * x * x / 3, within(1e-15));
    assertThat(integral.inverse(value)).isCloseTo(x, within(1e-14));
  }

  @Test
  void theEndsAreExact() {
    RunningIntegral integral = new RunningIntegral(v -> 1 + v);
    assertThat(integral.upTo(0)).isZero();
    assertThat(integral.inverse(0)).isZero();
    assertThat(integral.upTo(1)).isEqualTo(integral.total());
    assertThat(integral.inverse(integral.total())).isEqualTo(1);
  }
}
