package org.hoopwright.weave;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Crossing;
import org.hoopwright.bed.SpanId;

/** Looks an observed weave over. Pure and thread-safe. */
public final class Weaves {

  private Weaves() {}

  /**
   * Every misweave, and the least to weave again.
   *
   * <p>A bed alternates in two ways, the usual one and its inverse. For either, the crossings that
   * differ must each lose their cross or their main; the fewest strings that do it are a smallest
   * vertex cover of a bipartite graph, as large as its largest matching (König's theorem, from
   * memory). Where both ways cost the same, the usual one is meant.
   *
   * @param observed the weave
   */
  public static WeaveReport inspect(ObservedWeave observed) {
    List<SpanId> usual = fewest(observed, false);
    List<SpanId> inverse = usual.isEmpty() ? usual : fewest(observed, true);
    boolean inverted = inverse.size() < usual.size();
    return new WeaveReport(misweaves(observed), inverted ? inverse : usual, inverted);
  }

  private static List<Misweave> misweaves(ObservedWeave observed) {
    Bed bed = observed.bed();
    List<Misweave> found = new ArrayList<>();
    bed.crosses().forEach(x -> along(observed, x.id(), found));
    bed.mainsLeftToRight().forEach(m -> along(observed, m, found));
    return found;
  }

  private static void along(ObservedWeave observed, SpanId span, List<Misweave> found) {
    List<Crossing> met = observed.bed().crossings(span);
    for (int i = 1; i < met.size(); i++) {
      Crossing a = met.get(i - 1);
      Crossing b = met.get(i);
      Optional<Boolean> first = observed.crossOver(a.cross(), a.main());
      if (first.isPresent() && first.equals(observed.crossOver(b.cross(), b.main()))) {
        boolean over = first.get() == span.isCross();
        found.add(
            span.isCross()
                ? new Misweave(span, a.main(), b.main(), over)
                : new Misweave(span, a.cross(), b.cross(), over));
      }
    }
  }

  private static List<SpanId> fewest(ObservedWeave observed, boolean inverse) {
    Bed bed = observed.bed();
    List<SpanId> mains = bed.mainsLeftToRight();
    List<List<Integer>> wrong = new ArrayList<>(); // by main: crosses on the wrong side of it
    for (SpanId main : mains) {
      List<Integer> crosses = new ArrayList<>();
      for (int j = 1; j <= bed.crossCount(); j++) {
        Optional<Boolean> seen = observed.crossOver(SpanId.cross(j), main);
        boolean wanted = bed.crossOver(SpanId.cross(j), main) != inverse;
        if (seen.isPresent() && seen.get() != wanted) {
          crosses.add(j - 1);
        }
      }
      wrong.add(crosses);
    }
    VertexCover cover = VertexCover.of(wrong, bed.crossCount());
    List<SpanId> strings = new ArrayList<>();
    for (int m = 0; m < mains.size(); m++) {
      if (cover.left(m)) {
        strings.add(mains.get(m));
      }
    }
    for (int j = 0; j < bed.crossCount(); j++) {
      if (cover.right(j)) {
        strings.add(SpanId.cross(j + 1));
      }
    }
    return strings;
  }
}
