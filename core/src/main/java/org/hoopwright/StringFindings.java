package org.hoopwright;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.StringNeed;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.route.Piece;

/** Says where the string at hand is not enough for a plan. */
final class StringFindings {

  private StringFindings() {}

  static List<Finding> of(BenchPlan plan) {
    List<Finding> findings = new ArrayList<>();
    for (StringNeed need : StringNeed.of(plan)) {
      switch (need.verdict()) {
        case SHORT ->
            findings.add(
                finding(FindingCode.STRING_SHORT, need)
                    .message(
                        needs(plan, need)
                            + ": at least "
                            + mm(Math.ceil(need.leastMm() - need.atHandMm()))
                            + " too little.")
                    .fact("missing", Math.ceil(need.leastMm() - need.atHandMm()), "mm")
                    .fix("Take a longer set, or a route that needs less string.")
                    .build());
        case TIGHT ->
            findings.add(
                finding(FindingCode.STRING_TIGHT, need)
                    .message(needs(plan, need) + ", which may just be enough.")
                    .fix(
                        "Waste nothing at knots and tensioner, measure the short end, or take a"
                            + " longer set.")
                    .build());
        case ENOUGH -> {}
      }
    }
    return findings;
  }

  private static Finding.Builder finding(FindingCode code, StringNeed need) {
    return Finding.of(code)
        .fact("least", Math.ceil(need.leastMm()), "mm")
        .fact("most", Math.ceil(need.mostMm()), "mm")
        .fact("atHand", Math.floor(need.atHandMm()), "mm");
  }

  private static String needs(BenchPlan plan, StringNeed need) {
    return subject(plan, need)
        + mm(Math.ceil(need.leastMm()))
        + " to "
        + mm(Math.ceil(need.mostMm()))
        + " of string, and "
        + mm(Math.floor(need.atHandMm()))
        + " are at hand";
  }

  private static String subject(BenchPlan plan, StringNeed need) {
    if (need.pieces().size() == plan.route().pieces().size()) {
      return "Mains and crosses need ";
    }
    return plan.route().pieces().get(need.pieces().get(0)).role() == Piece.Role.CROSSES
        ? "The crosses need "
        : "The mains need ";
  }

  private static String mm(double value) {
    return String.format(Locale.ROOT, "%.0f mm", value);
  }
}
