package org.hoopwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class OrientationTest {

  @Test
  void leftTurnsArePositive() {
    assertThat(Orientation.sign(new Point(0, 0), new Point(1, 0), new Point(0.5, 1))).isEqualTo(1);
    assertThat(Orientation.sign(new Point(0, 0), new Point(1, 0), new Point(0.5, -1)))
        .isEqualTo(-1);
    assertThat(Orientation.sign(new Point(0, 0), new Point(1, 1), new Point(7, 7))).isZero();
  }

  /** A grid of last bits round a line, where the plain determinant is known to go wrong. */
  // source: L. Kettner et al., "Classroom examples of robustness problems in geometric
  // computations", 2008 (points (0.5 + i*ulp, 0.5 + j*ulp) against the line through (12, 12) and
  // (24, 24); from memory)
  @Test
  void lastBitsAreDecidedAsExactArithmeticDecidesThem() {
    Point a = new Point(12, 12);
    Point b = new Point(24, 24);
    int plainWrong = 0;
    for (int i = 0; i < 64; i++) {
      for (int j = 0; j < 64; j++) {
        Point c = new Point(0.5 + i * 0x1p-53, 0.5 + j * 0x1p-53);
        int exact = Orientation.exactSign(a, b, c);
        assertThat(Orientation.sign(a, b, c)).isEqualTo(exact);
        assertThat(exact).isEqualTo(Double.compare(c.y(), c.x()));
        double plain = (a.x() - c.x()) * (b.y() - c.y()) - (a.y() - c.y()) * (b.x() - c.x());
        plainWrong += Math.signum(plain) == exact ? 0 : 1;
      }
    }
    assertThat(plainWrong).as("grid points that plain doubles decide wrongly").isPositive();
  }

  @Property
  void almostCollinearPointsAgreeWithExactArithmetic(
      @ForAll @DoubleRange(min = -200, max = 200) double ax,
      @ForAll @DoubleRange(min = -200, max = 200) double ay,
      @ForAll @DoubleRange(min = -200, max = 200) double bx,
      @ForAll @DoubleRange(min = -200, max = 200) double by,
      @ForAll @DoubleRange(min = -2, max = 2) double t,
      @ForAll @IntRange(min = -3, max = 3) int ulps) {
    Point a = new Point(ax, ay);
    Point b = new Point(bx, by);
    Point on = Point.interpolate(a, b, t);
    Point c = new Point(on.x(), on.y() + ulps * Math.ulp(on.y()));
    int sign = Orientation.sign(a, b, c);
    assertThat(sign).isEqualTo(Orientation.exactSign(a, b, c));
    assertThat(Orientation.sign(b, c, a)).isEqualTo(sign);
    assertThat(Orientation.sign(b, a, c)).isEqualTo(-sign);
  }

  @Test
  void hugeAndTinyNumbersAreDecidedToo() {
    Random random = new Random(7);
    double[] sizes = {Double.MIN_VALUE, 1e-310, 1e-160, 1, 1e160, 1e308};
    for (int i = 0; i < 2000; i++) {
      Point[] p = new Point[3];
      for (int k = 0; k < 3; k++) {
        double size = sizes[random.nextInt(sizes.length)];
        p[k] =
            new Point(
                size * ((random.nextInt(5) - 2) / 2.0), size * ((random.nextInt(5) - 2) / 2.0));
      }
      assertThat(Orientation.sign(p[0], p[1], p[2]))
          .isEqualTo(Orientation.exactSign(p[0], p[1], p[2]));
    }
  }
}
