package org.hoopwright.judgement;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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
          && plan.bed().beside(set.span()).stream().noneMatch(pulled::contains)
          && !backedUp(plan, i, set)) {
        findings.add(alone(plan, i + 1, set));
      } else if (step instanceof Step.Pull pull && pull.tails().size() == 1) {
        pulled.add(pull.tails().get(0));
      }
    }
    return findings;
  }

  /** Whether the next step sets a starting clamp behind it. */
  private static boolean backedUp(BenchPlan plan, int index, Step.SetClamp set) {
    return index + 1 < plan.steps().size()
        && plan.steps().get(index + 1) instanceof Step.SetClamp next
        && next.side() == ClampSide.OUTSIDE
        && next.span().equals(set.span())
        && next.near().equals(set.near());
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
                    ", ", plan.bed().beside(set.span()).stream().map(SpanId::toString).toList())
                + ".")
        .fact("step", step)
        .fix(
            "String this one with a fixed clamp, or watch for slip: no starting clamp can back it up there.")
        .build();
  }
}
