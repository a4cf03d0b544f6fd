package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoopOutline;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutPointers;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Outline;
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
 *       at the hole's end, or a cross's distance below the inside of the head. A shared hole with
 *       both takes the main's;
 *   <li>the arc law: a side's holes share that half of the outline in equal arcs, with half an arc
 *       at both axis points.
 * </ol>
 *
 * <p>One hole's coordinates do not move another.
 *
 * @param points the holes' positions in hole order; empty when the hoop has no outline
 * @param findings {@code hoop-shape}, {@code hoop-off-centre}, {@code offset-outside}, {@code
 *     offsets-differ}, {@code hole-order}, {@code hole-off-hoop}
 */
public record HolePositions(Map<HoleId, Point> points, List<Finding> findings) {

  /**
   * How far from the outline a hole's stated coordinates may be, in mm. Our choice: about the depth
   * of a frame's wall, so that holes measured on the outside pass.
   */
  public static final double OFF_HOOP_MM = 12.0;

  /**
   * How far apart in height the two offsets of a shared hole may put it, in mm. Our choice: about
   * the width of a hole that takes two strings.
   */
  public static final double OFFSETS_DIFFER_MM = 3.0;

  /** Greatest coordinate, either sign, in mm. */
  private static final double LIMIT_MM = 10_000;

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
            "The number of labels of the %s side (%d) must be that of its holes (%d)."
                .formatted(
                    side == Side.LEFT ? "left" : "right", labels.of(side).size(), ring.size(side)));
      }
    }
    HoopOutline hoop = HoopOutline.of(layout);
    return hoop.outline()
        .map(outline -> new Worker(layout, ring, labels, outline, hoop.findings()).run())
        .orElseGet(() -> new HolePositions(Map.of(), hoop.findings()));
  }

  /** One run of the rules above. */
  private static final class Worker {
    private final Layout layout;
    private final Ring ring;
    private final Labels labels;
    private final Outline outline;
    private final List<Finding> findings;
    private final Map<HoleId, Point> points = new TreeMap<>();
    private final Map<HoleId, Point> stated = new TreeMap<>();

    Worker(Layout layout, Ring ring, Labels labels, Outline outline, List<Finding> before) {
      this.layout = layout;
      this.ring = ring;
      this.labels = labels;
      this.outline = outline;
      this.findings = new ArrayList<>(before);
    }

    HolePositions run() {
      readCoordinates();
      for (Side side : Side.values()) {
        byArcLaw(side);
        byCrossOffsets(side);
        for (End end : End.values()) {
          byMainOffsets(side, end);
        }
      }
      points.putAll(stated);
      for (Side side : Side.values()) {
        checkOrder(side);
      }
      return new HolePositions(points, findings);
    }

    private void readCoordinates() {
      layout
          .at()
          .forEach(
              (ref, p) -> {
                double x = layout.mm(p.x());
                double y = layout.mm(p.y());
                if (Math.abs(x) > LIMIT_MM || Math.abs(y) > LIMIT_MM) {
                  return; // the layout's own check reports it; the arc law stands in
                }
                Point right = new Point(x, y);
                for (HoleId hole : ref.holes()) {
                  if (ring.has(hole)) {
                    boolean mirror = ref.side().isEmpty() && hole.side() == Side.LEFT;
                    stated.put(hole, mirror ? right.mirrored() : right);
                  }
                }
              });
      stated.forEach(
          (hole, p) -> {
            double away = Math.abs(outline.distanceTo(p));
            if (away > OFF_HOOP_MM) {
              findings.add(
                  Finding.of(FindingCode.HOLE_OFF_HOOP)
                      .message(
                          "Hole %s lies %s mm from the inside of the hoop."
                              .formatted(hole, Words.mm(away)))
                      .at(
                          LayoutPointers.member("/holes/at", layout.at().keySet(), hole),
                          layout.places())
                      .about(hole)
                      .fix("Check its coordinates, the unit, and the hoop's size.")
                      .build());
            }
          });
    }

    private void byArcLaw(Side side) {
      int count = ring.size(side);
      double half = outline.halfLengthMm(side);
      for (int i = 0; i < count; i++) {
        points.put(ring.at(side, i), outline.atArc(side, half * (2 * i + 1) / (2 * count)));
      }
    }

    private void byCrossOffsets(Side side) {
      List<Double> below = layout.crossesOffsets().map(o -> o.of(side).below()).orElse(List.of());
      int j = 0;
      for (HoleId hole : ring.list(side)) {
        if (label(hole).cross() && j < below.size()) {
          int index = j++;
          crossPoint(side, below.get(index))
              .ifPresentOrElse(
                  p -> points.put(hole, p),
                  () ->
                      outside(
                          "Cross %d lies %s mm below the inside of the head, where the hoop's %s half has no place."
                              .formatted(
                                  index + 1, Words.mm(layout.mm(below.get(index))), Words.of(side)),
                          LayoutPointers.crossOffset(layout, side, index),
                          SpanId.cross(index + 1),
                          hole));
        }
      }
    }

    private Optional<Point> crossPoint(Side side, double below) {
      double y = outline.headAxisPoint().y() - layout.mm(below);
      return Double.isFinite(y) ? outline.atY(side, y) : Optional.empty();
    }

    private void byMainOffsets(Side side, End end) {
      List<Double> distances = layout.mainsOffsets().map(o -> o.of(side).at(end)).orElse(List.of());
      int count = (int) ring.list(side).stream().filter(h -> h.end() == end).count();
      int k = 0;
      for (int i = 1; i <= count && k < distances.size(); i++) {
        HoleId hole = new HoleId(side, end, i);
        if (label(hole).main()) {
          int index = k++;
          mainPoint(side, end, distances.get(index))
              .ifPresentOrElse(
                  p -> putMain(hole, p),
                  () ->
                      outside(
                          "Main %d lies %s mm from the long axis, where the hoop's %s half has no place."
                              .formatted(
                                  index + 1,
                                  Words.mm(layout.mm(distances.get(index))),
                                  Words.of(side)),
                          LayoutPointers.mainOffset(layout, side, end, index),
                          SpanId.main(side, index + 1),
                          hole));
        }
      }
    }

    private Optional<Point> mainPoint(Side side, End end, double distance) {
      double x = layout.mm(distance);
      if (!(x >= 0 && x <= LIMIT_MM)) {
        return Optional.empty();
      }
      return end == End.HEAD ? outline.headAtX(side, x) : outline.throatAtX(side, x);
    }

    private void putMain(HoleId hole, Point point) {
      Point before = points.put(hole, point);
      boolean measuredTwice =
          label(hole) == HoleLabel.BOTH && layout.crossesOffsets().isPresent() && before != null;
      if (!measuredTwice || stated.containsKey(hole)) {
        return;
      }
      double differ = Math.abs(point.y() - before.y());
      if (differ > OFFSETS_DIFFER_MM) {
        findings.add(
            Finding.of(FindingCode.OFFSETS_DIFFER)
                .message(
                    "The offsets of the main and of the cross in shared hole %s put it at heights %s mm apart; the main's counts."
                        .formatted(hole, Words.mm(differ)))
                .at("/crosses/offsets", layout.places())
                .about(hole)
                .fix("Measure both strings again where they touch the inside of the hoop.")
                .build());
      }
    }

    private HoleLabel label(HoleId hole) {
      return labels.of(hole.side()).get(ring.place(hole));
    }

    private void outside(String message, String pointer, SpanId span, HoleId hole) {
      if (stated.containsKey(hole)) {
        return; // the stated coordinates count and the offset is not used
      }
      findings.add(
          Finding.of(FindingCode.OFFSET_OUTSIDE)
              .message(message)
              .at(pointer, layout.places())
              .about(span, hole)
              .fix("Check the offset, its unit, and the hoop's size.")
              .build());
    }

    private void checkOrder(Side side) {
      HoleId before = null;
      double arcBefore = 0;
      for (HoleId hole : ring.list(side)) {
        Point p = points.get(hole);
        if (p == null) {
          continue; // never: every hole has had a place by the arc law
        }
        double arc = outline.arcOf(side, p);
        if (before != null && arc <= arcBefore) {
          findings.add(orderFinding(before, hole));
        }
        before = hole;
        arcBefore = arc;
      }
    }

    private Finding orderFinding(HoleId before, HoleId hole) {
      boolean own = stated.containsKey(hole);
      String pointer =
          own || stated.containsKey(before)
              ? LayoutPointers.member("/holes/at", layout.at().keySet(), own ? hole : before)
              : "/holes";
      return Finding.of(FindingCode.HOLE_ORDER)
          .message(
              "Hole %s does not lie after hole %s on the way from the head to the throat."
                  .formatted(hole, before))
          .at(pointer, layout.places())
          .about(before, hole)
          .fix(
              "Check what was measured for the two; coordinates under holes.at for both settle it.")
          .build();
    }
  }
}
