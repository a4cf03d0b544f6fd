package org.hoopwright.units;

import java.util.Optional;

/**
 * A unit in which a layout states its lengths. The inch is 25.4 mm exactly (NIST SP 811, appendix
 * B.8).
 */
public enum LengthUnit {
  /** The millimetre. */
  MILLIMETRE("mm", 1.0),
  /** The inch. */
  INCH("in", 25.4);

  private final String symbol;
  private final double millimetres;

  LengthUnit(String symbol, double millimetres) {
    this.symbol = symbol;
    this.millimetres = millimetres;
  }

  /** The symbol used in layout files: {@code mm} or {@code in}. */
  public String symbol() {
    return symbol;
  }

  /** How many millimetres one of this unit is; exact. */
  public double millimetres() {
    return millimetres;
  }

  /** Converts a length stated in this unit to millimetres. */
  public double toMm(double value) {
    return this == MILLIMETRE ? value : value * millimetres;
  }

  /** The unit with this symbol, compared exactly, or empty. */
  public static Optional<LengthUnit> ofSymbol(String symbol) {
    for (LengthUnit unit : values()) {
      if (unit.symbol.equals(symbol)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }
}
