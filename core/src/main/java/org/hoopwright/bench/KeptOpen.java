package org.hoopwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hoopwright.bed.Bed;
import org.hoopwright.frame.HoleId;
import org.hoopwright.route.CoveredHole;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Moment;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Route;
import org.hoopwright.route.StringEnd;

/**
 * Says, before a run or a knot covers a hole that a later pass needs, how that hole is kept open.
 */
final class KeptOpen {

  private final Bed bed;
  private final Route route;
  private final Map<String, List<String>> before = new TreeMap<>();

  KeptOpen(Bed bed, Route route) {
    this.bed = bed;
    this.route = route;
    for (CoveredHole c : route.measures().coveredHoles()) {
      Moment at = firstCovering(c);
      if (at != null) {
        before
            .computeIfAbsent(key(at.end(), at.what(), at.pass()), k -> new ArrayList<>())
            .add(say(c));
      }
    }
  }

  /** What to say before this moment, in the order of the passes that need the holes. */
  List<String> before(EndName end, Moment.What what, int pass) {
    return before.getOrDefault(key(end, what, pass), List.of());
  }

  private static String key(EndName end, Moment.What what, int pass) {
    return end.word() + " " + what + " " + pass;
  }

  private static String say(CoveredHole c) {
    return switch (c.keepOpen()) {
      case SCRAP_STRING ->
          "Before the next run covers "
              + c.hole()
              + ", lay a scrap of string through it: "
              + c.span()
              + " needs it later.";
      case AWL ->
          "Keep room in " + c.hole() + " with an awl: " + c.span() + " must still go through it.";
      case THREAD_FIRST ->
          "Thread " + c.span() + " through " + c.hole() + " first and leave it slack.";
    };
  }

  /** The first moment at which the hole is covered as the route says. */
  private @org.jspecify.annotations.Nullable Moment firstCovering(CoveredHole c) {
    for (Moment m : route.order()) {
      StringEnd end = route.end(m.end()).orElseThrow();
      boolean covers =
          switch (c.by()) {
            case PASS ->
                m.what() == Moment.What.PASS
                    && (end.passes().get(m.pass()).from().equals(c.hole())
                        || end.passes().get(m.pass()).to().equals(c.hole()));
            case KNOT -> m.what() == Moment.What.KNOT && end.finish().hole().equals(c.hole());
            case RUN -> runLiesOver(end, m, c.hole());
          };
      if (covers) {
        return m;
      }
    }
    return null;
  }

  private boolean runLiesOver(StringEnd end, Moment m, HoleId hole) {
    HoleId from;
    HoleId to;
    if (m.what() == Moment.What.PASS) {
      if (m.pass() == 0) {
        return false;
      }
      from = end.passes().get(m.pass() - 1).to();
      to = end.passes().get(m.pass()).from();
    } else if (m.what() == Moment.What.KNOT) {
      List<Pass> passes = end.passes();
      from =
          passes.isEmpty()
              ? route.end(EndName.FINISH).orElseThrow().passes().get(0).from()
              : passes.get(passes.size() - 1).to();
      to = end.finish().hole();
    } else {
      return false;
    }
    if (from.side() != hole.side()) {
      return false;
    }
    int p = bed.ring().place(hole);
    int a = bed.ring().place(from);
    int b = bed.ring().place(to);
    return Math.min(a, b) < p && p < Math.max(a, b);
  }
}
