package org.hoopwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SuperellipseTest {

  private static final Superellipse HOOP = Superellipse.of(330, 248, 2.1);

  @Test
  void itsSizeIsWhatItWasMadeFrom() {
    assertThat(HOOP.lengthMm()).isEqualTo(330);
    assertThat(HOOP.widthMm()).isEqualTo(248);
    assertThat(HOOP.exponent()).isEqualTo(2.1);
    assertThat(HOOP.headAxisPoint()).isEqualTo(new Point(0, 165));
    assertThat(HOOP.throatAxisPoint()).isEqualTo(new Point(0, -165));
    assertThat(HOOP.halfLengthMm(Side.LEFT)).isEqualTo(HOOP.perimeterMm() / 2);
  }

  @Test
  void arcsBeginAtTheHeadAndEndAtTheThroatToTheBit() {
    for (Side side : Side.values()) {
      double half = HOOP.halfLengthMm(side);
      assertThat(HOOP.atArc(side, 0)).isEqualTo(HOOP.headAxisPoint());
      assertThat(HOOP.atArc(side, half)).isEqualTo(HOOP.throatAxisPoint());
      assertThat(HOOP.atArc(side, half / 2)).isEqualTo(new Point(side.sign() * 124, 0));
      assertThat(HOOP.arcOf(side, HOOP.headAxisPoint())).isZero();
      assertThat(HOOP.arcOf(side, HOOP.throatAxisPoint())).isEqualTo(half);
    }
  }

  @Test
  void arcsOffTheHalfAreACallersMistake() {
    double half = HOOP.halfLengthMm(Side.LEFT);
    for (double bad : new double[] {-1e-300, Math.nextUp(half), Double.NaN, 1e308}) {
      assertThatThrownBy(() -> HOOP.atArc(Side.LEFT, bad))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("arc length " + bad)
          .hasMessageContaining("left half")
          .hasMessageContaining("0 to " + half)
          .hasMessageContaining("pass a length within it");
    }
  }

  @Test
  void stringsAlongAndAcrossMeetTheOutline() {
    assertThat(HOOP.headAtX(Side.LEFT, 0)).contains(new Point(0, 165));
    assertThat(HOOP.throatAtX(Side.LEFT, 0)).contains(new Point(0, -165));
    assertThat(HOOP.headAtX(Side.LEFT, 124)).contains(new Point(-124, 0));
    assertThat(HOOP.headAtX(Side.LEFT, 124.0001)).isEmpty();
    assertThat(HOOP.atY(Side.RIGHT, 0)).contains(new Point(124, 0));
    assertThat(HOOP.atY(Side.RIGHT, -165)).contains(new Point(0, -165));
    assertThat(HOOP.atY(Side.RIGHT, 165.0001)).isEmpty();
    Superellipse circle = Superellipse.of(10, 10, 2);
    assertThat(circle.headAtX(Side.LEFT, 3)).contains(new Point(-3, 4));
    assertThat(circle.throatAtX(Side.RIGHT, 3)).contains(new Point(3, -4));
    assertThat(circle.atY(Side.LEFT, -4).orElseThrow().distanceTo(new Point(-3, -4)))
        .isLessThan(1e-14);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void distancesFromTheAxisAreNotNegative(double bad) {
    assertThatThrownBy(() -> HOOP.headAtX(Side.LEFT, bad))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("x is " + bad)
        .hasMessageContaining("say the side");
    assertThatThrownBy(() -> HOOP.throatAtX(Side.LEFT, bad))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void heightsAndFactorsAreFinite() {
    assertThatThrownBy(() -> HOOP.atY(Side.LEFT, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("y is NaN");
    for (double bad : new double[] {0, -2, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> HOOP.scaled(bad))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("factor is " + bad);
    }
    assertThatThrownBy(() -> HOOP.scaled(1e6))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("inside length");
  }

  @ParameterizedTest
  @CsvSource({
    "330, 248, 0.49, EXPONENT",
    "330, 248, 20.5, EXPONENT",
    "330, 248, NaN, EXPONENT",
    "0, 248, 2, SIZE",
    "-330, 248, 2, SIZE",
    "330, NaN, 2, SIZE",
    "330, Infinity, 2, SIZE",
    "10000.01, 248, 2, SIZE",
    "330, 0.0009, 2, SIZE",
  })
  void numbersOutOfRangeAreFlaws(double length, double width, double n, Flaw.Kind kind) {
    List<Flaw> flaws = Superellipse.flaws(length, width, n);
    assertThat(flaws).extracting(Flaw::kind).containsExactly(kind);
    assertThat(flaws).extracting(Flaw::index).containsExactly(-1);
    assertThatThrownBy(() -> Superellipse.of(length, width, n))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(flaws.get(0).message());
  }

  @Test
  void allFlawsAreCollected() {
    assertThat(Superellipse.flaws(Double.NaN, -1, 99))
        .extracting(Flaw::kind)
        .containsExactly(Flaw.Kind.SIZE, Flaw.Kind.SIZE, Flaw.Kind.EXPONENT);
    assertThatThrownBy(() -> Superellipse.of(Double.NaN, -1, 99))
        .hasMessageContaining("length NaN mm")
        .hasMessageContaining("(and 2 more)");
    assertThat(Superellipse.flaws(0.001, 10_000, 20)).isEmpty();
  }

  @Test
  void farPointsAreWorkedOutToo() {
    assertThat(HOOP.distanceTo(new Point(0, 0))).isCloseTo(-124, within(1e-9));
    assertThat(HOOP.distanceTo(new Point(1e300, 0))).isEqualTo(1e300);
    assertThat(HOOP.distanceTo(new Point(0, -1e6))).isCloseTo(1e6 - 165, within(1e-6));
    assertThat(HOOP.arcOf(Side.LEFT, new Point(-1e300, 0)))
        .isCloseTo(HOOP.halfLengthMm(Side.LEFT) / 2, within(1e-6));
    double max = Double.MAX_VALUE;
    assertThat(HOOP.arcOf(Side.LEFT, new Point(max, -max)))
        .isBetween(0.0, HOOP.halfLengthMm(Side.LEFT));
  }

  @Test
  void theHalfAcrossTheAxisHasItsNearestPlaceToo() {
    // From a point just across the axis near the head, the head is nearest.
    assertThat(HOOP.arcOf(Side.LEFT, new Point(1, 164))).isZero();
    // From the middle of a long hoop the flank is nearer than the head, also across the axis.
    assertThat(HOOP.arcOf(Side.LEFT, new Point(1, 0)))
        .isCloseTo(HOOP.halfLengthMm(Side.LEFT) / 2, within(1e-6));
  }

  /** Points whose distance along the outline falls only for a short stretch. */
  @ParameterizedTest
  @CsvSource({
    // for exponents under 2 the curve bends sharply at the axis, and the head is a trap
    "1.8260977831180458, 198.48595223156923, 347.2798211987197, 0, 0",
    "1.8260977831180458, 198.48595223156923, 347.2798211987197, 0, -0.35",
    // near the shoulders of fuller hoops there are falls that lead nowhere
    "17.896611235732035, 323.2455962690686, 213.46414726231194, 69.90672745454373, 141.4401996188",
    "10.039875032714242, 313.1584842580863, 172.06746372224296, 51.055534225723804, 23.17853081530",
    "10.957763014176823, 335.8304404664797, 275.0509697003864, 33.03525309676315, 124.65320361955",
    "9.257892509989196, 185.0774999483695, 289.78207945551264, 114.70692468120518, 47.23514639630",
    "2.5783868205133866, 101.66586918727005, 370.6360221055905, 52.105240437529424, 0.163777247911",
    "3.421197885851653, 321.26732235382906, 106.21595373697518, 8.17724213323091, 111.927643441184",
  })
  void shortFallsOfTheDistanceAreNotMissed(
      double n, double length, double width, double x, double y) {
    Superellipse hoop = Superellipse.of(length, width, n);
    Point point = new Point(x, y);
    double half = hoop.halfLengthMm(Side.RIGHT);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= 5_000; i++) {
      Point on = hoop.atArc(Side.RIGHT, half * (i / 5_000.0));
      least = Math.min(least, on.distanceTo(point));
    }
    double found = hoop.atArc(Side.RIGHT, hoop.arcOf(Side.RIGHT, point)).distanceTo(point);
    assertThat(found).isBetween(least - 1e-3, least + 1e-11);
    assertThat(hoop.distanceTo(point)).isCloseTo(-found, within(1e-10));
  }

  @Test
  void theExtremesOfSizeAndExponentHold() {
    for (double n : new double[] {0.5, 0.99, 1, 1.01, 2, 20}) {
      for (double[] size : new double[][] {{0.001, 10_000}, {10_000, 0.001}, {0.001, 0.001}}) {
        Superellipse thin = Superellipse.of(size[0], size[1], n);
        double half = thin.halfLengthMm(Side.LEFT);
        assertThat(half).isBetween(Math.hypot(size[0], size[1]) * 0.999999, size[0] + size[1]);
        for (int i = 0; i <= 20; i++) {
          double arc = half * i / 20;
          assertThat(thin.arcOf(Side.LEFT, thin.atArc(Side.LEFT, arc)))
              .isCloseTo(arc, within(1e-9 * half));
        }
      }
    }
  }

  @Test
  void equalityIsByItsThreeNumbers() {
    Superellipse same = Superellipse.of(330, 248, 2.1);
    assertThat(same).isEqualTo(HOOP).hasSameHashCodeAs(HOOP);
    assertThat(HOOP)
        .isNotEqualTo(Superellipse.of(331, 248, 2.1))
        .isNotEqualTo(Superellipse.of(330, 249, 2.1))
        .isNotEqualTo(Superellipse.of(330, 248, 2.2))
        .isNotEqualTo(new Object())
        .hasToString("Superellipse[length=330.0 mm, width=248.0 mm, exponent=2.1]");
    assertThat(HOOP.mirrored()).isEqualTo(HOOP);
    assertThat(HOOP.scaled(2)).isEqualTo(Superellipse.of(660, 496, 2.1));
  }

  /** The same bits on every runtime: a digest of points, compared with the committed one. */
  @Test
  void pointsAreTheSameBitsEverywhere() {
    long digest = 17;
    for (double n : new double[] {0.7, 1.3, 2, 2.1, 5}) {
      Superellipse hoop = Superellipse.of(330, 248, n);
      for (int i = 0; i < 35; i++) {
        Point p = hoop.atArc(Side.LEFT, hoop.halfLengthMm(Side.LEFT) * (i + 0.5) / 35);
        digest = digest * 31 + Double.doubleToLongBits(p.x());
        digest = digest * 31 + Double.doubleToLongBits(p.y());
        digest = digest * 31 + Double.doubleToLongBits(hoop.arcOf(Side.LEFT, p));
      }
    }
    assertThat(Long.toHexString(digest)).isEqualTo("6a3fbd981fb8308f");
  }
}
