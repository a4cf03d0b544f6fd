package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;
import org.hoopwright.testing.Draw;

/** Random questions to the label search. */
final class LabelQuestions {

  private LabelQuestions() {}

  /** A frame of up to this many holes a side, with any labels allowed for any hole. */
  static LabelQuestion small(Draw draw, int mostHoles, boolean same) {
    int n = draw.between(2, 3);
    EachSide<Integer> head = counts(draw, n, mostHoles / 2, same);
    EachSide<Integer> throat = counts(draw, n, mostHoles / 2, same);
    int most = Math.min(head.left() + throat.left(), head.right() + throat.right());
    int crosses = draw.between(2, Math.max(2, Math.min(5, most - 1)));
    Layout layout =
        Layout.builder("Willowbank small")
            .hoop(
                new Hoop.Superellipse(
                    draw.between(100, 300), draw.between(80, 250), draw.between(20, 26) / 10.0))
            .holes(head, throat)
            .mains(2 * n)
            .mainsSkip(Optional.empty())
            .crosses(crosses)
            .build();
    Ring ring = Ring.of(layout);
    Set<HoleId> doubtful = new HashSet<>();
    List<List<Set<HoleLabel>>> allowed = new ArrayList<>();
    List<List<HoleLabel>> stated = new ArrayList<>();
    int slack = draw.between(0, 2);
    for (Side side : Side.values()) {
      List<Set<HoleLabel>> sets = new ArrayList<>();
      List<HoleLabel> labels = new ArrayList<>();
      for (HoleId hole : ring.list(side)) {
        EnumSet<HoleLabel> set = EnumSet.noneOf(HoleLabel.class);
        for (HoleLabel label : HoleLabel.values()) {
          boolean rare = label == HoleLabel.BOTH || label == HoleLabel.NONE;
          if (draw.chance(rare ? 25 + 25 * slack : 90)) {
            set.add(label);
          }
        }
        sets.add(set.isEmpty() ? EnumSet.of(HoleLabel.MAIN, HoleLabel.CROSS) : set);
        labels.add(draw.oneOf(List.of(HoleLabel.values())));
        if (draw.chance(30)) {
          doubtful.add(hole);
        }
      }
      allowed.add(sets);
      stated.add(labels);
    }
    LabelWeights weights =
        draw.chance(50)
            ? LabelWeights.INFER
            : new LabelWeights(
                weight(draw),
                weight(draw),
                weight(draw),
                weight(draw),
                weight(draw),
                weight(draw),
                weight(draw),
                weight(draw),
                weight(draw),
                weight(draw));
    return new LabelQuestion(
        layout,
        moved(draw, HolePositions.of(layout).points(), draw.between(0, 3)),
        new EachSide<>(allowed.get(0), same ? allowed.get(0) : allowed.get(1)),
        doubtful,
        draw.chance(50)
            ? Optional.of(new Labels(/* left= */ stated.get(0), /* right= */ stated.get(1)))
            : Optional.empty(),
        draw.chance(30)
            ? Optional.of(new EachSide<>(draw.between(5, 40) + 0.5, draw.between(5, 40) / 1.0))
            : Optional.empty(),
        weights,
        same,
        draw.between(0, 5),
        LabelQuestion.DEFAULT_MAX_NODES);
  }

  /**
   * A frame of the usual size with both sides alike: the inner holes are for mains, those on the
   * flank for crosses, seven a quadrant may be either, and so many of these may be shared, and as
   * many unused.
   */
  static LabelQuestion usual(Layout frame, Draw draw, int open) {
    return usual(frame, draw, open, false);
  }

  /** As {@link #usual(Layout, Draw, int)}, but where wanted every hole may be for either. */
  static LabelQuestion usual(Layout frame, Draw draw, int open, boolean everyHole) {
    Layout layout = frame.toBuilder().mainsSkip(Optional.empty()).withoutFirstAndLast().build();
    Ring ring = Ring.of(layout);
    int size = ring.size(Side.LEFT);
    int n = layout.mainsPerSide();
    List<Set<HoleLabel>> sets = new ArrayList<>();
    for (int p = 0; p < size; p++) {
      int fromAxis = Math.min(p, size - 1 - p);
      sets.add(
          fromAxis < n - 3 && !everyHole
              ? EnumSet.of(HoleLabel.MAIN)
              : fromAxis > n + 3 && !everyHole
                  ? EnumSet.of(HoleLabel.CROSS)
                  : EnumSet.of(HoleLabel.MAIN, HoleLabel.CROSS));
    }
    for (int i = 0; i < open; i++) {
      // As many may be shared as may be unused, so that the counts can still fit.
      for (int base : List.of(n - 2, size - n - 3)) {
        int p = base + draw.between(0, 4);
        sets.set(p, EnumSet.of(HoleLabel.MAIN, HoleLabel.CROSS, HoleLabel.BOTH));
        int q = base + draw.between(0, 4);
        EnumSet<HoleLabel> unused = EnumSet.copyOf(sets.get(q));
        unused.add(HoleLabel.NONE);
        sets.set(q, unused);
      }
    }
    return new LabelQuestion(
        layout,
        moved(draw, HolePositions.of(layout).points(), draw.between(0, 2)),
        EachSide.both(sets),
        Set.of(),
        Optional.empty(),
        Optional.empty(),
        LabelWeights.INFER,
        /* sameLabels= */ true,
        0,
        LabelQuestion.DEFAULT_MAX_NODES);
  }

  private static double weight(Draw draw) {
    return draw.between(0, 8) / 4.0;
  }

  private static EachSide<Integer> counts(Draw draw, int least, int most, boolean same) {
    int left = draw.between(least, most);
    return new EachSide<>(left, same ? left : draw.between(least, most));
  }

  /** The positions, each moved by up to this many mm along and across. */
  static Map<HoleId, Point> moved(Draw draw, Map<HoleId, Point> points, double mm) {
    Map<HoleId, Point> moved = new TreeMap<>();
    // In the order of holes, so that a seed gives the same frame everywhere.
    new TreeMap<>(points)
        .forEach(
            (hole, p) ->
                moved.put(
                    hole,
                    new Point(
                        p.x() + mm * draw.between(-1000, 1000) / 1000,
                        p.y() + mm * draw.between(-1000, 1000) / 1000)));
    return moved;
  }
}
