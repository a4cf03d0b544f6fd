package org.hoopwright.patterns.cli;

import java.io.Console;
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
            onTerminal() && System.getenv().getOrDefault("NO_COLOR", "").isEmpty());
    System.exit(CommandRunner.run(streams, args));
  }

  // From Java 22 on there can be a console without a terminal; Java 17 lacks the method that tells.
  @SuppressWarnings("SystemConsoleNull")
  private static boolean onTerminal() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      return true;
    }
  }
}
