package org.hoopwright;

import java.util.List;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.finding.Finding;
import org.hoopwright.replay.Estimates;
import org.hoopwright.route.RankedRoute;

/**
 * A proven stringing plan: the bench plan has been replayed and breaks no rule.
 *
 * @param bench the bed, the route and the steps
 * @param ranked the route with the reason for its rank
 * @param estimates what strings, clamps and hoop are estimated to bear
 * @param cautions what to mind when string is under tension, most important first
 * @param findings warnings and notes of the layout, the bed and the plan
 */
public record Plan(
    BenchPlan bench,
    RankedRoute ranked,
    Estimates estimates,
    List<String> cautions,
    List<Finding> findings) {

  /** Copies the lists. */
  public Plan {
    cautions = List.copyOf(cautions);
    findings = List.copyOf(findings);
  }
}
