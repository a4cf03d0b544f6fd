package org.hoopwright.testing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.Pass;
import org.jspecify.annotations.Nullable;

/**
 * What lies in a frame while a route is tried: closed holes, stretches in use, what it has cost.
 */
final class PlainFrame {

  private static final double PASSAGE_MM = 12;

  /**
   * One thing that is done.
   *
   * @param exit where the end came out last; null for the first main, whose run is the centre loop
   * @param hole where it goes in next, or is knotted
   * @param pass the pass that begins there; null for a knot
   */
  record Move(@Nullable HoleId exit, HoleId hole, @Nullable Pass pass) {}

  /** What to go back to. */
  record Memo(
      List<HoleId> closed,
      List<HoleId> stretches,
      int covered,
      int doubled,
      int longestRun,
      double mm) {}

  private final Bed bed;
  private final double spansMm;
  private final Map<HoleId, Integer> closed = new HashMap<>();
  private final Map<HoleId, Integer> stretches = new HashMap<>(); // to the next hole of the list
  private int covered;
  private int doubled;
  private int longestRun;
  private double mm;

  PlainFrame(Bed bed) {
    this.bed = bed;
    double sum = 0;
    for (Span span : bed.spans()) {
      sum += span.lengthMm() + 2 * PASSAGE_MM;
    }
    spansMm = sum;
  }

  int covered() {
    return covered;
  }

  int doubled() {
    return doubled;
  }

  int longestRun() {
    return longestRun;
  }

  /** All spans and what runs there are by now. */
  long stringMm() {
    return Math.round(spansMm + mm);
  }

  void begin(End start) {
    closed.clear();
    stretches.clear();
    covered = 0;
    doubled = 0;
    longestRun = 1;
    Span left = bed.mains(Side.LEFT).get(0);
    Span right = bed.mains(Side.RIGHT).get(0);
    mm =
        start == End.HEAD
            ? left.fromPoint().distanceTo(right.fromPoint())
            : left.toPoint().distanceTo(right.toPoint());
  }

  private Memo memo() {
    return new Memo(new ArrayList<>(), new ArrayList<>(), covered, doubled, longestRun, mm);
  }

  /** Does one thing; what it returns undoes it. */
  Memo play(Move move) {
    Memo memo = memo();
    Pass pass = move.pass;
    if (pass != null) {
      covered += closed.containsKey(pass.from()) || closed.containsKey(pass.to()) ? 1 : 0;
    }
    if (move.exit != null) {
      run(move.exit, move.hole, memo);
    }
    close(move.hole, memo);
    if (pass != null) {
      close(pass.to(), memo);
    }
    return memo;
  }

  private void close(HoleId hole, Memo memo) {
    closed.merge(hole, 1, Integer::sum);
    memo.closed.add(hole);
  }

  private void run(HoleId a, HoleId b, Memo memo) {
    List<HoleId> list = bed.ring().list(a.side());
    int low = Math.min(bed.ring().place(a), bed.ring().place(b));
    int high = Math.max(bed.ring().place(a), bed.ring().place(b));
    boolean shares = false;
    for (int place = low; place < high; place++) {
      HoleId hole = list.get(place);
      shares |= stretches.containsKey(hole);
      stretches.merge(hole, 1, Integer::sum);
      memo.stretches.add(hole);
      if (place > low) {
        close(hole, memo);
      }
      mm += bed.position(hole).distanceTo(bed.position(list.get(place + 1)));
    }
    doubled += shares ? 1 : 0;
    longestRun = Math.max(longestRun, high - low);
  }

  void undo(Memo memo) {
    memo.closed.forEach(h -> closed.computeIfPresent(h, (k, n) -> n == 1 ? null : n - 1));
    memo.stretches.forEach(h -> stretches.computeIfPresent(h, (k, n) -> n == 1 ? null : n - 1));
    covered = memo.covered;
    doubled = memo.doubled;
    longestRun = memo.longestRun;
    mm = memo.mm;
  }
}
