package org.hoopwright.patterns;

import java.util.List;
import java.util.Optional;
import org.hoopwright.finding.Finding;

/**
 * What came of reading a bench file.
 *
 * @param fileName the file, as the caller calls it
 * @param text its text; places of findings count in it
 * @param workbench what it says; empty when any finding is an error
 * @param findings what is wrong with it, by place
 */
public record BenchResult(
    String fileName, String text, Optional<Workbench> workbench, List<Finding> findings) {

  /** Copies the list. */
  public BenchResult {
    findings = List.copyOf(findings);
  }
}
