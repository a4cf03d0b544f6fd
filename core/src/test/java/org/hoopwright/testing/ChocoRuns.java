package org.hoopwright.testing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hoopwright.bed.Bed;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;

/**
 * Runs along the frame as numbers for a constraint solver, numbered as they are first asked for.
 * Holes are numbered left side first, so that runs of different sides never share a stretch.
 */
final class ChocoRuns {

  /** The number of no run at all. */
  static final int NONE = 0;

  /**
   * Lengths are whole numbers of this fraction of a millimetre: variable parts of less than 2 m fit
   * the solver's numbers, and the sum of 100 roundings is below 5 µm.
   */
  static final int UNITS_PER_MM = 10_000;

  private record Run(int low, int high) {}

  private final Bed bed;
  private final List<Run> runs = new ArrayList<>();
  private final Map<Run, Integer> ids = new HashMap<>();

  ChocoRuns(Bed bed) {
    this.bed = bed;
    runs.add(new Run(-1, -1));
  }

  int hole(HoleId hole) {
    return bed.ring().place(hole) + (hole.side() == Side.LEFT ? 0 : bed.ring().size(Side.LEFT));
  }

  int id(HoleId a, HoleId b) {
    Run run = new Run(Math.min(hole(a), hole(b)), Math.max(hole(a), hole(b)));
    return ids.computeIfAbsent(
        run,
        k -> {
          runs.add(k);
          return runs.size() - 1;
        });
  }

  int count() {
    return runs.size();
  }

  /** Whether a run lies over the mouth of a hole. */
  boolean over(int id, int hole) {
    return runs.get(id).low < hole && hole < runs.get(id).high;
  }

  boolean share(int a, int b) {
    return Math.max(runs.get(a).low, runs.get(b).low)
        < Math.min(runs.get(a).high, runs.get(b).high);
  }

  int places(int id) {
    return runs.get(id).high - runs.get(id).low;
  }

  double mm(int id) {
    int left = bed.ring().size(Side.LEFT);
    double mm = 0;
    for (int h = runs.get(id).low; h < runs.get(id).high; h++) {
      Side side = h < left ? Side.LEFT : Side.RIGHT;
      int place = h < left ? h : h - left;
      mm +=
          bed.position(bed.ring().at(side, place))
              .distanceTo(bed.position(bed.ring().at(side, place + 1)));
    }
    return mm;
  }

  int[] places() {
    return runs.stream().mapToInt(r -> r.high - r.low).toArray();
  }

  int[] units() {
    int[] units = new int[runs.size()];
    for (int i = 1; i < units.length; i++) {
      units[i] = (int) Math.round(mm(i) * UNITS_PER_MM);
    }
    return units;
  }
}
