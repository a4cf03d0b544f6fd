package org.hoopwright.judgement;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.ClampSide;
import org.hoopwright.bench.Step;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;

/** Looks whether floating clamps find a tight neighbour each time they are set. */
final class NeighbourJudge {

  private NeighbourJudge() {}

  static List<Finding> of(BenchPlan plan) {
    if (!plan.job().bench().machineClampKind().needsNeighbour()) {
      return List.of();
    }
    List<Finding> findings = new ArrayList<>();
    Set<SpanId> pulled = new HashSet<>(); // looked up, never gone through
    for (int i = 0; i < plan.steps().size(); i++) {
      Step step = plan.steps().get(i);
      if (step instanceof Step.SetClamp set
          && set.side() == ClampSide.INSIDE
          && set.clamp().startsWith("machine")
          && neighbours(plan.bed(), set.span()).stream().noneMatch(pulled::contains)) {
        findings.add(alone(plan, i + 1, set));
      } else if (step instanceof Step.Pull pull && pull.tails().size() == 1) {
        pulled.add(pull.tails().get(0));
      }
    }
    return findings;
  }

  private static Finding alone(BenchPlan plan, int step, Step.SetClamp set) {
    return Finding.of(FindingCode.CLAMP_ALONE)
        .about(set.span())
        .message(
            "At step "
                + step
                + " the floating clamp "
                + set.clamp()
                + " goes on "
                + set.span()
                + ", and no neighbour of it is tight yet: "
                + String.join(
                    ", ",
                    neighbours(plan.bed(), set.span()).stream().map(SpanId::toString).toList())
                + ".")
        .fact("step", step)
        .fix("Back it up with a starting clamp outside until a neighbour has been pulled.")
        .build();
  }

  /** The spans that run beside this one. */
  private static List<SpanId> neighbours(Bed bed, SpanId span) {
    List<SpanId> row =
        span.isMain() ? bed.mainsLeftToRight() : bed.crosses().stream().map(c -> c.id()).toList();
    int i = row.indexOf(span);
    List<SpanId> beside = new ArrayList<>();
    if (i > 0) {
      beside.add(row.get(i - 1));
    }
    if (i + 1 < row.size()) {
      beside.add(row.get(i + 1));
    }
    return beside;
  }
}
