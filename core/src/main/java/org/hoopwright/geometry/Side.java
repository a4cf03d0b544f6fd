package org.hoopwright.geometry;

import java.util.Optional;

/** A side of the hoop, as seen with the head at the top. */
public enum Side {
  /** The left side: x is negative. */
  LEFT(-1, 'L'),
  /** The right side: x is positive. */
  RIGHT(1, 'R');

  private final int sign;
  private final char letter;

  Side(int sign, char letter) {
    this.sign = sign;
    this.letter = letter;
  }

  /**
   * The sign of x on this side.
   *
   * @return -1 for left, +1 for right
   */
  public int sign() {
    return sign;
  }

  /**
   * The letter that hole names begin with on this side.
   *
   * @return {@code 'L'} or {@code 'R'}
   */
  public char letter() {
    return letter;
  }

  /**
   * The side across the long axis.
   *
   * @return right for left, left for right
   */
  public Side other() {
    return this == LEFT ? RIGHT : LEFT;
  }

  /**
   * The side that a letter stands for.
   *
   * @param letter any character; only the capitals {@code L} and {@code R} name a side
   * @return the side, or empty for every other character
   */
  public static Optional<Side> ofLetter(char letter) {
    return switch (letter) {
      case 'L' -> Optional.of(LEFT);
      case 'R' -> Optional.of(RIGHT);
      default -> Optional.empty();
    };
  }
}
