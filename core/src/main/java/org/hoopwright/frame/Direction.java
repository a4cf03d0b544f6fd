package org.hoopwright.frame;

import java.util.Optional;

/** The order in which the crosses go in. */
public enum Direction {
  /** The cross nearest the head first; it spares the frame's shoulders and is the usual way. */
  HEAD_TO_THROAT("head-to-throat"),
  /** The cross nearest the throat first. */
  THROAT_TO_HEAD("throat-to-head");

  private final String word;

  Direction(String word) {
    this.word = word;
  }

  /** {@code head-to-throat} or {@code throat-to-head}, as in layout files. */
  public String word() {
    return word;
  }

  /** The end at which the first cross lies. */
  public End from() {
    return this == HEAD_TO_THROAT ? End.HEAD : End.THROAT;
  }

  /** The direction of this word, compared exactly, or empty. */
  public static Optional<Direction> ofWord(String word) {
    for (Direction direction : values()) {
      if (direction.word.equals(word)) {
        return Optional.of(direction);
      }
    }
    return Optional.empty();
  }
}
