package org.hoopwright.bed;

import java.util.Optional;
import org.hoopwright.frame.EachSide;
import org.hoopwright.geometry.Side;
import org.jspecify.annotations.Nullable;

/**
 * Which of several shared holes carry a cross beside their main, at the least cost: skew of crosses
 * and unevenness of their spacing ({@link ChoiceSide} holds the weights), or the distance from the
 * measured heights where there are any.
 *
 * <p>Sides that are mirror images of each other take the same holes, which is never dearer than
 * taking different ones. If only one side has a choice, or the heights were measured, each side is
 * a programme of its own; else {@link PairPaths} searches both together.
 *
 * @param picks for each side the index in its items of each cross
 * @param second the next best picks; empty when there is no other choice
 * @param gain what the second choice costs more, in mm; 0 for a tie
 * @param proven false when the search ended at its limit, so that a better choice may exist
 */
record SharedChoice(
    EachSide<int[]> picks, Optional<EachSide<int[]>> second, double gain, boolean proven) {

  private static final double MM = 1e-6;

  static SharedChoice of(ChoiceSide left, ChoiceSide right) {
    if (left.mirrors(right)) {
      SidePaths both = paths(left, null, null);
      return made(
          both.best(),
          both.best(),
          both.second(),
          both.second(),
          // the same change on both sides costs twice
          both.second() == null ? 0 : 2 * (both.second().cost() - both.best().cost()));
    }
    if (left.isMeasured() || (left.items().fixed() && right.items().fixed())) {
      return apart(paths(left, null, null), paths(right, null, null));
    }
    if (left.items().fixed()) {
      SidePaths alone = paths(left, null, null);
      return apart(alone, paths(right, left, alone.best().picks()));
    }
    if (right.items().fixed()) {
      SidePaths alone = paths(right, null, null);
      return apart(paths(left, right, alone.best().picks()), alone);
    }
    // An order that does not know left from right, so that a mirrored frame has the mirrored bed.
    return left.compare(right) < 0
        ? PairPaths.choose(left, right)
        : PairPaths.choose(right, left).mirrored();
  }

  private SharedChoice mirrored() {
    return new SharedChoice(picks.swapped(), second.map(EachSide::swapped), gain, proven);
  }

  /** A side's ways by themselves, or against fixed picks of the other side. */
  static SidePaths paths(ChoiceSide side, @Nullable ChoiceSide other, int @Nullable [] otherPicks) {
    return new SidePaths(
        side.must(),
        side.items().crosses(),
        new SidePaths.Costs() {
          @Override
          public long node(int hole, int cross) {
            long own = side.misfit(hole, cross);
            return other == null || otherPicks == null
                ? own
                : own + side.skew(hole, other, otherPicks[cross]);
          }

          @Override
          public long gap(int hole, int next) {
            return side.unevenness(hole, next);
          }
        });
  }

  /** Two sides that do not depend on each other: the runner-up changes one of them. */
  private static SharedChoice apart(SidePaths left, SidePaths right) {
    SidePaths.Way l = left.best();
    SidePaths.Way r = right.best();
    SidePaths.Way l2 = left.second();
    SidePaths.Way r2 = right.second();
    long lMore = l2 == null ? Long.MAX_VALUE : l2.cost() - l.cost();
    long rMore = r2 == null ? Long.MAX_VALUE : r2.cost() - r.cost();
    if (lMore <= rMore) {
      return made(l, r, l2, l2 == null ? null : r, l2 == null ? 0 : lMore);
    }
    return made(l, r, l, r2, rMore);
  }

  private static SharedChoice made(
      SidePaths.Way left,
      SidePaths.Way right,
      SidePaths.@Nullable Way left2,
      SidePaths.@Nullable Way right2,
      long more) {
    return new SharedChoice(
        new EachSide<>(left.picks(), right.picks()),
        left2 == null || right2 == null
            ? Optional.empty()
            : Optional.of(new EachSide<>(left2.picks(), right2.picks())),
        more * MM,
        /* proven= */ true);
  }

  /** The picks of this side. */
  int[] of(Side side) {
    return picks.of(side);
  }
}
