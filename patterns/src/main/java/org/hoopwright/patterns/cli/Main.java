package org.hoopwright.patterns.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command line's entry. */
@Command(
    name = "hoopwright",
    description = "Works out how to string a racket frame.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
public final class Main implements Runnable {
  @Spec private CommandSpec spec = CommandSpec.create();

  private Main() {}

  /**
   * Runs the command line and ends the process with its exit code.
   *
   * @param args the words after the program's name
   */
  public static void main(String[] args) {
    System.exit(
        run(
            new PrintWriter(System.out, true, UTF_8),
            new PrintWriter(System.err, true, UTF_8),
            args));
  }

  /**
   * Runs the command line within this process.
   *
   * @param out where results go
   * @param err where everything else goes
   * @param args the words after the program's name
   * @return the exit code: 0 done, 2 the call is wrong
   */
  static int run(PrintWriter out, PrintWriter err, String... args) {
    return new CommandLine(new Main()).setOut(out).setErr(err).execute(args);
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Nothing to do; see what there is below.");
  }
}
