package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hoopwright.Plan;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.ClampRating;
import org.hoopwright.bench.Step;
import org.hoopwright.frame.TensionRange;
import org.hoopwright.judgement.Bites;
import org.hoopwright.judgement.ClampJudgement;
import org.hoopwright.judgement.Judgement;
import org.hoopwright.judgement.Peak;
import org.hoopwright.replay.ForceHistory;
import org.hoopwright.replay.Interval;
import org.hoopwright.replay.Relaxation;
import org.hoopwright.replay.StepForces;
import org.hoopwright.units.ForceUnit;
import org.jspecify.annotations.Nullable;

/**
 * What strings, clamps, knots and hoop are estimated to bear after each step, as text; and what
 * that asks of the bench. In the unit of the layout's tension range, else in newtons. No line is
 * wider than 100 characters.
 */
public final class ForceTable {

  private final BenchPlan bench;
  private final ForceHistory history;
  private final Judgement judgement;
  private final ForceUnit unit;
  private final SheetText sheet = new SheetText();

  private ForceTable(BenchPlan bench) {
    this.bench = bench;
    this.history = ForceHistory.of(bench);
    this.judgement = Judgement.of(bench, history);
    this.unit = bench.bed().layout().tension().map(TensionRange::unit).orElse(ForceUnit.NEWTON);
  }

  /** The table of a plan, lines ended by {@code \n}. */
  public static String of(Plan plan) {
    return new ForceTable(plan.bench()).write();
  }

  private String write() {
    sheet.paragraph("", "FORCES AFTER EACH STEP, " + unit.symbol());
    sheet.paragraph(
        "  ",
        "Estimates from the parameters of the plan, not measured; each a range. A string counts with"
            + " the mean along it. m is a machine clamp and s a starting clamp, with what each bears."
            + " Along and across squeeze the hoop. R-L is by how much the right mains together pull"
            + " more than the left ones.");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("step", "does", "string", "carries", "along", "across", "R-L", "clamps"));
    StepForces before = null;
    for (StepForces s : history.steps()) {
      rows.add(row(s, before));
      before = s;
    }
    sheet.table(2, List.of(true, false, false, true, true, true, true), rows);
    clamps();
    hoop();
    knots();
    bites();
    firstDay();
    return sheet.toString();
  }

  private List<String> row(StepForces s, @Nullable StepForces before) {
    Step step = bench.steps().get(s.step() - 1);
    Optional<SpanId> span = span(step, before);
    String clamps =
        s.clamps().entrySet().stream()
            .map(e -> shortName(e.getKey()) + " " + shown(e.getValue()))
            .collect(Collectors.joining(", "));
    return List.of(
        Integer.toString(s.step()),
        does(step),
        span.map(SpanId::toString).orElse(""),
        span.flatMap(x -> Optional.ofNullable(s.spans().get(x))).map(this::shown).orElse(""),
        shown(s.along()),
        shown(s.across()),
        shown(s.rightMinusLeft()),
        clamps);
  }

  private static String does(Step step) {
    if (step instanceof Step.Pull p) {
      return p.tails().size() == 1 ? "pull" : "pull both";
    }
    if (step instanceof Step.SetClamp s) {
      return "set " + shortName(s.clamp());
    }
    return step instanceof Step.FreeClamp f ? "free " + shortName(f.clamp()) : step.word();
  }

  /** The span that a step is about; of a release the one that was pulled last. */
  private Optional<SpanId> span(Step step, @Nullable StepForces before) {
    if (step instanceof Step.Pull p) {
      return Optional.of(p.tails().get(0));
    }
    if (step instanceof Step.SetClamp s) {
      return Optional.of(s.span());
    }
    if (step instanceof Step.Release && before != null) {
      for (int i = before.step() - 1; i >= 0; i--) {
        if (bench.steps().get(i) instanceof Step.Pull p) {
          return Optional.of(p.tails().get(0));
        }
      }
    }
    return Optional.empty();
  }

  private void clamps() {
    sheet.heading("CLAMPS");
    List<List<String>> rows = new ArrayList<>();
    for (ClampJudgement c : judgement.clamps()) {
      rows.add(
          List.of(
              c.clamp().replace('-', ' '),
              "at most " + whole(c.peak().newtons()),
              "on " + c.span() + ", step " + c.peak().step(),
              verdict(c)));
    }
    sheet.table(2, List.of(false, false, false), rows);
  }

  private String verdict(ClampJudgement c) {
    return c.together().map(other -> "with " + other.replace('-', ' ') + ": ").orElse("")
        + verdictOf(c);
  }

  private String verdictOf(ClampJudgement c) {
    ClampRating rating = c.rating();
    return switch (c.verdict()) {
      case HOLDS ->
          "holds: tested up to " + rating.heldUpTo().map(f -> number(f.newtons())).orElse("");
      case UNTESTED ->
          rating
              .heldUpTo()
              .map(f -> "not tested so far: has held " + number(f.newtons()))
              .orElse("not tested with this string");
      case MAY_SLIP, SLIPS ->
          (c.verdict() == ClampRating.Verdict.SLIPS ? "slips" : "may slip")
              + " at step "
              + c.worstStep()
              + " on "
              + c.worstSpan()
              + ": let go at "
              + rating.slippedFrom().map(f -> number(f.newtons())).orElse("");
    };
  }

  private void hoop() {
    sheet.heading("HOOP");
    List<List<String>> rows = new ArrayList<>();
    rows.add(peak("most along", judgement.along()));
    rows.add(peak("most across", judgement.across()));
    rows.add(peak("most right minus left", judgement.imbalance()));
    StepForces end = last();
    rows.add(List.of("at the end, right minus left", whole(end.rightMinusLeft())));
    sheet.table(2, List.of(false), rows);
  }

  private List<String> peak(String what, Peak peak) {
    return List.of(what, whole(peak.newtons()) + ", at step " + peak.step());
  }

  private void knots() {
    sheet.heading("KNOTS, at the end");
    List<List<String>> rows = new ArrayList<>();
    last()
        .knots()
        .forEach((end, load) -> rows.add(List.of(Words.end(end), "bears " + whole(load))));
    sheet.table(2, List.of(false), rows);
  }

  private void bites() {
    if (judgement.bites().isEmpty()) {
      return;
    }
    sheet.heading("BITTEN MORE THAN ONCE AT ONE PLACE");
    List<List<String>> rows = new ArrayList<>();
    for (Bites b : judgement.bites()) {
      rows.add(
          List.of(
              b.span().toString(),
              b.times() + " times",
              Decimals.near(b.fromMm(), 0)
                  + " to "
                  + Decimals.near(b.toMm(), 0)
                  + " mm from "
                  + bench.bed().span(b.span()).from(),
              b.sensitivity().words()));
    }
    sheet.table(2, List.of(false, false, false), rows);
  }

  /** A term of its own: no other number on the sheet holds it. */
  private void firstDay() {
    sheet.heading("A DAY LATER, by what string loses by itself");
    Map<SpanId, Interval> later = Relaxation.afterFirstDay(bench, last().spans());
    List<List<String>> rows = new ArrayList<>();
    for (boolean mains : new boolean[] {true, false}) {
      later.entrySet().stream()
          .filter(e -> e.getKey().isMain() == mains)
          .map(Map.Entry::getValue)
          .reduce(Interval::hull)
          .ifPresent(i -> rows.add(List.of(mains ? "mains" : "crosses", whole(i))));
    }
    sheet.table(2, List.of(false), rows);
  }

  private StepForces last() {
    return history.steps().get(history.steps().size() - 1);
  }

  private static String shortName(String clamp) {
    int dash = clamp.lastIndexOf('-');
    return clamp.charAt(0) + clamp.substring(dash + 1);
  }

  private String whole(Interval i) {
    return shown(i).replace("..", " to ") + " " + unit.symbol();
  }

  /** Estimates are no better known than to a unit. */
  private String shown(Interval i) {
    String low = digits(i.low());
    String high = digits(i.high());
    return low.equals(high) ? low : low + ".." + high;
  }

  private String number(double newtons) {
    return digits(newtons) + " " + unit.symbol();
  }

  private String digits(double newtons) {
    String text = Decimals.near(newtons / unit.newtons(), 0);
    return text.equals("-0") ? "0" : text;
  }
}
