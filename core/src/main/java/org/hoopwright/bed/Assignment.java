package org.hoopwright.bed;

import java.util.List;
import java.util.Optional;
import org.hoopwright.finding.Finding;

/**
 * What an assignment of strings to holes came to.
 *
 * @param bed the bed; empty when a finding is an error, or when the layout itself leaves nothing to
 *     lay, which the rules on layouts report
 * @param findings all that was found, in the order of {@link
 *     org.hoopwright.finding.Findings#sorted}
 */
public record Assignment(Optional<Bed> bed, List<Finding> findings) {

  /** Copies the list. */
  public Assignment {
    findings = List.copyOf(findings);
  }
}
