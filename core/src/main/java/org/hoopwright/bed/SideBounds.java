package org.hoopwright.bed;

/** Least costs of one side by itself, which no pair of ways can be below. */
final class SideBounds {
  private final SidePaths onwards;
  private final SidePaths back;
  private final int last;
  private final int lastCross;

  SideBounds(ChoiceSide side) {
    onwards = SharedChoice.paths(side, null, null);
    last = side.size() - 1;
    lastCross = side.items().crosses() - 1;
    boolean[] must = new boolean[side.size()];
    for (int i = 0; i <= last; i++) {
      must[i] = side.must(last - i);
    }
    back =
        new SidePaths(
            must,
            side.items().crosses(),
            new SidePaths.Costs() {
              @Override
              public long node(int hole, int cross) {
                return 0; // nothing was measured where pairs are searched
              }

              @Override
              public long gap(int hole, int next) {
                return side.unevenness(last - next, last - hole);
              }
            });
  }

  boolean possible(int hole, int cross) {
    return onwards.possible(hole, cross);
  }

  /** From the first cross to this one. */
  long upTo(int hole, int cross) {
    return back.toGo(last - hole, lastCross - cross);
  }

  /** From the first cross to the last, with this one in this hole. */
  long through(int hole, int cross) {
    return upTo(hole, cross) + onwards.toGo(hole, cross);
  }
}
