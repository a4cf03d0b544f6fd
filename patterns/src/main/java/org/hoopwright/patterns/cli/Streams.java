package org.hoopwright.patterns.cli;

import java.io.InputStream;
import java.io.OutputStream;

/**
 * What a command reads from and writes to; text is UTF-8 whatever the platform says.
 *
 * @param in standard input
 * @param out where results go
 * @param err where everything else goes
 * @param colours whether results for people may be coloured: a terminal shows them, and nobody said
 *     no
 */
public record Streams(InputStream in, OutputStream out, OutputStream err, boolean colours) {

  /** Streams that are no terminal. */
  public Streams(InputStream in, OutputStream out, OutputStream err) {
    this(in, out, err, false);
  }
}
