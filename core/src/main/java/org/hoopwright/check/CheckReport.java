package org.hoopwright.check;

import java.util.List;
import org.hoopwright.finding.Finding;

/**
 * What a check came to.
 *
 * @param findings all findings, in the order of {@link org.hoopwright.finding.Findings#sorted}; one
 *     of code {@code rule-crashed} is a fault of ours
 * @param silent the rules that could not be asked, in the order of the codes
 */
public record CheckReport(List<Finding> findings, List<Silence> silent) {
  /** Copies the lists. */
  public CheckReport {
    findings = List.copyOf(findings);
    silent = List.copyOf(silent);
  }
}
