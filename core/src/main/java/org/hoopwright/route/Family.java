package org.hoopwright.route;

/** A name given to a route afterwards, by what it does. A route of neither family is plain. */
public enum Family {
  /**
   * A main is strung after a cross, and the crosses run from the end where the mains do not end.
   */
  AROUND_THE_WORLD("around-the-world"),
  /** Crosses at both ends are strung before the outermost mains are all in. */
  BOX("box");

  private final String word;

  Family(String word) {
    this.word = word;
  }

  /** {@code around-the-world} or {@code box}, as in plans. */
  public String word() {
    return word;
  }
}
