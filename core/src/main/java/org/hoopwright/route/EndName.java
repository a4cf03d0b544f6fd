package org.hoopwright.route;

/**
 * The name of one end of a piece of string. Short and long belong to the piece with the mains,
 * start and finish to a second piece.
 */
public enum EndName {
  /**
   * The end that is tied first; it strings its own mains, perhaps an outer main or two more spans.
   */
  SHORT("short"),
  /** The other end of the piece with the mains. */
  LONG("long"),
  /** The end of the crosses' piece that is held before the first cross. */
  START("start"),
  /** The end of the crosses' piece that strings. */
  FINISH("finish");

  private final String word;

  EndName(String word) {
    this.word = word;
  }

  /** {@code short}, {@code long}, {@code start} or {@code finish}, as in plans. */
  public String word() {
    return word;
  }
}
