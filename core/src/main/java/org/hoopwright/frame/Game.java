package org.hoopwright.frame;

import java.util.Optional;

/**
 * The game a racket is for: it decides which governing body's limits apply and what is pulled when
 * nothing is said.
 */
public enum Game {
  /** Tennis. */
  TENNIS("tennis"),
  /** Badminton. */
  BADMINTON("badminton"),
  /** Squash. */
  SQUASH("squash"),
  /** Racquetball. */
  RACQUETBALL("racquetball"),
  /** Any other game, or none stated: no governing body's limits apply. */
  OTHER("other");

  private final String word;

  Game(String word) {
    this.word = word;
  }

  /** The word used in layout files. */
  public String word() {
    return word;
  }

  /** The game of this word, compared exactly, or empty. */
  public static Optional<Game> ofWord(String word) {
    for (Game game : values()) {
      if (game.word.equals(word)) {
        return Optional.of(game);
      }
    }
    return Optional.empty();
  }
}
