package org.hoopwright.patterns.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.util.Locale;
import org.hoopwright.patterns.json.Shown;

/**
 * Gathers what a command says and writes it at its end: results to standard output, messages to
 * standard error. Not thread-safe.
 */
final class Console {

  private static final int PIECE = 8192;

  private final StringBuilder results = new StringBuilder();
  private final StringBuilder messages = new StringBuilder();

  /** Adds to the results, as it is. */
  void result(String text) {
    results.append(text);
  }

  /** Adds a message of one or more lines; what does not show is written as an escape. */
  void message(String text) {
    text.lines().forEach(line -> messages.append(Shown.escaped(line)).append('\n'));
  }

  /** Drops the results: what was begun is not worth showing. */
  void dropResults() {
    results.setLength(0);
  }

  /**
   * Writes everything out.
   *
   * @param code the exit code so far
   * @return that code, or {@link ExitCode#FILE} when the results cannot be written; a reader that
   *     has gone away is no failure
   */
  int flush(Streams streams, int code) {
    int end = code;
    try {
      write(streams.out(), results);
    } catch (IOException e) {
      if (!readerHasGone(e)) {
        message("hoopwright: standard output cannot be written.");
        end = ExitCode.FILE;
      }
    }
    try {
      write(streams.err(), messages);
    } catch (IOException e) {
      // There is nowhere left to say so; the exit code still tells.
      return end;
    }
    return end;
  }

  private static void write(OutputStream out, StringBuilder text) throws IOException {
    // Piece by piece: results may be large, and a copy of them as bytes larger.
    Writer writer = new OutputStreamWriter(out, UTF_8);
    char[] piece = new char[PIECE];
    for (int from = 0; from < text.length(); from += PIECE) {
      int to = Math.min(text.length(), from + PIECE);
      text.getChars(from, to, piece, 0);
      writer.write(piece, 0, to - from);
    }
    writer.flush();
  }

  /** Whether the reader of a pipe has ended, as {@code head} does; no code tells, only words. */
  private static boolean readerHasGone(IOException e) {
    String message = e.getMessage();
    return message != null && message.toLowerCase(Locale.ROOT).contains("pipe");
  }
}
