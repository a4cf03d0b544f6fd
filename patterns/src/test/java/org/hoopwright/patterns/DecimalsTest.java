package org.hoopwright.patterns;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.hoopwright.finding.HoopwrightFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalsTest {

  @ParameterizedTest
  @CsvSource({
    "0, 0.0",
    "-0.0, 0.0",
    "-0.04, 0.0",
    "0.05, 0.1", // the double is a little above five hundredths
    "0.25, 0.3",
    "-0.25, -0.3",
    "0.24999999999, 0.2",
    "244.652188839, 244.7",
    "1e7, 10000000.0",
    "-123456.75, -123456.8",
  })
  void roundsToTenthsHalvesAwayFromZero(double value, String text) {
    assertThat(Decimals.tenths(value)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "0.15, 0.15",
    "12, 12",
    "1200, 1200",
    "-0.0, 0",
    "0.0000001, 0",
    "0.1234567, 0.123457"
  })
  void writesParametersWithoutNeedlessZeros(double value, String text) {
    assertThat(Decimals.precise(value)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"2776.3, 0, 2777", "2776, 0, 2776", "1.001, 2, 1.01"})
  void roundsUpWhatMustNotComeOutShort(double value, int decimals, String text) {
    assertThat(Decimals.up(value, decimals)).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void writesNoNumberThatIsNone(double value) {
    assertThatThrownBy(() -> Decimals.tenths(value)).isInstanceOf(HoopwrightFault.class);
    assertThatThrownBy(() -> Decimals.precise(value)).isInstanceOf(HoopwrightFault.class);
  }

  @Test
  void statesStringInAllUnitsRoundedUp() {
    assertThat(Measures.string(5450)).isEqualTo("5450 mm (5.45 m, 17.9 ft)");
    assertThat(Measures.string(3048)).isEqualTo("3048 mm (3.05 m, 10.0 ft)");
    assertThat(Measures.string(3048.2)).isEqualTo("3049 mm (3.05 m, 10.1 ft)");
  }

  /** source: NIST SP 811 appendix B.8: 55 lbf = 244.652 N, 1 kgf = 9.80665 N. */
  @Test
  void statesForcesInAllUnits() {
    assertThat(Measures.force(org.hoopwright.units.Force.parse("55lbf").orElseThrow()))
        .isEqualTo("244.7 N (55.0 lbf, 24.9 kgf)");
  }
}
