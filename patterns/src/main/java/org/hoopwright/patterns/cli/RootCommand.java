package org.hoopwright.patterns.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program itself, which does nothing without a command. */
@Command(
    name = "hoopwright",
    description = "Works out how to string a racket frame.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    synopsisSubcommandLabel = "COMMAND",
    footer = {
      "",
      "FILE is a layout file, - for standard input, or sample:NAME for a bundled layout.",
      "Results go to standard output, everything else to standard error.",
      "",
      "First steps:",
      "  hoopwright new > frame.json     a layout to fill in",
      "  hoopwright check frame.json     what is wrong with it",
      "  hoopwright plan frame.json      how to string it",
      "  hoopwright sheet frame.json -o frame.html   the same, with drawings, for the bench"
    })
final class RootCommand implements Runnable {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public void run() {
    throw new CommandRunner.NoCommand(spec.commandLine());
  }
}
