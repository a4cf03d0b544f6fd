package org.hoopwright.frame;

import org.hoopwright.geometry.Side;

/**
 * Something stated for each side of the frame.
 *
 * @param left what is stated for the left side
 * @param right what is stated for the right side
 * @param <T> what is stated
 */
public record EachSide<T>(T left, T right) {

  /** The same for both sides. */
  public static <T> EachSide<T> both(T value) {
    return new EachSide<>(value, value);
  }

  /** What is stated for this side. */
  public T of(Side side) {
    return side == Side.LEFT ? left : right;
  }

  /** Whether both sides are stated alike. */
  public boolean same() {
    return left.equals(right);
  }

  /** Left and right exchanged. */
  public EachSide<T> swapped() {
    return new EachSide<>(right, left);
  }
}
