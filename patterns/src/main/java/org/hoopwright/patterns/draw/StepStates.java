package org.hoopwright.patterns.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.Step;
import org.hoopwright.route.EndName;

/**
 * How each element of a plan's picture looks after each step.
 *
 * <p>Elements are named as in the picture. A state is a class: {@code open}, {@code laced}, {@code
 * pulled} for spans, {@code open} and {@code laid} for runs and knots, {@code off} and {@code on}
 * for clamps, grips and the starting clamp's mark.
 */
final class StepStates {

  /** The state of what is there. */
  static final String ON = "on";

  /** The state of what is not there. */
  static final String OFF = "off";

  private static final String OPEN = "open";
  private static final String LAID = "laid";

  private final Map<String, TreeMap<Integer, String>> states = new LinkedHashMap<>();
  private final Map<String, Set<Integer>> touched = new LinkedHashMap<>();

  StepStates(BenchPlan plan) {
    List<Run> runs = Run.of(plan.route());
    plan.bed().spans().forEach(s -> set("span-" + s.id(), 0, OPEN));
    runs.forEach(r -> set(r.id(), 0, OPEN));
    for (EndName end : EndName.values()) {
      set("knot-" + end.word(), 0, OPEN);
    }
    Map<String, Integer> clamps = new LinkedHashMap<>();
    List<Integer> grips = new ArrayList<>();
    for (int i = 0; i < plan.steps().size(); i++) {
      int n = i + 1;
      Step step = plan.steps().get(i);
      if (step instanceof Step.Lace s) {
        pass(runs, s.span(), n, "laced", LAID);
      } else if (step instanceof Step.Weave s) {
        pass(runs, s.span(), n, "laced", LAID);
      } else if (step instanceof Step.Unlace s) {
        pass(runs, s.span(), n, OPEN, OPEN);
      } else if (step instanceof Step.Pull s) {
        for (SpanId span : s.tails()) {
          if (s.tails().size() == 1) {
            set("span-" + span, n, "pulled");
          }
          touch("span-" + span, n);
        }
        toggle("grip-" + n, n, ON);
        grips.add(n);
      } else if (step instanceof Step.Release) {
        grips.forEach(g -> toggle("grip-" + g, n, OFF));
        grips.clear();
      } else if (step instanceof Step.Hold s) {
        touch("span-" + s.span(), n);
      } else if (step instanceof Step.SetClamp s) {
        Integer before = clamps.put(s.clamp(), n);
        if (before != null) {
          toggle("clamp-" + before, n, OFF);
        }
        toggle("clamp-" + n, n, ON);
      } else if (step instanceof Step.FreeClamp s) {
        Integer before = clamps.remove(s.clamp());
        if (before != null) {
          toggle("clamp-" + before, n, OFF);
        }
        if (s.clamp().startsWith("starting")) {
          states.computeIfAbsent("start-mark", k -> new TreeMap<>(Map.of(0, OFF))).put(n, ON);
        }
      } else if (step instanceof Step.TieKnot s) {
        set("knot-" + s.end().word(), n, LAID);
        set("run-" + s.end().word() + "-knot", n, LAID);
      }
    }
  }

  private void pass(List<Run> runs, SpanId span, int n, String state, String run) {
    set("span-" + span, n, state);
    for (Run r : runs) {
      boolean leads = r.before().filter(span::equals).isPresent();
      if (leads || (r.id().equals(Run.CENTRE_LOOP) && r.after().equals(span))) {
        boolean both = run.equals(OPEN) || !r.id().equals(Run.CENTRE_LOOP) || bothSides(r);
        set(r.id(), n, both ? run : OPEN);
      }
    }
  }

  private boolean bothSides(Run loop) {
    return loop.before().filter(b -> !last("span-" + b).equals(OPEN)).isPresent()
        && !last("span-" + loop.after()).equals(OPEN);
  }

  private String last(String name) {
    TreeMap<Integer, String> changes = states.get(name);
    return changes == null ? OPEN : changes.lastEntry().getValue();
  }

  private void set(String name, int step, String state) {
    states.computeIfAbsent(name, k -> new TreeMap<>()).put(step, state);
    if (step > 0) {
      touch(name, step);
    }
  }

  private void toggle(String name, int step, String state) {
    states.computeIfAbsent(name, k -> new TreeMap<>(Map.of(0, OFF))).put(step, state);
    touch(name, step);
  }

  private void touch(String name, int step) {
    touched.computeIfAbsent(name, k -> new LinkedHashSet<>()).add(step);
  }

  /** The state of an element after a step. */
  String at(String name, int step) {
    TreeMap<Integer, String> changes = states.get(name);
    return changes == null ? OFF : changes.floorEntry(step).getValue();
  }

  /** Whether a step is about this element. */
  boolean now(String name, int step) {
    Set<Integer> steps = touched.get(name);
    return steps != null && steps.contains(step);
  }

  /**
   * How an element looks after a step.
   *
   * @param all whether what it looks like after every other step is added, for pages that step
   */
  Look look(String name, int step, boolean all, String more) {
    String classes = more + " " + at(name, step) + (now(name, step) && !all ? " now" : "");
    if (!all) {
      return Look.of(classes);
    }
    Map<String, String> data = new LinkedHashMap<>();
    StringBuilder changes = new StringBuilder();
    TreeMap<Integer, String> own = states.get(name);
    if (own != null) {
      own.forEach(
          (n, state) ->
              changes.append(changes.length() == 0 ? "" : " ").append(n).append(':').append(state));
    }
    data.put("data-states", changes.toString());
    StringBuilder steps = new StringBuilder();
    for (int n : touched.getOrDefault(name, Set.of())) {
      steps.append(steps.length() == 0 ? "" : " ").append(n);
    }
    data.put("data-now", steps.toString());
    return new Look(classes, data);
  }
}
