package org.hoopwright.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hoopwright.bed.Bed;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.EndName;
import org.hoopwright.route.LaidRuns;
import org.hoopwright.route.Moment;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Route;
import org.hoopwright.route.Run;

/**
 * Says, where a string comes to lie beside or upon another outside the frame or in a hole, on which
 * side of it, so that no two cross.
 */
final class RunsBeside {

  private final LaidRuns laid;

  /** When each string comes to lie in its holes, by its name in {@link LaidRuns.InHole}. */
  private final Map<String, Integer> time = new HashMap<>();

  private static final Map<String, String> TAILS =
      Arrays.stream(EndName.values())
          .collect(
              Collectors.toUnmodifiableMap(EndName::word, e -> "the tail of the " + Say.end(e)));

  RunsBeside(Bed bed, Route route) {
    laid = LaidRuns.of(bed, route);
    for (Moment m : route.order()) {
      String string =
          m.what() == Moment.What.PASS
              ? route.end(m.end()).orElseThrow().passes().get(m.pass()).span().toString()
              : m.end().word();
      time.put(string, time.size());
    }
  }

  /** What to mind while a pass is threaded; empty when its run and its holes are its own. */
  String pass(Pass pass) {
    StringBuilder say = new StringBuilder();
    laid.to(pass.span()).ifPresent(l -> say.append(along(l)));
    for (HoleId hole : List.of(pass.from(), pass.to())) {
      say.append(in(hole, pass.span().toString()));
    }
    return say.toString();
  }

  /** What to mind while an end is led to its knot. */
  String knot(EndName end, HoleId hole) {
    return along(laid.toKnot(end)) + in(hole, end.word());
  }

  private static String along(LaidRuns.Laid l) {
    if (!l.doubled()) {
      return "";
    }
    String upon = l.upon().isEmpty() ? "" : "upon " + names(l.upon());
    String beside =
        l.beside().isEmpty() ? "" : "on the " + l.half().word() + " side of " + names(l.beside());
    return " Along the frame it lies "
        + upon
        + (upon.isEmpty() || beside.isEmpty() ? "" : ", and ")
        + beside
        + ".";
  }

  private static String names(List<Run> runs) {
    return "the run"
        + (runs.size() == 1 ? " " : "s ")
        + Say.list(runs.stream().map(RunsBeside::name).toList());
  }

  /** A run as it is called at the bench: by where it comes from and where it goes. */
  private static String name(Run run) {
    return run.after().map(s -> "from " + s).orElseGet(() -> "from the knot in " + run.from())
        + run.before().map(s -> " to " + s).orElseGet(() -> " to the knot in " + run.to());
  }

  /** On which side of the strings that are in a hole already this one goes. */
  private String in(HoleId hole, String string) {
    List<String> all =
        laid.holes().getOrDefault(hole, List.of()).stream().map(LaidRuns.InHole::name).toList();
    int own = all.indexOf(string);
    List<String> sides = new ArrayList<>();
    sides.addAll(sideOf("face", string, all.subList(own + 1, all.size())));
    sides.addAll(sideOf("back", string, all.subList(0, Math.max(own, 0))));
    return own < 0 || sides.isEmpty()
        ? ""
        : " In " + hole + " it goes on the " + String.join(", and on the ", sides) + ".";
  }

  private List<String> sideOf(String side, String string, List<String> others) {
    List<String> earlier =
        others.stream().filter(o -> when(o) < when(string)).map(RunsBeside::string).toList();
    return earlier.isEmpty() ? List.of() : List.of(side + " side of " + Say.list(earlier));
  }

  private int when(String string) {
    return time.getOrDefault(string, -1);
  }

  private static String string(String name) {
    return TAILS.getOrDefault(name, name);
  }
}
