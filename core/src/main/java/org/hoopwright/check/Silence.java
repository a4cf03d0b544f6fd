package org.hoopwright.check;

import java.util.List;
import org.hoopwright.finding.FindingCode;

/**
 * A rule that could not be asked.
 *
 * @param rule what it would have looked for
 * @param because why: codes of findings, and JSON pointers of what could not be read; not empty
 */
public record Silence(FindingCode rule, List<String> because) {
  /** Copies the list. */
  public Silence {
    because = List.copyOf(because);
  }
}
