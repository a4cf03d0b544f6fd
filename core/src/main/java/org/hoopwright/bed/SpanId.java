package org.hoopwright.bed;

import java.util.Optional;
import org.hoopwright.geometry.Side;

/**
 * The name of a span: {@code L3} is the third main left of the long axis, {@code R1} the first
 * right of it, {@code X19} the cross that is nineteenth from the head.
 *
 * <p>Ordered left mains, right mains, crosses, each by number.
 *
 * @param kind main of a side, or cross
 * @param number from 1: mains from the axis outwards, crosses from the head
 */
public record SpanId(Kind kind, int number) implements Comparable<SpanId> {

  /** What kind of span. */
  public enum Kind {
    /** A main left of the long axis. */
    LEFT_MAIN('L'),
    /** A main right of the long axis. */
    RIGHT_MAIN('R'),
    /** A cross. */
    CROSS('X');

    private final char letter;

    Kind(char letter) {
      this.letter = letter;
    }

    /** {@code L}, {@code R} or {@code X}. */
    public char letter() {
      return letter;
    }
  }

  /**
   * Checks the number.
   *
   * @throws IllegalArgumentException when the number is below 1
   */
  public SpanId {
    if (number < 1) {
      throw new IllegalArgumentException(
          "The span number (%s) must be 1 or more.".formatted(number));
    }
  }

  /** The main of this number on this side. */
  public static SpanId main(Side side, int number) {
    return new SpanId(side == Side.LEFT ? Kind.LEFT_MAIN : Kind.RIGHT_MAIN, number);
  }

  /** The cross of this number, counted from the head. */
  public static SpanId cross(int number) {
    return new SpanId(Kind.CROSS, number);
  }

  /**
   * The span of this name.
   *
   * @throws IllegalArgumentException when the text is no span name such as {@code L3} or {@code
   *     X19}
   */
  public static SpanId of(String name) {
    return find(name)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "The span name (%s) must be L, R or X and a number, such as L3 or X19."
                        .formatted(name)));
  }

  /** The span of this name, or empty. */
  public static Optional<SpanId> find(String name) {
    if (!name.matches("[LRX][1-9][0-9]{0,3}")) {
      return Optional.empty();
    }
    int number = Integer.parseInt(name.substring(1));
    char c = name.charAt(0);
    return Optional.of(
        new SpanId(c == 'L' ? Kind.LEFT_MAIN : c == 'R' ? Kind.RIGHT_MAIN : Kind.CROSS, number));
  }

  /** Whether this is a main. */
  public boolean isMain() {
    return kind != Kind.CROSS;
  }

  /** Whether this is a cross. */
  public boolean isCross() {
    return kind == Kind.CROSS;
  }

  /** The side of a main; empty for a cross. */
  public Optional<Side> side() {
    return switch (kind) {
      case LEFT_MAIN -> Optional.of(Side.LEFT);
      case RIGHT_MAIN -> Optional.of(Side.RIGHT);
      case CROSS -> Optional.empty();
    };
  }

  /** The main of the other side; a cross is its own mirror image. */
  public SpanId mirrored() {
    return switch (kind) {
      case LEFT_MAIN -> new SpanId(Kind.RIGHT_MAIN, number);
      case RIGHT_MAIN -> new SpanId(Kind.LEFT_MAIN, number);
      case CROSS -> this;
    };
  }

  @Override
  public int compareTo(SpanId other) {
    int byKind = kind.compareTo(other.kind);
    return byKind != 0 ? byKind : Integer.compare(number, other.number);
  }

  /** The name, such as {@code L3}. */
  @Override
  public String toString() {
    return "" + kind.letter() + number;
  }
}
