package org.hoopwright.patterns.json;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The platform's own conversion is the reference. */
class PlainNumberTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0",
        "-0",
        "-0.0",
        "0.1",
        "-5.1",
        "164.9",
        "999999999999999",
        "0.999999999999999",
        "9.99999999999999",
        "9007199254740993",
        "0.3000000000000000166",
        "123456789012345.6",
        "1e5",
        "-1.5E-7",
        "1e400",
        "4.9e-324",
        "1e-400"
      })
  void readsTheNearestDouble(String raw) {
    assertThat(Double.doubleToLongBits(PlainNumber.parse(raw)))
        .isEqualTo(Double.doubleToLongBits(Double.parseDouble(raw)));
  }

  @Property(tries = 20_000)
  void readsTheNearestDoubleOfAnyDecimal(@ForAll("decimals") String raw) {
    readsTheNearestDouble(raw);
  }

  @Provide
  Arbitrary<String> decimals() {
    Arbitrary<String> digits = Arbitraries.strings().numeric().ofMinLength(1).ofMaxLength(17);
    Arbitrary<String> decimals =
        digits.map(d -> "." + d).injectNull(0.3).map(d -> d == null ? "" : d);
    return Combinators.combine(Arbitraries.of("", "-"), digits, decimals)
        .as((sign, whole, part) -> sign + whole.replaceFirst("^0+(?=.)", "") + part);
  }

  @Property
  void whatIsWrittenReadsBack(@ForAll double value) {
    double finite = Double.isFinite(value) ? value : 0;
    assertThat(PlainNumber.parse(PlainNumber.of(finite))).isEqualTo(finite + 0.0);
  }
}
