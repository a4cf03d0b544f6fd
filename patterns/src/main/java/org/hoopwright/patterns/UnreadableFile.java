package org.hoopwright.patterns;

import java.io.IOException;
import org.hoopwright.patterns.json.Shown;

/**
 * A file that cannot be read as a layout at all: it cannot be opened, is too big, or is not UTF-8
 * text. Malformed JSON is no such failure but a finding.
 */
public final class UnreadableFile extends IOException {

  private static final long serialVersionUID = 1L;

  private final String fileName;
  private final String reason;

  /**
   * A failure. The message is one line: the file's name and the reason.
   *
   * @param fileName the file, as the caller calls it
   * @param reason why, a sentence's rest such as {@code there is no such file}
   */
  public UnreadableFile(String fileName, String reason) {
    super(Shown.escaped(fileName) + " cannot be read: " + reason + ".");
    this.fileName = fileName;
    this.reason = reason;
  }

  /** The file, as the caller calls it. */
  public String fileName() {
    return fileName;
  }

  /** Why, a sentence's rest such as {@code there is no such file}. */
  public String reason() {
    return reason;
  }
}
