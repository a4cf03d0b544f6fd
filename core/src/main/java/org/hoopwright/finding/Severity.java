package org.hoopwright.finding;

/** How grave a finding is. */
public enum Severity {
  /**
   * The layout breaks the format, contradicts itself, or cannot be strung as it says; nothing is
   * planned from it.
   */
  ERROR("error"),
  /** Unusual, or likely not what was meant; a plan can still be made and carries the finding. */
  WARNING("warning"),
  /** Worth knowing; nothing needs to change. */
  NOTE("note");

  private final String word;

  Severity(String word) {
    this.word = word;
  }

  /** The word used in every report: {@code error}, {@code warning} or {@code note}. */
  public String word() {
    return word;
  }
}
