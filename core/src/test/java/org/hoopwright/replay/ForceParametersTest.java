package org.hoopwright.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import org.hoopwright.material.Material;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ForceParametersTest {

  // source: Engineering mechanics 1, exercise 27 "Rope friction" (worked exercise): 100 kg lowered
  // over three quarters of a turn with friction 0.2 is held by 382.26 N (g = 9.81 m/s²).
  @Test
  void workedExercise() {
    assertThat(100 * 9.81 * ForceParameters.kept(0.2, Math.toRadians(270)))
        .isCloseTo(382.26, within(0.005));
  }

  // source: Capstan equation, encyclopedia article (table of force gain): five turns at 0.6.
  @Test
  void fiveTurns() {
    assertThat(1 / ForceParameters.kept(0.6, 10 * Math.PI)).isCloseTo(153_552_935.0, within(0.5));
  }

  // source: knot-tyers forum thread "Measurement of the coefficient of friction for the capstan
  // equation", 2021: over one and a half turns a pull ratio of 14 gives 0.280012679, 19 gives
  // 0.312414679.
  @ParameterizedTest
  @CsvSource({"14, 0.280012679", "19, 0.312414679"})
  void measuredCord(double ratio, double friction) {
    assertThat(1 / ForceParameters.kept(friction, 3 * Math.PI)).isCloseTo(ratio, within(1e-6));
  }

  // The whole table of tight side over slack side, against e^(friction × angle) as a power series
  // in
  // decimal arithmetic; angles of bends and turns, frictions as published for string (0.04 to
  // 0.50).
  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.10, 0.15, 0.20, 0.25, 0.30, 0.40, 0.50})
  void tableOfRatios(double friction) {
    for (int degrees : new int[] {30, 45, 60, 90, 120, 135, 150, 180, 270, 360, 540}) {
      BigDecimal wrap =
          PI.multiply(BigDecimal.valueOf(degrees)).divide(BigDecimal.valueOf(180), EXACT);
      double ratio = exp(wrap.multiply(BigDecimal.valueOf(friction))).doubleValue();
      assertThat(1 / ForceParameters.kept(friction, Math.toRadians(degrees)))
          .as("%s at %s", friction, degrees)
          .isCloseTo(ratio, within(1e-12 * ratio));
    }
  }

  private static final MathContext EXACT = new MathContext(40);

  // To 40 digits, from any table.
  private static final BigDecimal PI = new BigDecimal("3.141592653589793238462643383279502884197");

  private static BigDecimal exp(BigDecimal x) {
    BigDecimal sum = BigDecimal.ONE;
    BigDecimal term = BigDecimal.ONE;
    for (int n = 1; n < 80; n++) {
      term = term.multiply(x).divide(BigDecimal.valueOf(n), EXACT);
      sum = sum.add(term);
    }
    return sum;
  }

  // The same table to four digits, worked out apart from this program.
  @ParameterizedTest
  @CsvSource({
    "0.05, 30, 1.0265",
    "0.10, 180, 1.3691",
    "0.15, 180, 1.6020",
    "0.20, 270, 2.5663",
    "0.25, 135, 1.8023",
    "0.30, 360, 6.5861",
    "0.50, 360, 23.1407"
  })
  void spotsOfTheTable(double friction, double degrees, double ratio) {
    assertThat(1 / ForceParameters.kept(friction, Math.toRadians(degrees)))
        .isCloseTo(ratio, within(0.00006));
  }

  // source: stringer blog "Difficulties of Hybriding Strings", 2014/11: extra stretch from 55 to 65
  // lbf, from which the stiffness follows.
  @ParameterizedTest
  @CsvSource({
    "NATURAL_GUT, 6355, 11121",
    "NYLON, 4044, 5560",
    "MULTIFILAMENT, 3707, 8896",
    "POLYESTER, 14827, 44482"
  })
  void stiffnessFromStretch(Material material, double low, double high) {
    Interval is = ForceParameters.stiffness(material);
    assertThat(is.low()).isCloseTo(low, within(0.6));
    assertThat(is.high()).isCloseTo(high, within(0.6));
  }

  @ParameterizedTest
  @EnumSource(Material.class)
  void stiffnessIsNotBelowThatOfTheFirstPull(Material material) {
    // A string stiffens as it is pulled.
    assertThat(ForceParameters.stiffness(material).low())
        .isGreaterThanOrEqualTo(Material.STRETCH_AT_NEWTONS / material.maxStretch());
  }

  @Test
  void rangesAreChecked() {
    Interval fine = Interval.of(0.2);
    Interval stiff = Interval.of(4000);
    assertThatThrownBy(
            () -> of(new Interval(-0.1, 0.2), fine, fine, fine, fine, fine, fine, stiff, stiff))
        .hasMessage("The friction (-0.1 to 0.2) must be from 0.0 to 1.0.");
    assertThatThrownBy(
            () -> of(fine, new Interval(1, 2.5), fine, fine, fine, fine, fine, stiff, stiff))
        .hasMessageContaining("wrap factor");
    assertThatThrownBy(
            () -> of(fine, fine, new Interval(1, 1.5), fine, fine, fine, fine, stiff, stiff))
        .hasMessageContaining("friction of the weave");
    assertThatThrownBy(
            () -> of(fine, fine, fine, new Interval(1, 1.5), fine, fine, fine, stiff, stiff))
        .hasMessageContaining("tensioner share");
    assertThatThrownBy(
            () -> of(fine, fine, fine, fine, new Interval(0, 11), fine, fine, stiff, stiff))
        .hasMessageContaining("drawback");
    assertThatThrownBy(() -> of(fine, fine, fine, fine, fine, Interval.of(1.5), fine, stiff, stiff))
        .hasMessageContaining("knot share");
    assertThatThrownBy(() -> of(fine, fine, fine, fine, fine, fine, Interval.of(2), stiff, stiff))
        .hasMessageContaining("back-up share");
    assertThatThrownBy(() -> of(fine, fine, fine, fine, fine, fine, fine, fine, stiff))
        .hasMessageContaining("stiffness of the mains");
    assertThatThrownBy(() -> of(fine, fine, fine, fine, fine, fine, fine, stiff, Interval.of(2e6)))
        .hasMessageContaining("stiffness of the crosses");
  }

  private static ForceParameters of(Interval... i) {
    return new ForceParameters(i[0], i[1], i[2], i[3], i[4], i[5], i[6], i[7], i[8]);
  }

  @Test
  void cornersOfRangesWithoutWidthAreOne() {
    Interval one = Interval.of(0.5);
    Interval stiff = Interval.of(5000);
    assertThat(of(one, one, one, one, one, one, one, stiff, stiff).corners(true)).hasSize(1);
  }
}
