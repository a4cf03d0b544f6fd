package org.hoopwright.frame;

import java.util.Map;
import java.util.TreeMap;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;

/**
 * The stated coordinates of one hole.
 *
 * @param ref the name under which they stand in the layout
 * @param point where the hole is, in millimetres
 */
public record HoleCoordinates(HoleRef ref, Point point) {

  /**
   * Every hole of which a layout states coordinates, in hole order, whether or not its counts have
   * the hole. Those of a name without side are the right hole's and are mirrored for the left one;
   * of two names for one hole the later counts; one that is no coordinate ({@link
   * Limits#isCoordinate}) is left out.
   */
  public static Map<HoleId, HoleCoordinates> of(Layout layout) {
    Map<HoleId, HoleCoordinates> all = new TreeMap<>();
    layout
        .at()
        .forEach(
            (ref, stated) -> {
              double x = layout.mm(stated.x());
              double y = layout.mm(stated.y());
              if (Limits.isCoordinate(x) && Limits.isCoordinate(y)) {
                Point point = new Point(x, y);
                for (HoleId hole : ref.holes()) {
                  boolean mirror = ref.side().isEmpty() && hole.side() == Side.LEFT;
                  all.put(hole, new HoleCoordinates(ref, mirror ? point.mirrored() : point));
                }
              }
            });
    return all;
  }
}
