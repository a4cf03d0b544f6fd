package org.hoopwright.frame;

import java.util.Optional;

/** An end of the hoop's long axis: the head, far from the handle, or the throat. */
public enum End {
  /** The far end of the hoop. */
  HEAD('H', "head"),
  /** The end next to the handle. */
  THROAT('T', "throat");

  private final char letter;
  private final String word;

  End(char letter, String word) {
    this.letter = letter;
    this.word = word;
  }

  /** {@code H} or {@code T}, as in hole names. */
  public char letter() {
    return letter;
  }

  /** {@code head} or {@code throat}, as in layout files. */
  public String word() {
    return word;
  }

  /** The other end. */
  public End other() {
    return this == HEAD ? THROAT : HEAD;
  }

  /** The end of this word, compared exactly, or empty. */
  public static Optional<End> ofWord(String word) {
    for (End end : values()) {
      if (end.word.equals(word)) {
        return Optional.of(end);
      }
    }
    return Optional.empty();
  }
}
