package org.hoopwright.bed;

/** What a hole carries in a pattern. */
public enum HoleLabel {
  /** No string. */
  NONE,
  /** The end of a main. */
  MAIN,
  /** The end of a cross. */
  CROSS,
  /** The end of a main and the end of a cross: the hole is shared. */
  BOTH;

  /** Whether a main ends here. */
  public boolean main() {
    return this == MAIN || this == BOTH;
  }

  /** Whether a cross ends here. */
  public boolean cross() {
    return this == CROSS || this == BOTH;
  }

  /** How many strings pass through. */
  int passes() {
    return (main() ? 1 : 0) + (cross() ? 1 : 0);
  }

  /** The label of a hole that carries these. */
  static HoleLabel of(boolean main, boolean cross) {
    return main ? (cross ? BOTH : MAIN) : cross ? CROSS : NONE;
  }

  /** A number for programmes: bit 0 for a main, bit 1 for a cross. */
  int code() {
    return (main() ? 1 : 0) + (cross() ? 2 : 0);
  }

  /** The label of this number. */
  static HoleLabel ofCode(int code) {
    return of((code & 1) != 0, (code & 2) != 0);
  }
}
