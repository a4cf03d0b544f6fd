package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;

/**
 * What is asked of the {@link LabelSearch}: which labels each hole may have, where the holes are,
 * and what makes one labelling dearer than another.
 *
 * @param layout says how many mains and crosses there are, and which holes
 * @param positions where each hole is, in mm
 * @param allowed for each side, in list order, the labels that a hole may have
 * @param doubtful the holes for which two strings cost {@link LabelWeights#doubtful} more
 * @param stated the labelling from which changes are counted; empty when there is none
 * @param crossPitchMm the pitch of crosses on each side; empty to take it from the flanks
 * @param weights what makes a labelling dear
 * @param sameLabels whether both sides must have the same labels
 * @param windowMm all labellings that cost at most so much more than the best are wanted
 * @param maxNodes after how many nodes the search gives up
 */
public record LabelQuestion(
    Layout layout,
    Map<HoleId, Point> positions,
    EachSide<List<Set<HoleLabel>>> allowed,
    Set<HoleId> doubtful,
    Optional<Labels> stated,
    Optional<EachSide<Double>> crossPitchMm,
    LabelWeights weights,
    boolean sameLabels,
    double windowMm,
    long maxNodes) {

  /** After how many nodes a search gives up unless told otherwise. */
  public static final long DEFAULT_MAX_NODES = 2_000_000;

  /**
   * Copies the lists and checks that they fit the layout.
   *
   * @throws IllegalArgumentException when a hole has no position or no set of labels, the sides
   *     cannot have the same labels because their counts differ, or a number is out of its range
   */
  public LabelQuestion {
    positions = Map.copyOf(positions);
    doubtful = Set.copyOf(doubtful);
    allowed = new EachSide<>(copy(allowed.left()), copy(allowed.right()));
    Ring ring = Ring.of(layout);
    for (Side side : Side.values()) {
      if (allowed.of(side).size() != ring.size(side)) {
        throw new IllegalArgumentException(
            "The number of label sets of the %s side (%s) must be that of its holes (%s)."
                .formatted(Words.of(side), allowed.of(side).size(), ring.size(side)));
      }
      for (HoleId hole : ring.list(side)) {
        if (!positions.containsKey(hole)) {
          throw new IllegalArgumentException(
              "The hole (" + hole + ") must have a position.\nMaybe use HolePositions.of(layout).");
        }
      }
    }
    if (sameLabels && (!layout.headHoles().same() || !layout.throatHoles().same())) {
      throw new IllegalArgumentException(
          "The sides must have equal counts of holes to have the same labels.");
    }
    if (!(windowMm >= 0 && windowMm <= 1000)) {
      throw new IllegalArgumentException(
          "The window (" + windowMm + " mm) must be from 0 to 1000 mm.");
    }
    if (maxNodes < 1) {
      throw new IllegalArgumentException(
          "The number of nodes (" + maxNodes + ") must be 1 or more.");
    }
  }

  private static List<Set<HoleLabel>> copy(List<Set<HoleLabel>> sets) {
    List<Set<HoleLabel>> copy = new ArrayList<>();
    sets.forEach(s -> copy.add(Set.copyOf(s)));
    return List.copyOf(copy);
  }
}
