package org.hoopwright.patterns.cli;

import java.util.List;
import org.hoopwright.patterns.CheckedFile;
import org.hoopwright.patterns.FindingsText;
import org.hoopwright.patterns.UnreadableFile;

/** Ends a call because a file that an option names cannot be used. */
final class FileRefused extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final int exitCode;
  private final String result;

  private FileRefused(int exitCode, String message, String result) {
    super(message, null, false, false);
    this.exitCode = exitCode;
    this.result = result;
  }

  /** It cannot be read. */
  static FileRefused because(UnreadableFile e) {
    return new FileRefused(ExitCode.FILE, String.valueOf(e.getMessage()), "");
  }

  /** Something in it is wrong. */
  static FileRefused because(CheckedFile file) {
    return new FileRefused(
        ExitCode.FINDINGS,
        file.name() + " has errors; nothing is planned with it.",
        FindingsText.of(List.of(file)));
  }

  int exitCode() {
    return exitCode;
  }

  /** What belongs to the results; may be empty. */
  String result() {
    return result;
  }
}
