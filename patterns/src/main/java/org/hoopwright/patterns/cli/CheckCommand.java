package org.hoopwright.patterns.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what is wrong with layout files. */
@Command(
    name = "check",
    description = "Tells what is wrong, unusual or worth knowing about layout files.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class CheckCommand implements Callable<Integer> {

  private final Session session;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "FILE",
      arity = "0..*",
      description =
          "Layout files, folders (every .json file in them) and globs; - for standard input,"
              + " sample:NAME for a bundled layout.")
  private List<String> files = new ArrayList<>();

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "How findings are written: ${COMPLETION-CANDIDATES}; default ${DEFAULT-VALUE}.")
  private FindingsFormat format = FindingsFormat.text;

  @Option(
      names = "--fail-on",
      paramLabel = "SEVERITY",
      description =
          "Findings of this severity or a graver one give exit code 1: ${COMPLETION-CANDIDATES};"
              + " default ${DEFAULT-VALUE}.")
  private FileCheck.FailOn failOn = FileCheck.FailOn.error;

  @Option(
      names = "--color",
      paramLabel = "WHEN",
      description =
          "Colour text: ${COMPLETION-CANDIDATES}; default ${DEFAULT-VALUE}: on a terminal, unless"
              + " NO_COLOR is set.")
  private Paint.When colour = Paint.When.auto;

  @Option(
      names = "--explain",
      paramLabel = "CODE",
      description = "Say what a code means, with an example, and end.")
  private @Nullable String explain;

  @Option(
      names = "--fix",
      description =
          "Mend in the file what can be mended mechanically, and show what was changed. Comments"
              + " stay; what would take one away is not done.")
  private boolean fix;

  @Option(
      names = "--fix-dry-run",
      description = "Show what --fix would change, and change nothing.")
  private boolean dryRun;

  CheckCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    if (explain != null) {
      session.console().result(Explanation.of(spec.commandLine(), explain));
      return ExitCode.DONE;
    }
    if (files.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "a FILE is missing; name a file, a folder, a glob or -.");
    }
    if (Collections.frequency(files, LayoutInput.STANDARD_INPUT) > 1) {
      throw new ParameterException(
          spec.commandLine(), "standard input (-) can be read only once; name it once.");
    }
    FileCheck.Mending mending =
        dryRun
            ? FileCheck.Mending.SHOWN
            : fix ? FileCheck.Mending.DONE : FileCheck.Mending.NOT_ASKED;
    return new FileCheck(session, format, failOn, colour, mending).run(files);
  }
}
