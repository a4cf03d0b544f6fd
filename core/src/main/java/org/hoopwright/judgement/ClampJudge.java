package org.hoopwright.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
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

  /** Loads nearer to each other than this are alike, in newtons: below what any sheet shows. */
  private static final double ALIKE_N = 0.05;

  private ClampJudge() {}

  /** Judges every clamp that bears something, by name. */
  static List<ClampJudgement> of(BenchPlan plan, ForceHistory history) {
    Map<String, Step.SetClamp> on = new TreeMap<>();
    Map<String, ClampJudgement> judged = new TreeMap<>();
    int next = 0;
    for (StepForces s : history.steps()) {
      for (; next < s.step(); next++) {
        if (plan.steps().get(next) instanceof Step.SetClamp set) {
          on.put(set.clamp(), set);
        }
      }
      for (Map.Entry<String, Interval> e : s.clamps().entrySet()) {
        Step.SetClamp set = on.get(e.getKey());
        if (set != null) { // what is on was set before
          Optional<String> partner = partner(set, s, on);
          judged.merge(e.getKey(), judge(plan, s, set, partner), ClampJudge::worse);
        }
      }
    }
    return List.copyOf(judged.values());
  }

  /**
   * The clamp with which this one shares a load: the one behind it, or the one that it backs up.
   */
  private static Optional<String> partner(
      Step.SetClamp set, StepForces forces, Map<String, Step.SetClamp> on) {
    return on.values().stream()
        .filter(o -> forces.clamps().containsKey(o.clamp()))
        .filter(set::pairsWith)
        .filter(
            o ->
                forces.together().containsKey(o.clamp())
                    || forces.together().containsKey(set.clamp()))
        .map(Step.SetClamp::clamp)
        .findFirst();
  }

  private static ClampJudgement judge(
      BenchPlan plan, StepForces forces, Step.SetClamp set, Optional<String> partner) {
    String clamp = set.clamp();
    SpanId span = set.span();
    Interval own = Objects.requireNonNull(forces.clamps().get(clamp));
    ClampRating rating = rating(plan, clamp, span);
    Interval load = own;
    if (partner.isPresent()) {
      rating = rating.with(rating(plan, partner.get(), span));
      Interval both = forces.together().get(clamp);
      load = both != null ? both : Objects.requireNonNull(forces.together().get(partner.get()));
    }
    Verdict verdict = rating.verdict(load.low(), load.high());
    return new ClampJudgement(
        clamp,
        new Peak(forces.step(), own),
        span,
        verdict,
        forces.step(),
        span,
        rating,
        partner,
        load);
  }

  private static ClampRating rating(BenchPlan plan, String clamp, SpanId span) {
    StringSpec string = plan.job().string(span, plan.bed().layout());
    Bench bench = plan.job().bench();
    return clamp.startsWith(STARTING)
        ? bench.startingClampRating(string)
        : bench.machineClampRating(string);
  }

  private static ClampJudgement worse(ClampJudgement a, ClampJudgement b) {
    ClampJudgement peak = more(b.peak().newtons(), a.peak().newtons()) ? b : a;
    int verdicts = b.verdict().compareTo(a.verdict());
    ClampJudgement worst = verdicts > 0 || (verdicts == 0 && more(b.worst(), a.worst())) ? b : a;
    return new ClampJudgement(
        a.clamp(),
        peak.peak(),
        peak.span(),
        worst.verdict(),
        worst.worstStep(),
        worst.worstSpan(),
        worst.rating(),
        worst.together(),
        worst.worst());
  }

  /** Whether the first may be more; of two that may be alike, whether it surely is more. */
  private static boolean more(Interval a, Interval b) {
    return a.high() > b.high() + ALIKE_N || (a.high() > b.high() - ALIKE_N && a.low() > b.low());
  }

  static List<Finding> findings(BenchPlan plan, List<ClampJudgement> clamps) {
    ForceUnit unit = unit(plan);
    List<Finding> findings = new ArrayList<>();
    Set<String> dirty = new TreeSet<>();
    for (ClampJudgement c : clamps) {
      // What a pair bears is said of its machine clamp.
      boolean said = c.together().isPresent() && c.clamp().startsWith(STARTING);
      if (!said && (c.verdict() == Verdict.SLIPS || c.verdict() == Verdict.MAY_SLIP)) {
        findings.add(slip(c, unit));
      } else if (!said && c.verdict() == Verdict.UNTESTED && tested(plan, c)) {
        findings.add(untested(c, unit));
      }
      if (rating(plan, c.clamp(), c.worstSpan()).mustBeCleaned()) {
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

  private static String remedy(ClampJudgement c) {
    if (c.together().isPresent()) {
      return "Clean the jaws of both, with what their makers allow, and test them again.";
    }
    return c.clamp().startsWith(STARTING)
        ? "Plan without it, or clean its jaws and test it again."
        : "Have a starting clamp behind it where one may sit, or clean its jaws and test it again.";
  }

  /** What it bears at its worst step, in words; of a pair what both bear. */
  private static String bears(ClampJudgement c, ForceUnit unit) {
    String force = shown(c.worst().high(), unit);
    return c.together()
        .map(other -> "with the " + words(other) + " behind it it bears as much as " + force)
        .orElse("it bears as much as " + force);
  }

  private static Finding slip(ClampJudgement c, ForceUnit unit) {
    return Finding.of(FindingCode.CLAMP_MAY_SLIP)
        .about(c.worstSpan())
        .message(
            name(c)
                + (c.verdict() == Verdict.SLIPS ? " would slip" : " may slip")
                + " on "
                + c.worstSpan()
                + " at step "
                + c.worstStep()
                + ": "
                + bears(c, unit)
                + (c.together().isPresent()
                    ? ", and their tests together let this string go at "
                    : " and has let this string go at ")
                + shown(c.rating().slippedFrom().map(Force::newtons).orElse(0.0), unit)
                + ".")
        .fact("step", c.worstStep())
        .fact("peak", c.worst().high(), "N")
        .fact("slipped", c.rating().slippedFrom().map(Force::newtons).orElse(0.0), "N")
        .fix(remedy(c))
        .build();
  }

  private static Finding untested(ClampJudgement c, ForceUnit unit) {
    Finding.Builder finding = Finding.of(FindingCode.CLAMP_UNTESTED).about(c.worstSpan());
    finding.fact("step", c.worstStep()).fact("peak", c.worst().high(), "N");
    c.rating().heldUpTo().ifPresent(h -> finding.fact("held", h.newtons(), "N"));
    return finding
        .message(
            "No test of this string goes as far as what "
                + words(c.clamp())
                + " bears on "
                + c.worstSpan()
                + " at step "
                + c.worstStep()
                + ": "
                + bears(c, unit)
                + c.rating()
                    .heldUpTo()
                    .map(
                        h ->
                            (c.together().isPresent() ? ", and both have held " : ", and has held ")
                                + shown(h.newtons(), unit))
                    .orElse("")
                + ".")
        .fix("Test it at that pull before the job.")
        .build();
  }

  private static String name(ClampJudgement c) {
    return "The " + words(c.clamp());
  }

  private static String words(String clamp) {
    int dash = clamp.lastIndexOf('-');
    return clamp.substring(0, dash) + " clamp " + clamp.substring(dash + 1);
  }

  private static String kind(ClampJudgement c) {
    return c.clamp().substring(0, c.clamp().lastIndexOf('-'));
  }

  private static String shown(double newtons, ForceUnit unit) {
    return String.format(Locale.ROOT, "%.0f %s", newtons / unit.newtons(), unit.symbol());
  }
}
