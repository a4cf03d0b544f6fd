package org.hoopwright.frame;

import java.util.Optional;
import org.hoopwright.geometry.Side;
import org.jspecify.annotations.Nullable;

/**
 * The name of one hole, such as {@code L7H}: side, number from the long axis, end it is counted
 * from.
 *
 * <p>Ordered by side (left first), then end (head first), then number.
 *
 * @param side left or right, as seen with the head at the top
 * @param end the end from which it is counted
 * @param number 1 next to the long axis, up to {@value #MAX_NUMBER}
 */
public record HoleId(Side side, End end, int number) implements Comparable<HoleId> {

  /** The largest hole number that is accepted. */
  public static final int MAX_NUMBER = 500;

  /**
   * Checks the number.
   *
   * @throws IllegalArgumentException when the number is below 1 or above {@link #MAX_NUMBER}
   */
  public HoleId {
    if (number < 1 || number > MAX_NUMBER) {
      throw new IllegalArgumentException(
          "The hole number (%s) must be from 1 to %s.".formatted(number, MAX_NUMBER));
    }
  }

  /**
   * The hole of this name.
   *
   * @throws IllegalArgumentException when the text is not a hole name with side, such as {@code
   *     L7H}
   */
  public static HoleId of(String name) {
    return find(name)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "The hole name (%s) must be L or R, a number and H or T, such as L7H.\nMaybe HoleRef.of(name) is meant, which names both sides."
                        .formatted(name)));
  }

  /** The hole of this name, or empty when the text is not a hole name with side. */
  public static Optional<HoleId> find(String name) {
    return HoleRef.find(name)
        .flatMap(ref -> ref.side().map(side -> new HoleId(side, ref.end(), ref.number())));
  }

  /** The hole at the same place of the other side. */
  public HoleId mirrored() {
    return new HoleId(side.other(), end, number);
  }

  // Written out: holes are the keys of most tables.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof HoleId h && side == h.side && end == h.end && number == h.number;
  }

  @Override
  public int hashCode() {
    return 4 * number + (side == Side.LEFT ? 0 : 2) + (end == End.HEAD ? 0 : 1);
  }

  @Override
  public int compareTo(HoleId other) {
    int bySide = side.compareTo(other.side);
    int byEnd = end.compareTo(other.end);
    return bySide != 0 ? bySide : byEnd != 0 ? byEnd : Integer.compare(number, other.number);
  }

  /** The name, such as {@code L7H}. */
  @Override
  public String toString() {
    return "" + side.letter() + number + end.letter();
  }
}
