package org.hoopwright.patterns.cli;

import java.util.List;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Findings;
import org.hoopwright.finding.Severity;
import org.hoopwright.patterns.Fixes;
import org.hoopwright.patterns.ReadResult;
import org.hoopwright.patterns.UnreadableFile;

/**
 * What {@code check} does with its files.
 *
 * @param session the call's
 * @param format how findings are written
 * @param failOn from which severity on the call fails
 * @param colour when text is coloured
 * @param mending what becomes of fixes
 */
record FileCheck(
    Session session, FindingsFormat format, FailOn failOn, Paint.When colour, Mending mending) {

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

  /** What becomes of fixes that are mechanical. */
  enum Mending {
    /** Nothing. */
    NOT_ASKED,
    /** They are shown. */
    SHOWN,
    /** They are written into the file. */
    DONE
  }

  /** A check about which nothing was said but its files. */
  static FileCheck plain(Session session) {
    return new FileCheck(
        session, FindingsFormat.text, FailOn.error, Paint.When.auto, Mending.NOT_ASKED);
  }

  /**
   * Checks what these words name: files, folders, globs, standard input, bundled layouts.
   *
   * @return the exit code
   */
  int run(List<String> words) {
    FindingsReport report = new FindingsReport(format);
    int unreadable = 0;
    for (String word : words) {
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
      if (mending != Mending.NOT_ASKED) {
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
    if (!fixes.changed() || mending == Mending.SHOWN) {
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
