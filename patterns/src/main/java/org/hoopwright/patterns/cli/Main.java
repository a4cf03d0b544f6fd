package org.hoopwright.patterns.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;

/** The command line's entry: it wires the process's streams and exit code. */
public final class Main {

  private Main() {}

  /**
   * Runs the command line and ends the process with its exit code.
   *
   * @param args the words after the program's name
   */
  public static void main(String[] args) {
    // Not System.out: a PrintStream hides that its reader has gone away.
    Streams streams =
        new Streams(
            System.in,
            new FileOutputStream(FileDescriptor.out),
            new FileOutputStream(FileDescriptor.err),
            Terminal.colours());
    System.exit(CommandRunner.run(streams, args));
  }
}
