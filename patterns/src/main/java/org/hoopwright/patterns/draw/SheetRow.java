package org.hoopwright.patterns.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.Step;

/**
 * A row of the printed list of work: one step, or the usual steps of one pass taken together.
 *
 * @param first number of its first step, from 1
 * @param last number of its last step
 * @param text what to do
 */
record SheetRow(int first, int last, String text) {

  /** The rows of a plan: each pass that is strung, pulled, clamped and let go is one row. */
  static List<SheetRow> of(BenchPlan plan) {
    List<SheetRow> rows = new ArrayList<>();
    List<Step> steps = plan.steps();
    int i = 0;
    while (i < steps.size()) {
      int end = endOfPass(steps, i);
      if (end < 0) {
        rows.add(new SheetRow(i + 1, i + 1, steps.get(i).say()));
        i++;
      } else {
        rows.add(new SheetRow(i + 1, end, pass(plan, steps.subList(i, end))));
        i = end;
      }
    }
    return rows;
  }

  /** The step after a usual pass that begins here, or -1 when none does. */
  private static int endOfPass(List<Step> steps, int from) {
    Optional<SpanId> span = strung(steps.get(from));
    if (span.isEmpty()
        || from + 1 >= steps.size()
        || !(steps.get(from + 1) instanceof Step.Pull pull)
        || !pull.tails().equals(List.of(span.get()))) {
      return -1;
    }
    for (int i = from + 2; i < steps.size(); i++) {
      Step step = steps.get(i);
      if (step instanceof Step.Release) {
        return i + 1;
      }
      if (!(step instanceof Step.FreeClamp || step instanceof Step.SetClamp)) {
        return -1;
      }
    }
    return -1;
  }

  private static Optional<SpanId> strung(Step step) {
    if (step instanceof Step.Lace lace) {
      return Optional.of(lace.span());
    }
    return step instanceof Step.Weave weave ? Optional.of(weave.span()) : Optional.empty();
  }

  private static String pass(BenchPlan plan, List<Step> steps) {
    StringBuilder text =
        new StringBuilder(steps.get(0).say().replace(" first, then in turn.", " first."));
    text.append(" Pull");
    for (Step step : steps) {
      if (step instanceof Step.SetClamp clamp) {
        text.append(", clamp near ").append(clamp.near());
        if (clamp.distanceMm() != plan.job().bench().clampDistanceMm()) {
          text.append(", ").append(Element.number(clamp.distanceMm())).append(" mm from it");
        }
      }
    }
    return text.append('.').toString();
  }
}
