package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.Step;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Pass;
import org.hoopwright.route.RouteNotation;
import org.hoopwright.route.StringEnd;

/** The steps of a plan in phases, each with a heading that says what it is about. */
final class SheetPhases {

  /** Steps under one heading; {@code first} is the number of its first step. */
  record Phase(String heading, int first, List<Step> steps) {}

  /** What a step belongs to; a phase lasts while it stays the same. */
  private record Key(String kind, int piece, EndName end, boolean main) {}

  private static final Key READY = new Key("ready", 0, EndName.SHORT, false);
  private static final Key MAINS = new Key("mains", 0, EndName.SHORT, true);
  private static final Key FINISH = new Key("finish", 0, EndName.SHORT, false);

  private final BenchPlan plan;
  private final Set<SpanId> opening = new HashSet<>();

  private SheetPhases(BenchPlan plan) {
    this.plan = plan;
    for (EndName name : List.of(EndName.SHORT, EndName.LONG)) {
      List<Pass> passes = plan.route().end(name).map(StringEnd::passes).orElse(List.of());
      passes.stream().limit(plan.route().opening(name)).forEach(p -> opening.add(p.span()));
    }
  }

  static List<Phase> of(BenchPlan plan) {
    return new SheetPhases(plan).phases();
  }

  private List<Phase> phases() {
    List<Step> steps = plan.steps();
    List<Key> keys = keys(steps);
    List<Phase> phases = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= steps.size(); i++) {
      if (i == steps.size() || !keys.get(i).equals(keys.get(from))) {
        List<Step> these = steps.subList(from, i);
        phases.add(new Phase(heading(keys.get(from), these), from + 1, these));
        from = i;
      }
    }
    return phases;
  }

  /** What each step belongs to; a check belongs to what follows it. */
  private List<Key> keys(List<Step> steps) {
    Key[] keys = new Key[steps.size()];
    int startEnds = startEnds(steps);
    Key now = READY;
    for (int i = 0; i < keys.length; i++) {
      now = key(steps.get(i), i, startEnds, now);
      keys[i] = now;
    }
    Key next = FINISH;
    for (int i = keys.length - 1; i >= 0; i--) {
      if (steps.get(i) instanceof Step.Check) {
        keys[i] = next;
      }
      next = keys[i];
    }
    return List.of(keys);
  }

  /** The index just after the anchor main's own pull has been let go. */
  private int startEnds(List<Step> steps) {
    // A plan that goes on from a half-done job has no start of its own.
    List<SpanId> anchor = plan.start().map(s -> List.of(s.anchor())).orElse(List.of());
    boolean pulled = false;
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i) instanceof Step.Pull p && p.tails().equals(anchor)) {
        pulled = true;
      } else if (pulled && steps.get(i) instanceof Step.Release) {
        return i + 1;
      }
    }
    return 0;
  }

  private Key key(Step step, int index, int startEnds, Key now) {
    if (step instanceof Step.Cut cut) {
      return new Key("ready", cut.piece(), EndName.SHORT, false);
    }
    if (index < startEnds) {
      return now.equals(READY) && step instanceof Step.Check
          ? READY
          : new Key("start", 0, EndName.SHORT, true);
    }
    if (step instanceof Step.Lace s) {
      return pass(s.span(), s.piece(), s.end());
    }
    if (step instanceof Step.Weave s) {
      return pass(s.span(), s.piece(), s.end());
    }
    if (step instanceof Step.TieKnot s) {
      return new Key("knot", s.piece(), s.end(), false);
    }
    if (step instanceof Step.Trim) {
      return FINISH;
    }
    return index == startEnds ? MAINS : now;
  }

  private Key pass(SpanId span, int piece, EndName end) {
    return opening.contains(span) ? MAINS : new Key("passes", piece, end, span.isMain());
  }

  private static String heading(Key key, List<Step> steps) {
    return switch (key.kind()) {
      case "ready" -> key.piece() == 0 ? "Get ready" : "Get the second piece ready";
      case "start" -> "Start the mains";
      case "mains" -> "Go on with the mains";
      case "knot" -> "Tie the " + Words.end(key.end());
      case "passes" ->
          key.end() == EndName.FINISH
              ? PlainText.capitalised(passes(key, steps))
              : PlainText.capitalised(Words.end(key.end())) + ": " + passes(key, steps);
      default -> "Finish";
    };
  }

  private static String passes(Key key, List<Step> steps) {
    List<Pass> passes = new ArrayList<>();
    for (Step step : steps) {
      if (step instanceof Step.Lace s) {
        passes.add(new Pass(s.span(), s.from(), s.to()));
      } else if (step instanceof Step.Weave s) {
        passes.add(new Pass(s.span(), s.from(), s.to()));
      }
    }
    String word = key.main() ? "main" : passes.size() == 1 ? "cross" : "crosses";
    return word + " " + RouteNotation.spans(passes).replace("-", " to ");
  }
}
