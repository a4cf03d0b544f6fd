package org.hoopwright.route;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.finding.HoopwrightFault;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;

/** What can be said of an order of passes whatever its knots. */
final class OrderTraits {

  private OrderTraits() {}

  /**
   * Departures from the plain order: crosses before the last main, mains after the first cross,
   * crosses by the short end.
   */
  static int departures(RouteModel m, PassOrder order) {
    int[] rest = rest(order);
    int lastMain = -1;
    int firstCross = rest.length;
    for (int i = 0; i < rest.length; i++) {
      if (m.isCross(rest[i] >> 1)) {
        firstCross = Math.min(firstCross, i);
      } else {
        lastMain = i;
      }
    }
    int departures = 0;
    for (int i = 0; i < rest.length; i++) {
      boolean cross = m.isCross(rest[i] >> 1);
      if (cross ? i < lastMain : i > firstCross) {
        departures++;
      }
    }
    for (int i = order.shortOpening(); i < order.shortPasses().length; i++) {
      departures += m.isCross(order.shortPasses()[i] >> 1) ? 1 : 0;
    }
    return departures;
  }

  static Set<Family> families(RouteModel m, PassOrder order) {
    Set<Family> families = EnumSet.noneOf(Family.class);
    if (aroundTheWorld(m, order)) {
      families.add(Family.AROUND_THE_WORLD);
    }
    if (box(m, order)) {
      families.add(Family.BOX);
    }
    return families;
  }

  /**
   * Whether a main goes in after a cross while the crosses run from the end where the mains do not
   * end.
   */
  static boolean aroundTheWorld(RouteModel m, PassOrder order) {
    boolean cross = false;
    boolean mainAfterCross = false;
    for (int pass : rest(order)) {
      if (m.isCross(pass >> 1)) {
        cross = true;
      } else if (cross) {
        mainAfterCross = true;
      }
    }
    End mainsEnd = m.n % 2 == 0 ? order.start() : order.start().other();
    return mainAfterCross && order.direction().from() != mainsEnd;
  }

  /** Whether crosses at both ends are strung before the outermost mains of both sides are in. */
  static boolean box(RouteModel m, PassOrder order) {
    int out = (order.shortOpening() < m.n ? 1 : 0) + (order.longOpening() < m.n ? 1 : 0);
    boolean front = false;
    boolean back = false;
    int atFront = 0;
    for (int pass : rest(order)) {
      if (out == 0) {
        break;
      }
      if (!m.isCross(pass >> 1)) {
        out--;
        continue;
      }
      int j = (pass >> 1) - 2 * m.n + 1;
      int index = order.direction() == Direction.HEAD_TO_THROAT ? j - 1 : m.crosses - j;
      if (index == atFront) {
        front = true;
        atFront++;
      } else {
        back = true;
      }
    }
    return front && back;
  }

  /** How many of the maker's wishes an order misses; see {@link RoutePreferences#MAKER}. */
  static int wishesMissed(RouteModel m, PassOrder order) {
    Layout layout = m.bed.layout();
    Optional<Direction> direction = layout.direction();
    Optional<Side> shortSide = layout.shortSide();
    Optional<Side> startSide = layout.startSide();
    int missed = 0;
    if (direction.isPresent() && direction.get() != order.direction()) {
      missed++;
    }
    if (layout.pieces().isPresent() && layout.pieces().getAsInt() != (order.onePiece() ? 1 : 2)) {
      missed++;
    }
    if (shortSide.isPresent()
        && (shortSide.get() == Side.LEFT) != (order.shortSide() == RouteModel.LEFT)) {
      missed++;
    }
    if (startSide.isPresent()
        && (startSide.get() == Side.LEFT) != (startSide(m, order) == RouteModel.LEFT)) {
      missed++;
    }
    return missed;
  }

  /** The side on which the first cross of the order's direction enters. */
  private static int startSide(RouteModel m, PassOrder order) {
    int first = m.cross(order.direction() == Direction.HEAD_TO_THROAT ? 1 : m.crosses);
    for (int[] passes : List.of(order.shortPasses(), order.longPasses(), order.crossPasses())) {
      for (int pass : passes) {
        if (pass >> 1 == first) {
          return m.side(m.entry(pass));
        }
      }
    }
    throw new HoopwrightFault("An order of passes does not hold its first cross.");
  }

  /**
   * What is strung after the openings by the piece with the mains, then by the second piece, in
   * time order.
   */
  private static int[] rest(PassOrder o) {
    int s = o.shortPasses().length - o.shortOpening();
    int l = o.longPasses().length - o.longOpening();
    int[] rest = new int[s + l + o.crossPasses().length];
    System.arraycopy(o.shortPasses(), o.shortOpening(), rest, 0, s);
    System.arraycopy(o.longPasses(), o.longOpening(), rest, s, l);
    System.arraycopy(o.crossPasses(), 0, rest, s + l, o.crossPasses().length);
    return rest;
  }
}
