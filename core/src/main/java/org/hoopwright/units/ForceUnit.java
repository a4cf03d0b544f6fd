package org.hoopwright.units;

import java.util.Optional;

/**
 * A unit in which string tension is stated.
 *
 * <p>Factors are exact: the pound-force is 0.45359237 kg × 9.80665 m/s², the kilogram-force 9.80665
 * N (NIST SP 811, appendix B.8).
 */
public enum ForceUnit {
  /** The newton, SI unit of force. */
  NEWTON("N", 1.0),
  /** The pound-force, the usual unit on rackets sold in inches. */
  POUND_FORCE("lbf", 4.4482216152605),
  /** The kilogram-force, the usual unit on machines with metric scales. */
  KILOGRAM_FORCE("kgf", 9.80665);

  private final String symbol;
  private final double newtons;

  ForceUnit(String symbol, double newtons) {
    this.symbol = symbol;
    this.newtons = newtons;
  }

  /**
   * The symbol used in layout files and on the command line: {@code N}, {@code lbf} or {@code kgf}.
   */
  public String symbol() {
    return symbol;
  }

  /** How many newtons one of this unit is; exact. */
  public double newtons() {
    return newtons;
  }

  /** The unit with this symbol, compared exactly, or empty. */
  public static Optional<ForceUnit> ofSymbol(String symbol) {
    for (ForceUnit unit : values()) {
      if (unit.symbol.equals(symbol)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }
}
