package org.hoopwright.bed;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hoopwright.finding.Finding;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoopOutline;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;

/**
 * Where every hole of a layout is, in millimetres: origin at the middle of the hoop's inside
 * length, x to the right, y to the head.
 *
 * <p>Each hole's position comes from the first of these that there is for it:
 *
 * <ol>
 *   <li>its stated coordinates; those of a name without side are the right hole's and are mirrored
 *       for the left one, and of two names for one hole the later counts;
 *   <li>the measured offset of its string: a main's distance from the long axis, put on the outline
 *       at the hole's end, or a cross's distance below the inside of the head, put where the
 *       outline is widest at that height. A shared hole with both takes the main's;
 *   <li>the arc law: a side's holes share that half of the outline in equal arcs, with half an arc
 *       at both axis points.
 * </ol>
 *
 * <p>One hole's coordinates do not move another. Positions must follow the order of the side's list
 * along the outline, holes without string included.
 *
 * @param points the holes' positions in hole order; empty when the hoop has no outline
 * @param findings {@code offset-outside}, {@code offsets-differ}, {@code hole-order}
 */
public record HolePositions(Map<HoleId, Point> points, List<Finding> findings) {

  /**
   * How far apart in height the two offsets of a shared hole may put it, in mm. Our choice: about
   * the width of a hole that takes two strings.
   */
  public static final double OFFSETS_DIFFER_MM = 3.0;

  /** Copies map and list. */
  public HolePositions {
    points = Collections.unmodifiableMap(new TreeMap<>(points));
    findings = List.copyOf(findings);
  }

  /** Positions before anything is known about strings: coordinates and the arc law. */
  public static HolePositions of(Layout layout) {
    Ring ring = Ring.of(layout);
    return of(
        layout,
        new Labels(
            Collections.nCopies(ring.size(Side.LEFT), HoleLabel.NONE),
            Collections.nCopies(ring.size(Side.RIGHT), HoleLabel.NONE)));
  }

  /**
   * Positions under these labels: coordinates, offsets and the arc law. The k-th main of an end and
   * the j-th cross of a side take the k-th and j-th offset as far as there are so many; labels
   * without crosses leave the crosses' offsets aside.
   *
   * @throws IllegalArgumentException when the labels' lists are not as long as the sides' lists
   */
  public static HolePositions of(Layout layout, Labels labels) {
    Ring ring = Ring.of(layout);
    for (Side side : Side.values()) {
      if (labels.of(side).size() != ring.size(side)) {
        throw new IllegalArgumentException(
            "The number of labels of the %s side (%s) must be that of its holes (%s)."
                .formatted(Words.of(side), labels.of(side).size(), ring.size(side)));
      }
    }
    return of(layout, ring, labels, HoopOutline.of(layout));
  }

  static HolePositions of(Layout layout, Ring ring, Labels labels, HoopOutline hoop) {
    return hoop.outline()
        .map(outline -> new Placing(layout, ring, labels, outline).positions())
        .orElseGet(() -> new HolePositions(Map.of(), List.of()));
  }
}
