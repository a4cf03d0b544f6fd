package org.hoopwright.patterns.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import org.hoopwright.Hoopwright;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.Findings;
import org.hoopwright.finding.Severity;
import org.hoopwright.patterns.ReadResult;
import org.hoopwright.patterns.UnreadableFile;
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

  /** From which severity on a finding makes the call fail. */
  enum FailOn {
    error,
    warning,
    never;

    boolean fails(List<Finding> findings) {
      return switch (this) {
        case error -> Findings.hasErrors(findings);
        case warning -> findings.stream().anyMatch(f -> f.severity() != Severity.NOTE);
        case never -> false;
      };
    }
  }

  private final Session session;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "FILE",
      arity = "1..*",
      description = "Layout files; - for standard input, sample:NAME for a bundled layout.")
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
  private FailOn failOn = FailOn.error;

  CheckCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    if (Collections.frequency(files, LayoutInput.STANDARD_INPUT) > 1) {
      throw new ParameterException(
          spec.commandLine(), "standard input (-) can be read only once; name it once.");
    }
    FindingsReport report = new FindingsReport(format);
    int unreadable = 0;
    for (String file : files) {
      try {
        ReadResult read = LayoutInput.read(file, session.streams());
        report.add(read, findings(read));
      } catch (UnreadableFile e) {
        unreadable++;
        session.console().message("hoopwright check: " + e.getMessage());
      }
    }
    session.console().result(report.text());
    if (format == FindingsFormat.text) {
      session.console().message(report.summary());
    }
    return unreadable > 0
        ? ExitCode.FILE
        : failOn.fails(report.findings()) ? ExitCode.FINDINGS : ExitCode.DONE;
  }

  /** Everything found about a file: its text, its layout, its bed and whether it has a route. */
  static List<Finding> findings(ReadResult read) {
    List<Finding> all = new ArrayList<>(read.findings());
    read.draft().ifPresent(draft -> all.addAll(Hoopwright.check(draft).findings()));
    return Findings.sorted(all);
  }
}
