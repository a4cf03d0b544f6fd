package org.hoopwright;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.Assignment;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Inference;
import org.hoopwright.bed.PatternInference;
import org.hoopwright.bed.Reading;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.Findings;
import org.hoopwright.finding.HoopwrightFault;
import org.hoopwright.frame.Layout;

/**
 * The bed of a layout without errors of its own: by its skip rules where it states them, else as
 * read off its holes.
 */
final class FrameReading {

  private FrameReading() {}

  static Assignment of(Layout layout) {
    if (layout.mainsSkip().isPresent()) {
      return StatedAssignment.assign(layout);
    }
    Inference inference = PatternInference.infer(layout);
    List<Finding> findings = new ArrayList<>(inference.findings());
    Optional<Bed> bed = Optional.empty();
    if (inference.status() == Inference.Status.SURE) {
      Reading reading = inference.readings().get(0);
      Assignment read = StatedAssignment.assign(reading.layout());
      findings.addAll(read.findings());
      if (read.bed().isPresent()
          && !read.bed().get().labels().equals(reading.labelling().labels())) {
        throw new HoopwrightFault(
            "The skip rules that were written for "
                + layout
                + " do not give the pattern that was read off its holes.");
      }
      bed = read.bed();
    }
    return new Assignment(
        Findings.hasErrors(findings) ? Optional.empty() : bed, Findings.sorted(findings));
  }
}
