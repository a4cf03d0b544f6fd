package org.hoopwright.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.ClampSide;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.Start;
import org.hoopwright.bench.Step;
import org.hoopwright.finding.Finding;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Route;
import org.hoopwright.units.Force;

/**
 * A bench plan written by hand, one step a line:
 *
 * <pre>
 * cut 0                        set machine-1 L2 L2H 15        knot short
 * lace short L1                outside starting-1 L2 L2T 12   knot long R1H R1 tie-off-knot
 * weave long X4                free machine-1                 trim short
 * lace long L1 L1H L1T         pull L2 L2T R2 R2T             hold L1 L1T
 * unlace long R2               pull L1 L1T =200               release
 * check
 * </pre>
 *
 * Passes and knots that are not spelled out are the route's; tensions are the job's.
 */
final class PlanText {

  private final Bed bed;
  private final Route route;
  private final Job job;
  private final Start start;
  private final List<String> lines;
  private final List<Finding> findings;

  PlanText(Bed bed, Route route, Job job, Start start, List<Finding> findings, List<String> lines) {
    this.bed = bed;
    this.route = route;
    this.job = job;
    this.start = start;
    this.findings = List.copyOf(findings);
    this.lines = List.copyOf(lines);
  }

  List<String> lines() {
    return lines;
  }

  PlanText on(Bed other) {
    return new PlanText(other, route, job, start, findings, lines);
  }

  PlanText with(Job other) {
    return new PlanText(bed, route, other, start, findings, lines);
  }

  PlanText with(Finding finding) {
    return new PlanText(bed, route, job, start, List.of(finding), lines);
  }

  PlanText with(List<String> others) {
    return new PlanText(bed, route, job, start, findings, others);
  }

  /** The n-th line that reads so, from 1, replaced by these; by none to drop it. */
  PlanText replace(String line, int n, String... by) {
    List<String> all = new ArrayList<>();
    int seen = 0;
    for (String l : lines) {
      if (l.equals(line) && ++seen == n) {
        all.addAll(List.of(by));
      } else {
        all.add(l);
      }
    }
    if (seen < n) {
      throw new AssertionError("no line " + line);
    }
    return with(all);
  }

  PlanText replace(String line, String... by) {
    return replace(line, 1, by);
  }

  /** This line put before the first that reads so. */
  PlanText before(String line, String... added) {
    List<String> all = new ArrayList<>(List.of(added));
    all.add(line);
    return replace(line, all.toArray(String[]::new));
  }

  PlanText append(String... added) {
    List<String> all = new ArrayList<>(lines);
    all.addAll(List.of(added));
    return with(all);
  }

  BenchPlan plan() {
    List<Double> cut = route.pieces().stream().map(p -> 5000.0).toList();
    List<Step> steps = lines.stream().map(this::step).toList();
    return new BenchPlan(bed, route, job, Optional.of(start), List.of(), cut, steps, findings);
  }

  List<Breach> breaches() {
    return Replay.check(plan());
  }

  private Step step(String line) {
    String[] w = line.split(" ");
    return switch (w[0]) {
      case "cut" -> new Step.Cut(Integer.parseInt(w[1]), 5000, line);
      case "lace" -> {
        Pass p = pass(w);
        yield new Step.Lace(p.span(), p.from(), p.to(), piece(end(w[1])), end(w[1]), line);
      }
      case "weave" -> {
        Pass p = pass(w);
        yield new Step.Weave(p.span(), p.from(), p.to(), piece(end(w[1])), end(w[1]), line);
      }
      case "unlace" -> new Step.Unlace(SpanId.of(w[2]), piece(end(w[1])), end(w[1]), line);
      case "pull" -> pull(w, line);
      case "release" -> new Step.Release(line);
      case "hold" -> new Step.Hold(SpanId.of(w[1]), HoleId.of(w[2]), line);
      case "set" -> clamp(w, ClampSide.INSIDE, line);
      case "outside" -> clamp(w, ClampSide.OUTSIDE, line);
      case "free" -> new Step.FreeClamp(w[1], line);
      case "knot" -> knot(w, line);
      case "trim" -> new Step.Trim(piece(end(w[1])), end(w[1]), line);
      case "check" -> new Step.Check(line);
      default -> throw new AssertionError("no such step: " + line);
    };
  }

  private static Step clamp(String[] w, ClampSide side, String line) {
    return new Step.SetClamp(
        w[1], SpanId.of(w[2]), HoleId.of(w[3]), Double.parseDouble(w[4]), side, line);
  }

  private Step pull(String[] w, String line) {
    List<SpanId> tails = new ArrayList<>();
    List<HoleId> at = new ArrayList<>();
    double tension = job.mainsTension(bed.layout()).newtons();
    for (int i = 1; i < w.length; i++) {
      if (w[i].startsWith("=")) {
        tension = Double.parseDouble(w[i].substring(1));
      } else if (i % 2 == 1) {
        SpanId span = SpanId.of(w[i]);
        tails.add(span);
        if (span.isCross()) {
          tension = job.crossesTension(bed.layout()).newtons();
        }
      } else {
        at.add(HoleId.of(w[i]));
      }
    }
    return new Step.Pull(tails, at, Force.ofNewtons(tension), line);
  }

  private Step knot(String[] w, String line) {
    EndName end = end(w[1]);
    Knot own = route.end(end).orElseThrow().finish();
    Knot knot =
        w.length == 2
            ? own
            : new Knot(
                w[4].equals("starting-knot") ? Knot.Kind.STARTING : Knot.Kind.TIE_OFF,
                HoleId.of(w[2]),
                SpanId.of(w[3]));
    return new Step.TieKnot(knot.hole(), knot.anchor(), knot.kind(), piece(end), end, line);
  }

  private Pass pass(String[] w) {
    SpanId span = SpanId.of(w[2]);
    if (w.length > 3) {
      return new Pass(span, HoleId.of(w[3]), HoleId.of(w[4]));
    }
    return route.pieces().stream()
        .flatMap(p -> p.ends().stream())
        .flatMap(e -> e.passes().stream())
        .filter(p -> p.span().equals(span))
        .findFirst()
        .orElseThrow();
  }

  private int piece(EndName end) {
    for (int i = 0; i < route.pieces().size(); i++) {
      Optional<?> found = route.pieces().get(i).end(end);
      if (found.isPresent()) {
        return i;
      }
    }
    return end == EndName.SHORT || end == EndName.LONG ? 0 : 1;
  }

  private static EndName end(String word) {
    Map<String, EndName> words = new TreeMap<>();
    for (EndName name : EndName.values()) {
      words.put(name.word(), name);
    }
    return words.get(word);
  }
}
