package org.hoopwright.patterns.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The option that says where a drawing or a sheet goes. */
final class OutputOption {

  private static final String STANDARD_OUTPUT = "-";

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec = CommandSpec.create();

  @Option(
      names = {"-o", "--output"},
      paramLabel = "OUT",
      required = true,
      description =
          "The file to write; - for standard output. A file of that name is replaced, and only when"
              + " the new one is complete.")
  private String output = "";

  /**
   * Looks whether the layout itself would be overwritten.
   *
   * @throws ParameterException when it would
   */
  void check(String layoutFile) {
    if (!output.equals(STANDARD_OUTPUT)
        && !layoutFile.equals(LayoutInput.STANDARD_INPUT)
        && sameFile(layoutFile, output)) {
      throw new ParameterException(
          spec.commandLine(),
          "-o (" + output + ") must not be the layout file itself; name another file.");
    }
  }

  private static boolean sameFile(String a, String b) {
    try {
      Path x = Path.of(a);
      Path y = Path.of(b);
      return Files.exists(x) && Files.exists(y) && Files.isSameFile(x, y);
    } catch (IOException | InvalidPathException e) {
      return false; // reading or writing it will say what is wrong
    }
  }

  /**
   * Writes the result.
   *
   * @param command the command's name, for its message
   * @param code the exit code so far
   * @return that code, or {@link ExitCode#FILE} when the file cannot be written
   */
  int write(Session session, String command, String text, int code) {
    if (output.equals(STANDARD_OUTPUT)) {
      session.console().result(text);
      return code;
    }
    try {
      OutputFile.write(output, text);
      return code;
    } catch (OutputFile.Unwritable e) {
      session.console().message("hoopwright " + command + ": " + e.getMessage());
      return ExitCode.FILE;
    }
  }
}
