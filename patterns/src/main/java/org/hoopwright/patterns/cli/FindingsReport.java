package org.hoopwright.patterns.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hoopwright.check.CheckReport;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.Findings;
import org.hoopwright.finding.Severity;
import org.hoopwright.patterns.CheckedFile;
import org.hoopwright.patterns.FindingsGithub;
import org.hoopwright.patterns.FindingsJson;
import org.hoopwright.patterns.FindingsSarif;
import org.hoopwright.patterns.FindingsText;
import org.hoopwright.patterns.ReadResult;
import org.hoopwright.patterns.draw.FindingsPage;

/** The findings of one or more files, as results. Not thread-safe. */
final class FindingsReport {

  private final FindingsFormat format;
  private final List<CheckedFile> files = new ArrayList<>();
  private final List<FindingsPage.Checked> pages = new ArrayList<>();

  FindingsReport(FindingsFormat format) {
    this.format = format;
  }

  /** Adds a file with everything that was found about it. */
  void add(ReadResult file, CheckReport report) {
    // Of many clean files only the names are kept.
    String text = report.findings().isEmpty() ? "" : file.text();
    CheckedFile checked =
        new CheckedFile(file.fileName(), text, report.findings(), report.silent());
    files.add(checked);
    if (format == FindingsFormat.html) {
      pages.add(new FindingsPage.Checked(file.fileName(), file.checkable(), checked.findings()));
    }
  }

  /** Adds a file with findings of which every rule was asked. */
  void add(ReadResult file, List<Finding> findings) {
    add(file, new CheckReport(findings, List.of()));
  }

  /** All findings of all files. */
  List<Finding> findings() {
    return files.stream().flatMap(f -> f.findings().stream()).toList();
  }

  /** The report in a format that has no room for an exit code. */
  String text() {
    return text(ExitCode.DONE);
  }

  /** Which rules could not be asked and why, one line for each file; empty when all were. */
  String silence() {
    StringBuilder out = new StringBuilder();
    for (CheckedFile file : files) {
      if (!file.silent().isEmpty()) {
        Set<String> because = new LinkedHashSet<>();
        file.silent().forEach(s -> because.addAll(s.because()));
        out.append(file.name())
            .append(": ")
            .append(count(file.silent().size(), "rule"))
            .append(" not asked, because of ")
            .append(String.join(", ", because))
            .append(".\n");
      }
    }
    return out.toString();
  }

  /**
   * The report in its format; empty text when it is for people and there is nothing to say.
   *
   * @param exitCode the exit code of the call
   */
  String text(int exitCode) {
    return switch (format) {
      case text -> FindingsText.of(files);
      case json -> FindingsJson.of(files);
      case sarif -> FindingsSarif.of(files, exitCode);
      case github -> FindingsGithub.of(files);
      case html -> FindingsPage.html(pages);
    };
  }

  /** For example {@code 2 files: 0 errors, 1 warning, 0 notes.} */
  String summary() {
    List<Finding> all = findings();
    return count(files.size(), "file")
        + ": "
        + count(Findings.count(all, Severity.ERROR), "error")
        + ", "
        + count(Findings.count(all, Severity.WARNING), "warning")
        + ", "
        + count(Findings.count(all, Severity.NOTE), "note")
        + ".";
  }

  private static String count(int n, String what) {
    return n + " " + what + (n == 1 ? "" : "s");
  }
}
