package org.hoopwright.judgement;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.Bench;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.ClampRating;
import org.hoopwright.bench.ClampRating.Verdict;
import org.hoopwright.bench.Step;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.TensionRange;
import org.hoopwright.material.StringSpec;
import org.hoopwright.replay.ForceHistory;
import org.hoopwright.replay.Interval;
import org.hoopwright.replay.StepForces;
import org.hoopwright.units.Force;
import org.hoopwright.units.ForceUnit;

/** Holds what each clamp bears against what it was tested to hold. */
final class ClampJudge {

  private static final String STARTING = "starting";

  private ClampJudge() {}

  /** Judges every clamp that bears something, by name. */
  static List<ClampJudgement> of(BenchPlan plan, ForceHistory history) {
    Map<String, SpanId> on = new HashMap<>(); // looked up, never gone through
    Map<String, ClampJudgement> judged = new TreeMap<>();
    int next = 0;
    for (StepForces s : history.steps()) {
      for (; next < s.step(); next++) {
        if (plan.steps().get(next) instanceof Step.SetClamp set) {
          on.put(set.clamp(), set.span());
        }
      }
      for (Map.Entry<String, Interval> e : s.clamps().entrySet()) {
        SpanId span = on.get(e.getKey());
        if (span != null) { // what is on was set before
          ClampJudgement now = judge(plan, s.step(), e.getKey(), span, e.getValue());
          judged.merge(e.getKey(), now, ClampJudge::worse);
        }
      }
    }
    return List.copyOf(judged.values());
  }

  private static ClampJudgement judge(
      BenchPlan plan, int step, String clamp, SpanId span, Interval load) {
    Layout layout = plan.bed().layout();
    StringSpec string = plan.job().string(span, layout);
    Bench bench = plan.job().bench();
    ClampRating rating =
        clamp.startsWith(STARTING)
            ? bench.startingClampRating(string)
            : bench.machineClampRating(string);
    Verdict verdict = rating.verdict(load.low(), load.high());
    return new ClampJudgement(clamp, new Peak(step, load), span, verdict, step, span, rating);
  }

  private static ClampJudgement worse(ClampJudgement a, ClampJudgement b) {
    ClampJudgement peak = b.peak().newtons().high() > a.peak().newtons().high() ? b : a;
    ClampJudgement worst = b.verdict().compareTo(a.verdict()) > 0 ? b : a;
    return new ClampJudgement(
        a.clamp(),
        peak.peak(),
        peak.span(),
        worst.verdict(),
        worst.worstStep(),
        worst.worstSpan(),
        worst.rating());
  }

  static List<Finding> findings(BenchPlan plan, List<ClampJudgement> clamps) {
    ForceUnit unit = unit(plan);
    List<Finding> findings = new ArrayList<>();
    Set<String> dirty = new TreeSet<>();
    for (ClampJudgement c : clamps) {
      if (c.verdict() == Verdict.SLIPS || c.verdict() == Verdict.MAY_SLIP) {
        findings.add(slip(c, unit));
      } else if (c.verdict() == Verdict.UNTESTED && tested(plan, c)) {
        findings.add(untested(c, unit));
      }
      if (c.rating().mustBeCleaned()) {
        dirty.add(kind(c));
      }
    }
    for (String kind : dirty) {
      findings.add(
          Finding.of(FindingCode.CLAMP_NOT_CLEANED)
              .message(
                  "A " + kind + " clamp has slipped and was not cleaned and tested again since.")
              .fix("Clean the jaws with what their maker allows, such as alcohol, and test again.")
              .build());
    }
    return findings;
  }

  private static ForceUnit unit(BenchPlan plan) {
    return plan.bed().layout().tension().map(TensionRange::unit).orElse(ForceUnit.NEWTON);
  }

  private static boolean tested(BenchPlan plan, ClampJudgement c) {
    Bench bench = plan.job().bench();
    return c.clamp().startsWith(STARTING)
        ? !bench.startingClampTests().isEmpty()
        : !bench.machineClampTests().isEmpty();
  }

  private static Finding slip(ClampJudgement c, ForceUnit unit) {
    String fix =
        c.clamp().startsWith(STARTING)
            ? "Start without it (hand-held or doubled-clamp), or clean its jaws and test it again."
            : "Back it up with a starting clamp close behind it, or clean its jaws and test it"
                + " again.";
    return Finding.of(FindingCode.CLAMP_MAY_SLIP)
        .about(c.worstSpan())
        .message(
            name(c)
                + (c.verdict() == Verdict.SLIPS ? " would slip" : " may slip")
                + " on "
                + c.worstSpan()
                + " at step "
                + c.worstStep()
                + ": it bears as much as "
                + shown(c.peak().newtons().high(), unit)
                + " and has let this string go at "
                + shown(c.rating().slippedFrom().map(Force::newtons).orElse(0.0), unit)
                + ".")
        .fact("step", c.worstStep())
        .fact("peak", c.peak().newtons().high(), "N")
        .fact("slipped", c.rating().slippedFrom().map(Force::newtons).orElse(0.0), "N")
        .fix(fix)
        .build();
  }

  private static Finding untested(ClampJudgement c, ForceUnit unit) {
    Finding.Builder finding = Finding.of(FindingCode.CLAMP_UNTESTED).about(c.worstSpan());
    finding.fact("step", c.peak().step()).fact("peak", c.peak().newtons().high(), "N");
    c.rating().heldUpTo().ifPresent(h -> finding.fact("held", h.newtons(), "N"));
    return finding
        .message(
            name(c)
                + " bears as much as "
                + shown(c.peak().newtons().high(), unit)
                + " at step "
                + c.peak().step()
                + ", and no test of this string goes so far"
                + c.rating()
                    .heldUpTo()
                    .map(h -> ": it has held " + shown(h.newtons(), unit) + ".")
                    .orElse("."))
        .fix("Test it at that pull before the job.")
        .build();
  }

  private static String name(ClampJudgement c) {
    return "The " + kind(c) + " clamp " + c.clamp().substring(c.clamp().lastIndexOf('-') + 1);
  }

  private static String kind(ClampJudgement c) {
    return c.clamp().substring(0, c.clamp().lastIndexOf('-'));
  }

  private static String shown(double newtons, ForceUnit unit) {
    return String.format(Locale.ROOT, "%.0f %s", newtons / unit.newtons(), unit.symbol());
  }
}
