package org.hoopwright.bed;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Point;

/** Questions about whole frames without skip rules, both sides alike. */
final class FullFrames {

  private FullFrames() {}

  /** An invented frame whose hoop grows with its holes, so that their pitch stays the same. */
  static Layout layout(int head, int throat, int mains, int crosses, String... shared) {
    double scale = (head + throat) / 35.0;
    return Layout.builder("Willowbank open")
        .hoop(new Hoop.Superellipse(330 * scale, 248 * scale, 2.1))
        .holes(head, throat)
        .mains(mains)
        .mainsSkip(Optional.empty())
        .crosses(crosses)
        .shared(shared)
        .build();
  }

  /** A frame of so many holes a side, 10 or more, each of which has one string. */
  static Layout grown(int holes) {
    int n = Math.max(2, holes * 8 / 35);
    return layout((holes + 1) / 2, holes / 2, 2 * n, holes - 2 * n);
  }

  /** What the holes say with these positions. */
  static LabelQuestion question(Layout layout, Map<HoleId, Point> positions) {
    return new LabelQuestion(
        layout,
        positions,
        new OpenLabels(layout).allowed(),
        Set.of(),
        Optional.empty(),
        Optional.empty(),
        LabelWeights.INFER,
        /* sameLabels= */ true,
        /* windowMm= */ 0,
        20_000_000);
  }

  /** What the holes say where the arc law puts them. */
  static LabelQuestion question(Layout layout) {
    return question(layout, HolePositions.of(layout).points());
  }
}
