package org.hoopwright.bed;

import java.util.List;
import java.util.Optional;
import org.hoopwright.finding.Finding;

/**
 * The patterns that can be read off the holes of a layout without skip rules.
 *
 * @param status whether they settle it
 * @param readings what fits, best first; at most {@link PatternInference#MOST_READINGS}
 * @param marginMm by how many mm of cost the best reading must be ahead of every other one to be
 *     taken without asking; grows with how uneven the measured positions are
 * @param search how the search ended, with all that it found
 * @param findings what is to be said about it: errors unless the status is {@link Status#SURE};
 *     nothing where the layout has errors of its own, which the rules on layouts report
 */
public record Inference(
    Status status,
    List<Reading> readings,
    double marginMm,
    LabelResult search,
    List<Finding> findings) {

  /** Whether the holes settle the pattern. */
  public enum Status {
    /** One reading is better than every other one by more than the margin. */
    SURE,
    /** Several readings are nearly as good, or the search ended at its limit. */
    UNSURE,
    /** No pattern fits the holes, or the layout has errors of its own. */
    NONE
  }

  /** Nothing was read, because the layout has errors of its own that forbid it. */
  public static Inference nothing() {
    return none(List.of());
  }

  /** Nothing was read, for these reasons. */
  static Inference none(List<Finding> why) {
    LabelResult nothing =
        new LabelResult(
            LabelResult.Status.PROVEN_ABSENT, List.of(), List.of(), Optional.empty(), 0);
    return new Inference(Status.NONE, List.of(), 0, nothing, why);
  }

  /** Copies the lists. */
  public Inference {
    readings = List.copyOf(readings);
    findings = List.copyOf(findings);
  }
}
