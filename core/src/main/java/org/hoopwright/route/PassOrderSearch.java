package org.hoopwright.route;

import java.util.Arrays;
import java.util.function.Consumer;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;

/**
 * Enumerates every order of passes that the rules allow, by depth-first search over what an end of
 * string can reach next. No pattern is a template: whatever the rules let through comes out.
 *
 * <p>For each start end, direction, short side and pair of openings the opening mains are fixed;
 * then the short end strings all that it ever will, then the long end. Until main n of both sides
 * is in, only the first two and the last two crosses of the order may be strung, each end of the
 * order outermost first; after that the rest, in order. A run must reach the next hole.
 *
 * <p>The same order of passes may come out under several time orders; each is reported, and the
 * ranking keeps the best.
 */
final class PassOrderSearch {

  /**
   * Early crosses and late mains need at least so many crosses and mains a side; below that the
   * openings are complete.
   */
  private static final int LEAST_CROSSES_FOR_EARLY = 5;

  private static final int LEAST_MAINS_FOR_EARLY = 4;

  /**
   * How many crosses at each end of the order may be strung early, and how many crosses the short
   * end may string.
   */
  private static final int EARLY = 2;

  private final RouteModel m;
  private final NodeBudget budget;
  private final Consumer<PassOrder> found;

  // The state of one descent; the search is confined to one thread and one call.
  private End start = End.HEAD;
  private Direction direction = Direction.HEAD_TO_THROAT;
  private int shortSide;
  private int shortOpening;
  private int longOpening;
  private boolean secondPiece;
  private final boolean[] outerMainIn = new boolean[2];
  private int fromFront;
  private int fromBack;
  private final int[] shortPasses;
  private int shortCount;
  private final int[] longPasses;
  private int longCount;

  PassOrderSearch(RouteModel model, NodeBudget budget, Consumer<PassOrder> found) {
    this.m = model;
    this.budget = budget;
    this.found = found;
    this.shortPasses = new int[model.spans];
    this.longPasses = new int[model.spans];
  }

  void run() {
    for (End s : End.values()) {
      for (Direction d : Direction.values()) {
        if (m.rules.allows(s) && m.rules.allows(d)) {
          start = s;
          direction = d;
          for (int side = 0; side < 2; side++) {
            shortSide = side;
            openings();
          }
        }
      }
    }
  }

  private void openings() {
    boolean early = m.crosses >= LEAST_CROSSES_FOR_EARLY && m.n >= LEAST_MAINS_FOR_EARLY;
    for (shortOpening = m.n; shortOpening >= (early ? m.n - 1 : m.n); shortOpening--) {
      for (longOpening = m.n; longOpening >= (early ? m.n - 1 : m.n); longOpening--) {
        shortCount = open(shortSide, shortOpening, shortPasses);
        longCount = open(1 - shortSide, longOpening, longPasses);
        if (shortCount < 0 || longCount < 0) {
          continue;
        }
        outerMainIn[shortSide] = shortOpening == m.n;
        outerMainIn[1 - shortSide] = longOpening == m.n;
        fromFront = 0;
        fromBack = 0;
        if (m.rules.pieces().orElse(1) == 1 && m.rules.mainsGoOn()) {
          secondPiece = false;
          shortEnd();
        }
        if (m.rules.pieces().orElse(2) == 2) {
          secondPiece = true;
          if (outerMainIn[0] && outerMainIn[1]) {
            crossesPiece(); // the mains alone, tied at both ends before the first cross
          }
          if (m.rules.mainsGoOn()) { // once the short end is tied
            longEnd(m.exit(longPasses[longCount - 1]));
          }
        }
      }
    }
  }

  /**
   * Lays mains 1 … count of a side from the start end; the number of passes, or -1 when a run is
   * not allowed.
   */
  private int open(int side, int count, int[] passes) {
    for (int k = 1; k <= count; k++) {
      passes[k - 1] = m.mainPass(side, k, k % 2 == 1 ? start : start.other());
      if (k > 1 && !m.runOk(m.exit(passes[k - 2]), m.entry(passes[k - 1]))) {
        return -1;
      }
    }
    return count;
  }

  private void shortEnd() {
    budget.visit();
    longEnd(m.exit(longPasses[longCount - 1]));
    extend(m.exit(shortPasses[shortCount - 1]), true);
  }

  private void longEnd(int at) {
    budget.visit();
    boolean mainsIn = outerMainIn[0] && outerMainIn[1];
    int strung = fromFront + fromBack;
    if (!secondPiece && mainsIn && strung == m.crosses) {
      emit(new int[0]);
      return;
    }
    if (secondPiece && mainsIn && strung > 0) {
      if (strung < m.crosses) {
        crossesPiece();
      } else {
        return; // nothing is left for a second piece
      }
    }
    extend(at, false);
  }

  /** Tries every span that this end can go to next. */
  private void extend(int at, boolean isShort) {
    int side = m.side(at);
    // Before the first cross an outer main is one of the opening mains.
    if (!outerMainIn[side] && fromFront + fromBack > 0) {
      for (End entry : End.values()) {
        int pass = m.mainPass(side, m.n, entry);
        if (m.runOk(at, m.entry(pass))) {
          outerMainIn[side] = true;
          go(pass, isShort);
          outerMainIn[side] = false;
        }
      }
    }
    if (fromFront + fromBack == m.crosses) {
      return;
    }
    boolean mainsIn = outerMainIn[0] && outerMainIn[1];
    if (mainsIn || fromFront < EARLY) {
      cross(at, side, fromFront, true, isShort);
    }
    if (!mainsIn && fromBack < EARLY) {
      cross(at, side, m.crosses - 1 - fromBack, false, isShort);
    }
  }

  private void cross(int at, int side, int index, boolean front, boolean isShort) {
    boolean outermost = index < EARLY || index >= m.crosses - EARLY;
    if (isShort && (!outermost || shortCrosses() >= EARLY)) {
      return;
    }
    int pass = m.crossPass(number(index), side);
    if (!m.runOk(at, m.entry(pass))) {
      return;
    }
    if (front) {
      fromFront++;
    } else {
      fromBack++;
    }
    go(pass, isShort);
    if (front) {
      fromFront--;
    } else {
      fromBack--;
    }
  }

  private void go(int pass, boolean isShort) {
    if (isShort) {
      shortPasses[shortCount++] = pass;
      shortEnd();
      shortCount--;
    } else {
      longPasses[longCount++] = pass;
      longEnd(m.exit(pass));
      longCount--;
    }
  }

  private int shortCrosses() {
    int count = 0;
    for (int i = shortOpening; i < shortCount; i++) {
      count += m.isCross(shortPasses[i] >> 1) ? 1 : 0;
    }
    return count;
  }

  /** The cross at an index of the order, counted from the head. */
  private int number(int index) {
    return direction == Direction.HEAD_TO_THROAT ? index + 1 : m.crosses - index;
  }

  /** Strings the crosses that are left with a second piece, from either side. */
  private void crossesPiece() {
    int left = m.crosses - fromFront - fromBack;
    for (int side = 0; side < 2; side++) {
      int[] passes = new int[left];
      boolean ok = true;
      for (int i = 0; i < left && ok; i++) {
        budget.visit();
        passes[i] = m.crossPass(number(fromFront + i), (side + i) % 2);
        ok = i == 0 || m.runOk(m.exit(passes[i - 1]), m.entry(passes[i]));
      }
      if (ok) {
        emit(passes);
      }
    }
  }

  private void emit(int[] crossPasses) {
    found.accept(
        new PassOrder(
            start,
            direction,
            shortSide,
            shortOpening,
            longOpening,
            Arrays.copyOf(shortPasses, shortCount),
            Arrays.copyOf(longPasses, longCount),
            crossPasses));
  }
}
