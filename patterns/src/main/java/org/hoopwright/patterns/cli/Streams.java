package org.hoopwright.patterns.cli;

import java.io.InputStream;
import java.io.OutputStream;

/**
 * What a command reads from and writes to; text is UTF-8 whatever the platform says.
 *
 * @param in standard input
 * @param out where results go
 * @param err where everything else goes
 */
public record Streams(InputStream in, OutputStream out, OutputStream err) {}
