package org.hoopwright.testing;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hoopwright.bed.Span;
import org.hoopwright.frame.End;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.Pass;

/** What the opening mains of a reading leave behind: constants of a constraint model. */
final class ChocoOpening {

  private static final double PASSAGE_MM = 12;

  /** Holes, as numbers, in which string lies or over whose mouth a run lies. */
  final Set<Integer> closed = new HashSet<>();

  final Set<Integer> runs = new HashSet<>();
  int covered;
  int doubled;
  int longest = 1;

  /** All string that no choice changes: spans, passages, centre loop, runs of the openings. */
  double mm;

  ChocoOpening(Openings r, ChocoRuns numbers) {
    Span left = r.bed.mains(Side.LEFT).get(0);
    Span right = r.bed.mains(Side.RIGHT).get(0);
    mm =
        r.start == End.HEAD
            ? left.fromPoint().distanceTo(right.fromPoint())
            : left.toPoint().distanceTo(right.toPoint());
    for (Span span : r.bed.spans()) {
      mm += span.lengthMm() + 2 * PASSAGE_MM;
    }
    for (int i = 0; i < Math.max(r.shortOpening, r.longOpening); i++) {
      for (List<Pass> end : List.of(r.shortOpens, r.longOpens)) {
        if (i < end.size()) {
          string(end, i, numbers);
        }
      }
    }
  }

  private void string(List<Pass> end, int i, ChocoRuns numbers) {
    int in = numbers.hole(end.get(i).from());
    int out = numbers.hole(end.get(i).to());
    covered += closed.contains(in) || closed.contains(out) ? 1 : 0;
    if (i > 0) {
      int before = numbers.hole(end.get(i - 1).to());
      int run = numbers.id(end.get(i - 1).to(), end.get(i).from());
      doubled += runs.stream().anyMatch(other -> numbers.share(other, run)) ? 1 : 0;
      runs.add(run);
      for (int h = Math.min(before, in) + 1; h < Math.max(before, in); h++) {
        closed.add(h);
      }
      longest = Math.max(longest, numbers.places(run));
      mm += numbers.mm(run);
    }
    closed.add(in);
    closed.add(out);
  }
}
