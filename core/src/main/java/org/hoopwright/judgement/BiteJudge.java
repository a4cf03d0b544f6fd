package org.hoopwright.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.ClampSide;
import org.hoopwright.bench.Start;
import org.hoopwright.bench.StartMark;
import org.hoopwright.bench.Step;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Layout;

/** Counts bites at the same place, and looks where the starting clamp's mark ends. */
final class BiteJudge {

  private BiteJudge() {}

  /** The spans of which some place is bitten more than once. */
  static List<Bites> of(BenchPlan plan) {
    Bed bed = plan.bed();
    double length = plan.job().bench().clampLengthMm();
    Map<SpanId, List<Double>> starts = new TreeMap<>();
    for (Step step : plan.steps()) {
      if (step instanceof Step.SetClamp set && set.side() == ClampSide.INSIDE) {
        double whole = bed.span(set.span()).lengthMm();
        boolean fromFirst = bed.span(set.span()).from().equals(set.near());
        starts
            .computeIfAbsent(set.span(), s -> new ArrayList<>())
            .add(fromFirst ? set.distanceMm() : whole - set.distanceMm() - length);
      }
    }
    List<Bites> bites = new ArrayList<>();
    Layout layout = bed.layout();
    starts.forEach(
        (span, at) -> {
          Sensitivity sensitivity = Sensitivity.of(plan.job().string(span, layout).material());
          most(span, at, length, sensitivity).ifPresent(bites::add);
        });
    return bites;
  }

  /** The place that most bites have in common; empty when no two meet. */
  private static Optional<Bites> most(
      SpanId span, List<Double> starts, double length, Sensitivity sensitivity) {
    Optional<Bites> most = Optional.empty();
    for (double from : starts) {
      double to = from + length;
      int times = 0;
      for (double other : starts) {
        // A bite that covers where this one begins: the place common to most begins at one of them.
        if (other <= from && from < other + length) {
          times++;
          to = Math.min(to, other + length);
        }
      }
      if (times > most.map(Bites::times).orElse(1)) {
        most = Optional.of(new Bites(span, times, from, to, sensitivity));
      }
    }
    return most;
  }

  /** Warns when the starting clamp's mark may end on a bend in the head zone. */
  static List<Finding> mark(BenchPlan plan) {
    Optional<StartMark> mark = plan.start().flatMap(Start::mark);
    if (mark.isEmpty() || !mark.get().at().contains(StartMark.Spot.BEND)) {
      return List.of();
    }
    StartMark m = mark.get();
    if (!plan.bed().inHeadZone(m.from()) && !plan.bed().inHeadZone(m.to())) {
      return List.of();
    }
    return List.of(
        Finding.of(FindingCode.MARK_ON_BEND)
            .about(m.from())
            .about(m.to())
            .message(
                "The starting clamp's mark may end on a bend between "
                    + m.from()
                    + " and "
                    + m.to()
                    + ", in the head zone, where strings shear most.")
            .fix("Take an anchor main whose tail leaves at the throat, or another start.")
            .build());
  }
}
