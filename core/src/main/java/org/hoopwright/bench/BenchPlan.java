package org.hoopwright.bench;

import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.Bed;
import org.hoopwright.finding.Finding;
import org.hoopwright.route.Route;

/**
 * What a person does at the bench to string a bed by a route.
 *
 * @param bed the bed
 * @param route the route
 * @param job what was asked
 * @param start how the mains start; empty when they had started before, in a half-done job
 * @param lengths the string that each end needs, by piece and end
 * @param cutLengthsMm what to cut for each piece, in mm, rounded up
 * @param steps the steps in order
 * @param findings what is worth knowing: a clamp set away from the frame, a limit that is stretched
 */
public record BenchPlan(
    Bed bed,
    Route route,
    Job job,
    Optional<Start> start,
    List<EndLength> lengths,
    List<Double> cutLengthsMm,
    List<Step> steps,
    List<Finding> findings) {

  /** Copies the lists. */
  public BenchPlan {
    lengths = List.copyOf(lengths);
    cutLengthsMm = List.copyOf(cutLengthsMm);
    steps = List.copyOf(steps);
    findings = List.copyOf(findings);
  }
}
