package org.hoopwright.patterns.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Findings;
import org.hoopwright.finding.Severity;
import org.hoopwright.patterns.Fixes;
import org.hoopwright.patterns.ReadResult;
import org.hoopwright.patterns.UnreadableFile;
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
  private FailOn failOn = FailOn.error;

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
    FindingsReport report = new FindingsReport(format);
    int unreadable = 0;
    for (String word : files) {
      try {
        for (String file : FileArguments.expand(word)) {
          unreadable += check(file, report) ? 0 : 1;
        }
      } catch (UnreadableFile e) {
        unreadable++;
        session.console().message("hoopwright check: " + e.getMessage());
      }
    }
    int code = code(report, unreadable);
    String text = report.text(code);
    boolean paint =
        format == FindingsFormat.text && Paint.wanted(colour, session.streams().colours());
    session.console().result(paint ? Paint.findings(text) : text);
    if (format == FindingsFormat.text) {
      session.console().message(report.silence());
      session.console().message(report.summary());
    }
    return code;
  }

  private boolean check(String file, FindingsReport report) {
    try {
      ReadResult read = LayoutInput.read(file, session.streams());
      if (fix || dryRun) {
        read = mended(file, read);
      }
      report.add(read, read.report());
      return true;
    } catch (UnreadableFile e) {
      session.console().message("hoopwright check: " + e.getMessage());
      return false;
    }
  }

  /** The file after what can be mended mechanically; the diff goes to standard error. */
  private ReadResult mended(String file, ReadResult read) throws UnreadableFile {
    Fixes fixes = Fixes.of(file, read.text(), r -> r.report().findings());
    session.console().message(fixes.diff(file));
    fixes
        .refused()
        .forEach(
            f ->
                session
                    .console()
                    .message(
                        file
                            + ": not mended, a comment would be lost: "
                            + f.message()
                            + " ["
                            + f.code().code()
                            + "]"));
    if (!fixes.changed() || dryRun) {
      return read;
    }
    if (file.equals(LayoutInput.STANDARD_INPUT) || file.startsWith("sample:")) {
      session.console().message(file + ": not mended, it is no file.");
      return read;
    }
    try {
      OutputFile.write(file, fixes.after());
    } catch (OutputFile.Unwritable e) {
      throw new UnreadableFile(file, "it cannot be written");
    }
    session.console().message(file + ": mended " + fixes.done().size() + ".");
    return LayoutInput.read(file, session.streams());
  }

  private int code(FindingsReport report, int unreadable) {
    if (report.findings().stream().anyMatch(f -> f.code() == FindingCode.RULE_CRASHED)) {
      return ExitCode.FAULT;
    }
    return unreadable > 0
        ? ExitCode.FILE
        : failOn.fails(report.findings()) ? ExitCode.FINDINGS : ExitCode.DONE;
  }
}
