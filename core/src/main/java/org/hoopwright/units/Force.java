package org.hoopwright.units;

import java.util.Optional;

/**
 * A force: a tension, a clamp's load. Zero or more, finite.
 *
 * @param newtons the force in newtons, 0 or more and at most {@value #MAX_NEWTONS}
 */
public record Force(double newtons) implements Comparable<Force> {

  /** The largest force that is accepted, in newtons: far above what any racket string bears. */
  public static final double MAX_NEWTONS = 10_000.0;

  /**
   * Checks the value.
   *
   * @throws IllegalArgumentException when the value is negative, not finite or above {@link
   *     #MAX_NEWTONS}
   */
  public Force {
    if (!(newtons >= 0.0 && newtons <= MAX_NEWTONS)) {
      throw new IllegalArgumentException(
          "The force ("
              + newtons
              + " N) must be from 0 to 10000 N.\nMaybe the number was meant in another unit: see Force.of(value, unit).");
    }
    newtons = newtons + 0.0; // turns -0.0 into 0.0, which records would tell apart
  }

  /** A force stated in newtons. */
  public static Force ofNewtons(double newtons) {
    return new Force(newtons);
  }

  /** A force stated in a unit. */
  public static Force of(double value, ForceUnit unit) {
    return new Force(value * unit.newtons());
  }

  /** This force in a unit. */
  public double in(ForceUnit unit) {
    return newtons / unit.newtons();
  }

  /**
   * Reads a number with its unit, such as {@code 55lbf}, {@code 24.5 kgf} or {@code 245N}.
   *
   * @return the force, or empty when the text is not a plain decimal number followed by {@code N},
   *     {@code lbf} or {@code kgf}, or when the force is out of range; a number without unit is
   *     empty too, because guessing a unit breaks frames
   */
  public static Optional<Force> parse(String text) {
    String s = text.strip();
    for (ForceUnit unit : ForceUnit.values()) {
      if (s.endsWith(unit.symbol())) {
        String number = s.substring(0, s.length() - unit.symbol().length()).strip();
        if (!number.matches("[0-9]{1,9}(\\.[0-9]{1,9})?")) {
          return Optional.empty();
        }
        double value = Double.parseDouble(number) * unit.newtons();
        return value <= MAX_NEWTONS ? Optional.of(new Force(value)) : Optional.empty();
      }
    }
    return Optional.empty();
  }

  @Override
  public int compareTo(Force other) {
    return Double.compare(newtons, other.newtons);
  }
}
