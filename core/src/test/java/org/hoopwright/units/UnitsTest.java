package org.hoopwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

class UnitsTest {

  // source: NIST SP 811, appendix B.8: all exact.
  @Test
  void factorsAreExact() {
    assertThat(ForceUnit.NEWTON.newtons()).isEqualTo(1.0);
    BigDecimal standardGravity = new BigDecimal("9.80665");
    assertThat(new BigDecimal("0.45359237").multiply(standardGravity))
        .isEqualByComparingTo("4.4482216152605");
    assertThat(ForceUnit.POUND_FORCE.newtons()).isEqualTo(4.4482216152605);
    assertThat(ForceUnit.KILOGRAM_FORCE.newtons()).isEqualTo(9.80665);
    assertThat(LengthUnit.INCH.millimetres()).isEqualTo(25.4);
    assertThat(LengthUnit.MILLIMETRE.millimetres()).isEqualTo(1.0);
  }

  // The other way round: a library of units that knows only metre, newton, and what is told here of
  // inch and pound.
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 1, 13, 27, 737})
  void lengthsAgreeWithALibrary(double inches) {
    Unit<Length> inch = MetricPrefix.CENTI(Units.METRE).multiply(new BigDecimal("2.54"));
    double mm =
        Quantities.getQuantity(inches, inch)
            .to(MetricPrefix.MILLI(Units.METRE))
            .getValue()
            .doubleValue();
    assertThat(LengthUnit.INCH.toMm(inches)).isCloseTo(mm, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 23.5, 55, 62})
  void forcesAgreeWithALibrary(double value) {
    var pound = Units.KILOGRAM.multiply(new BigDecimal("0.45359237"));
    var gravity = Units.METRE_PER_SQUARE_SECOND.multiply(new BigDecimal("9.80665"));
    var poundForce = pound.multiply(gravity).asType(javax.measure.quantity.Force.class);
    double newtons =
        Quantities.getQuantity(value, poundForce).to(Units.NEWTON).getValue().doubleValue();
    assertThat(Force.of(value, ForceUnit.POUND_FORCE).newtons()).isCloseTo(newtons, within(1e-9));
    var kilogramForce = Units.KILOGRAM.multiply(gravity).asType(javax.measure.quantity.Force.class);
    double ofKilograms =
        Quantities.getQuantity(value, kilogramForce).to(Units.NEWTON).getValue().doubleValue();
    assertThat(Force.of(value, ForceUnit.KILOGRAM_FORCE).newtons())
        .isCloseTo(ofKilograms, within(1e-9));
  }

  // source: the exact factors, worked out by hand to three decimals.
  @ParameterizedTest
  @CsvSource({
    "55, lbf, 244.652",
    "24.948, kgf, 244.656",
    "28, kgf, 274.586",
    "61.729, lbf, 274.584"
  })
  void workedExamples(double value, String symbol, double newtons) {
    ForceUnit unit = ForceUnit.ofSymbol(symbol).orElseThrow();
    assertThat(Force.of(value, unit).newtons()).isCloseTo(newtons, within(0.0006));
  }

  @Property(tries = 200)
  void thereAndBack(@ForAll @DoubleRange(min = 0, max = 1000) double value) {
    for (ForceUnit unit : ForceUnit.values()) {
      assertThat(Force.of(value, unit).in(unit)).isCloseTo(value, within(1e-9));
    }
  }

  @ParameterizedTest
  @EnumSource(ForceUnit.class)
  void readsWhatItWrites(ForceUnit unit) {
    assertThat(Force.parse("24.5" + unit.symbol())).contains(Force.of(24.5, unit));
    assertThat(Force.parse(" 24.5 " + unit.symbol() + " ")).contains(Force.of(24.5, unit));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"55", "lbf", "-5N", "1e3N", "55lb", "5,5kgf", "99999N", "٥٥N", "NaNN", ""})
  void guessesNoUnit(String text) {
    assertThat(Force.parse(text)).isEmpty();
  }
}
