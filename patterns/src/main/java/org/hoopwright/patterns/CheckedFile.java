package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.hoopwright.check.Silence;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.Findings;

/**
 * A file and what was found in it, for a report.
 *
 * @param name what the file is called
 * @param text its text, in which the places of the findings count; empty when it is not at hand,
 *     and then no source lines are shown
 * @param findings what was found, brought into the order of {@link Findings#sorted}
 * @param silent the rules that could not be asked
 */
public record CheckedFile(String name, String text, List<Finding> findings, List<Silence> silent) {

  /** Sorts the findings. */
  public CheckedFile {
    findings = Findings.sorted(findings);
    silent = List.copyOf(silent);
  }

  /** A file of which every rule was asked. */
  public CheckedFile(String name, String text, List<Finding> findings) {
    this(name, text, findings, List.of());
  }

  /**
   * A file that was read.
   *
   * @param result what reading found; its findings are in the report
   * @param more what was found about the layout afterwards
   */
  public static CheckedFile of(ReadResult result, Collection<Finding> more) {
    List<Finding> all = new ArrayList<>(result.findings());
    all.addAll(more);
    return new CheckedFile(result.fileName(), result.text(), all);
  }
}
