package org.hoopwright.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.hoopwright.bed.SpanId;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Pass;

/** Follows the steps of a plan to the state that they leave. Confined to one call. */
final class StepTracker {

  private final BenchPlan plan;
  private final Map<EndName, List<Pass>> passes = new LinkedHashMap<>();
  private final Map<EndName, Knot> knots = new LinkedHashMap<>();
  private final Set<SpanId> pulled = new TreeSet<>();
  private final List<ClampOn> clamps = new ArrayList<>();

  StepTracker(BenchPlan plan) {
    this.plan = plan;
    for (EndName end : EndName.values()) {
      passes.put(end, new ArrayList<>());
    }
  }

  HalfDone after(int steps) {
    for (Step step : plan.steps().subList(0, steps)) {
      follow(step);
    }
    List<StrungPiece> pieces = new ArrayList<>();
    pieces.add(piece(EndName.SHORT, EndName.LONG));
    StrungPiece crosses = piece(EndName.START, EndName.FINISH);
    if (!crosses.isEmpty()) {
      pieces.add(crosses);
    }
    return new HalfDone(pieces, pulled, clamps, List.of());
  }

  private StrungPiece piece(EndName low, EndName high) {
    return new StrungPiece(List.of(end(low), end(high)), false);
  }

  private StrungEnd end(EndName name) {
    return new StrungEnd(
        name,
        passes.getOrDefault(name, List.of()),
        Optional.ofNullable(knots.get(name)),
        knots.containsKey(name) ? OptionalDouble.empty() : tail(name));
  }

  /** What is left of the length that the plan gives this end, in mm. */
  private OptionalDouble tail(EndName name) {
    List<Pass> own = passes.getOrDefault(name, List.of());
    return plan.lengths().stream()
        .filter(l -> l.end() == name && !own.isEmpty())
        .mapToDouble(
            l -> Math.max(0, l.totalMm() - TailNeed.used(plan.bed(), plan.job(), name, own)))
        .findFirst();
  }

  private void follow(Step step) {
    if (step instanceof Step.Lace s) {
      of(s.end()).add(new Pass(s.span(), s.from(), s.to()));
    } else if (step instanceof Step.Weave s) {
      of(s.end()).add(new Pass(s.span(), s.from(), s.to()));
    } else if (step instanceof Step.Unlace s) {
      of(s.end()).removeIf(p -> p.span().equals(s.span()));
      pulled.remove(s.span());
    } else if (step instanceof Step.Pull s && s.tails().size() == 1) {
      pulled.add(s.tails().get(0));
    } else if (step instanceof Step.SetClamp s) {
      clamps.add(new ClampOn(s.clamp(), s.span(), s.near(), s.distanceMm(), s.side()));
    } else if (step instanceof Step.FreeClamp s) {
      clamps.removeIf(c -> c.clamp().equals(s.clamp()));
    } else if (step instanceof Step.TieKnot s) {
      knots.put(s.end(), new Knot(s.kind(), s.hole(), s.anchor()));
    }
  }

  private List<Pass> of(EndName end) {
    return passes.computeIfAbsent(end, e -> new ArrayList<>());
  }
}
