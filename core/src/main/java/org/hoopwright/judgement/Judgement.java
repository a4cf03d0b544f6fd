package org.hoopwright.judgement;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.finding.Finding;
import org.hoopwright.replay.ForceHistory;

/**
 * What a plan asks of this bench and of this string. Rests on estimates; nothing was measured but
 * what the bench's own tests say.
 *
 * @param clamps every clamp that the plan uses, by name
 * @param bites the spans of which some place is bitten more than once, in their own order
 * @param along the most that squeezes the hoop along its long axis
 * @param across the most that squeezes it across
 * @param imbalance the most by which left and right mains together differ; positive when the right
 *     ones pull more
 * @param findings what a person should mind
 */
public record Judgement(
    List<ClampJudgement> clamps,
    List<Bites> bites,
    Peak along,
    Peak across,
    Peak imbalance,
    List<Finding> findings) {

  /** Copies the lists. */
  public Judgement {
    clamps = List.copyOf(clamps);
    bites = List.copyOf(bites);
    findings = List.copyOf(findings);
  }

  /**
   * Judges a plan.
   *
   * @param plan a proven plan
   * @param history what is borne after each of its steps
   * @throws IllegalArgumentException when the history is that of a plan in which nothing is pulled
   */
  public static Judgement of(BenchPlan plan, ForceHistory history) {
    List<ClampJudgement> clamps = ClampJudge.of(plan, history);
    List<Finding> findings = new ArrayList<>(ClampJudge.findings(plan, clamps));
    findings.addAll(withoutForces(plan));
    return new Judgement(
        clamps,
        BiteJudge.of(plan),
        HoopJudge.peak(history, s -> s.along()),
        HoopJudge.peak(history, s -> s.across()),
        HoopJudge.imbalance(history),
        findings);
  }

  /**
   * What a person should mind about a plan. Forces are worked out only when the bench has tests to
   * hold them against.
   *
   * @param plan a proven plan
   */
  public static List<Finding> findings(BenchPlan plan) {
    boolean tested =
        !plan.job().bench().machineClampTests().isEmpty()
            || !plan.job().bench().startingClampTests().isEmpty();
    return tested ? of(plan, ForceHistory.of(plan)).findings() : withoutForces(plan);
  }

  private static List<Finding> withoutForces(BenchPlan plan) {
    List<Finding> findings = new ArrayList<>(BiteJudge.mark(plan));
    findings.addAll(NeighbourJudge.of(plan));
    findings.addAll(KnotJudge.of(plan));
    return findings;
  }
}
