package org.hoopwright.patterns.cli;

import java.io.Console;

/** Whether a person looks at what is written. */
final class Terminal {

  private Terminal() {}

  /** Whether colours may be written: input and output are a terminal, and NO_COLOR is not set. */
  static boolean colours() {
    return System.getenv().getOrDefault("NO_COLOR", "").isEmpty() && isTerminal();
  }

  // From Java 22 on there is a console also where there is no terminal, and a method that tells.
  @SuppressWarnings("SystemConsoleNull")
  private static boolean isTerminal() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
    } catch (NoSuchMethodException e) {
      return true;
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }
}
