package org.hoopwright.finding;

/**
 * A number that a finding rests on, for programs.
 *
 * @param name what it is, a word such as {@code apart}
 * @param value the number
 * @param unit its unit, such as {@code mm} or {@code N}; empty for a count or a ratio
 * @param whole whether it is a count
 */
public record Fact(String name, double value, String unit, boolean whole) {

  /** No measure is as great as this, either sign: nothing about a frame is. */
  static final double BEYOND = 1e9;
}
