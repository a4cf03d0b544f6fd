package org.hoopwright.patterns;

import java.util.List;
import java.util.Optional;
import org.hoopwright.bench.HalfDone;
import org.hoopwright.finding.Finding;

/**
 * What came of reading the file of a half-done job.
 *
 * @param fileName the file, as the caller calls it
 * @param text its text; places of findings count in it
 * @param state the state; empty when any finding is an error
 * @param findings what is wrong with it, by place
 */
public record StateResult(
    String fileName, String text, Optional<HalfDone> state, List<Finding> findings) {

  /** Copies the list. */
  public StateResult {
    findings = List.copyOf(findings);
  }
}
