package org.hoopwright;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.Assignment;
import org.hoopwright.bed.Inference;
import org.hoopwright.bed.PatternInference;
import org.hoopwright.bed.Reading;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.check.Checker;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Findings;
import org.hoopwright.frame.End;
import org.hoopwright.frame.Layout;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteSearch;

/**
 * A layout without skip rules, completed: skip rules, first and last cross, shared holes, likely
 * tie-off holes, and at which end the mains may start.
 *
 * @param inference what was read off the holes
 * @param layouts one complete layout for each reading, in their order
 * @param findings what there is to say: about the layout, about the readings and, when there is one
 *     sure reading, about the end at which its mains start
 */
public record InferredLayout(Inference inference, List<Layout> layouts, List<Finding> findings) {

  // Whether there is a route from an end is soon known on any usual frame.
  private static final long ROUTE_NODES = 2_000_000;

  /** Copies the lists. */
  public InferredLayout {
    layouts = List.copyOf(layouts);
    findings = List.copyOf(findings);
  }

  static InferredLayout of(Layout layout) {
    List<Finding> findings =
        new ArrayList<>(
            Checker.layout(
                layout.toBuilder().mainsSkip(Optional.empty()).withoutOffsets().build()));
    Inference inference =
        Findings.hasErrors(findings) ? Inference.nothing() : PatternInference.infer(layout);
    findings.addAll(inference.findings());
    List<Layout> layouts = new ArrayList<>();
    for (Reading reading : inference.readings()) {
      List<End> ends = startEnds(reading.layout());
      boolean one = ends.size() == 1 && layout.mainsStart().isEmpty();
      layouts.add(
          one ? reading.layout().toBuilder().mainsStart(ends.get(0)).build() : reading.layout());
      if (inference.status() == Inference.Status.SURE) {
        findings.add(start(layout, ends));
      }
    }
    return new InferredLayout(inference, layouts, Findings.sorted(findings));
  }

  /** The ends from which the frame has a route. */
  private static List<End> startEnds(Layout complete) {
    Assignment assignment = StatedAssignment.assign(complete);
    List<End> ends = new ArrayList<>();
    if (assignment.bed().isEmpty()) {
      return ends;
    }
    for (End end : End.values()) {
      if (complete.mainsStart().isPresent() && complete.mainsStart().get() != end) {
        continue;
      }
      RouteRequest fromEnd = RouteRequest.builder().mainsStart(end).maxNodes(ROUTE_NODES).build();
      if (RouteSearch.best(assignment.bed().get(), fromEnd).isPresent()) {
        ends.add(end);
      }
    }
    return ends;
  }

  private static Finding start(Layout layout, List<End> ends) {
    String message =
        switch (ends.size()) {
          case 0 -> "No route was found from either end; see what check says of the layout.";
          case 1 -> "The mains can start at the %s.".formatted(ends.get(0).word());
          default -> "The mains can start at either end.";
        };
    return Finding.of(FindingCode.MAINS_START_INFERRED)
        .message(message)
        .fact("ends", ends.size())
        .at("/mains/start", layout.places())
        .fix(
            ends.size() == 2
                ? "Look at the frame: the run from L1 to R1 lies at the end where the old mains started."
                : "")
        .build();
  }
}
