package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleCoordinates;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutPointers;
import org.hoopwright.frame.Limits;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Foot;
import org.hoopwright.geometry.Outline;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;
import org.hoopwright.geometry.Superellipse;

/** Puts every hole in its place by the rules of {@link HolePositions}. Used once. */
final class Placing {

  /**
   * A place with its origin.
   *
   * @param point where
   * @param pointer JSON pointer of what was measured
   * @param foot a place of the outline near it, if that is easily found
   */
  private record Measured(Point point, String pointer, Optional<Foot> foot) {
    static Measured onOutline(Point point, String pointer) {
      return new Measured(point, pointer, Optional.of(Foot.on(point)));
    }
  }

  private final Layout layout;
  private final Ring ring;
  private final Labels labels;
  private final Outline outline;
  private final List<Finding> findings = new ArrayList<>();
  private final Map<HoleId, Measured> stated = new TreeMap<>();
  private final Map<HoleId, Measured> byMain = new TreeMap<>();
  private final Map<HoleId, Measured> byCross = new TreeMap<>();

  Placing(Layout layout, Ring ring, Labels labels, Outline outline) {
    this.layout = layout;
    this.ring = ring;
    this.labels = labels;
    this.outline = outline;
  }

  HolePositions positions() {
    // One that is out of its range is left out there; another source stands in.
    HoleCoordinates.of(layout)
        .forEach(
            (hole, c) -> {
              if (ring.has(hole)) {
                Optional<Foot> foot = Foot.of(outline, hole.side(), c.point());
                stated.put(hole, new Measured(c.point(), "/holes/at/" + c.ref(), foot));
              }
            });
    for (Side side : Side.values()) {
      readCrosses(side);
      for (End end : End.values()) {
        readMains(side, end);
      }
    }
    byMain.forEach(this::compare);
    Map<HoleId, Point> points = new TreeMap<>();
    for (Side side : Side.values()) {
      for (int i = 0; i < ring.size(side); i++) {
        HoleId hole = ring.at(side, i);
        Optional<Measured> measured = source(hole);
        points.put(hole, measured.isPresent() ? measured.get().point() : byArcLaw(hole, points));
      }
      checkOrder(side, points);
    }
    return new HolePositions(points, findings);
  }

  private Point byArcLaw(HoleId hole, Map<HoleId, Point> points) {
    Point twin = points.get(hole.mirrored());
    boolean alike =
        outline instanceof Superellipse
            && ring.size(Side.LEFT) == ring.size(Side.RIGHT)
            && source(hole.mirrored()).isEmpty();
    return alike && twin != null ? twin.mirrored() : outline.atArc(hole.side(), arc(hole));
  }

  /** The arc length that the arc law gives a hole, from the head's axis point. */
  private double arc(HoleId hole) {
    int place = ring.place(hole);
    return outline.halfLengthMm(hole.side()) * (2 * place + 1) / (2 * ring.size(hole.side()));
  }

  /** What was measured for this hole, the first that there is; empty for the arc law. */
  private Optional<Measured> source(HoleId hole) {
    return Optional.ofNullable(stated.get(hole))
        .or(() -> Optional.ofNullable(byMain.get(hole)))
        .or(() -> Optional.ofNullable(byCross.get(hole)));
  }

  private HoleLabel label(HoleId hole) {
    return labels.of(hole.side()).get(ring.place(hole));
  }

  private void readCrosses(Side side) {
    List<Double> below = layout.crossesOffsets().map(o -> o.of(side).below()).orElse(List.of());
    int j = 0;
    for (HoleId hole : ring.list(side)) {
      if (j < below.size() && label(hole).cross()) {
        double mm = layout.mm(below.get(j));
        String pointer = LayoutPointers.crossOffset(layout, side, j);
        double y = outline.headAxisPoint().y() - mm;
        Optional<Point> point = Double.isFinite(y) ? outline.atY(side, y) : Optional.empty();
        j++;
        if (point.isPresent()) {
          byCross.put(hole, Measured.onOutline(point.get(), pointer));
        } else {
          outside(
              "Cross %s lies %s mm below the inside of the head, where the hoop has no %s side."
                  .formatted(j, Words.mm(mm), Words.of(side)),
              mm,
              pointer,
              SpanId.cross(j),
              hole);
        }
      }
    }
  }

  private void readMains(Side side, End end) {
    List<Double> distances = layout.mainsOffsets().map(o -> o.of(side).at(end)).orElse(List.of());
    int k = 0;
    for (HoleId hole : fromAxis(side, end)) {
      if (k < distances.size() && label(hole).main()) {
        double mm = layout.mm(distances.get(k));
        String pointer = LayoutPointers.mainOffset(layout, side, end, k);
        Optional<Point> point = mainPoint(side, end, mm);
        k++;
        if (point.isPresent()) {
          byMain.put(hole, Measured.onOutline(point.get(), pointer));
        } else {
          outside(
              "Main %s lies %s mm %s of the long axis, where the hoop does not reach."
                  .formatted(k, Words.mm(mm), Words.of(side)),
              mm,
              pointer,
              SpanId.main(side, k),
              hole);
        }
      }
    }
  }

  private List<HoleId> fromAxis(Side side, End end) {
    return ring.list(side).stream().filter(h -> h.end() == end).sorted().toList();
  }

  private Optional<Point> mainPoint(Side side, End end, double mm) {
    if (!(mm >= 0 && mm <= Limits.MAX_MM)) {
      return Optional.empty();
    }
    return end == End.HEAD ? outline.headAtX(side, mm) : outline.throatAtX(side, mm);
  }

  private void outside(String message, double mm, String pointer, SpanId span, HoleId hole) {
    if (stated.containsKey(hole)) {
      return; // the hole's coordinates count and this offset is not used
    }
    findings.add(
        Finding.of(FindingCode.OFFSET_OUTSIDE)
            .message(message)
            .at(pointer, layout.places())
            .about(span, hole)
            .fact("offset", mm, "mm")
            .fix("Check the offset, its unit, and the hoop's size.")
            .build());
  }

  private void compare(HoleId hole, Measured main) {
    Measured cross = byCross.get(hole);
    if (cross == null || stated.containsKey(hole)) {
      return;
    }
    double apart = Math.abs(main.point().y() - cross.point().y());
    if (apart > HolePositions.OFFSETS_DIFFER_MM) {
      findings.add(
          Finding.of(FindingCode.OFFSETS_DIFFER)
              .message(
                  "The offsets of main and cross put shared hole %s at heights %s mm apart; the main's counts."
                      .formatted(hole, Words.mm(apart)))
              .at(cross.pointer(), layout.places())
              .about(hole)
              .fact("apart", apart, "mm")
              .fix("Measure both strings again where they touch the inside of the hoop.")
              .build());
    }
  }

  private void checkOrder(Side side, Map<HoleId, Point> points) {
    List<HoleId> list = ring.list(side);
    for (int i = 1; i < list.size(); i++) {
      HoleId before = list.get(i - 1);
      HoleId hole = list.get(i);
      if (!inOrder(before, hole, points)) {
        findings.add(
            Finding.of(FindingCode.HOLE_ORDER)
                .message(
                    "Hole %s does not lie after hole %s on the way from the head to the throat."
                        .formatted(hole, before))
                .at(
                    source(hole).or(() -> source(before)).map(Measured::pointer).orElse("/holes"),
                    layout.places())
                .about(before, hole)
                .fix(fix(before, hole))
                .build());
      }
    }
  }

  private boolean inOrder(HoleId before, HoleId hole, Map<HoleId, Point> points) {
    Optional<Measured> first = source(before);
    Optional<Measured> second = source(hole);
    if (first.isEmpty() && second.isEmpty()) {
      return true; // the arc law's own order
    }
    if (outline instanceof Superellipse) {
      Optional<Foot> foot = foot(before, first, points);
      Optional<Foot> next = foot(hole, second, points);
      if (foot.isPresent() && next.isPresent() && foot.get().surelyBefore(next.get())) {
        return true;
      }
    }
    return arcOf(before, first) < arcOf(hole, second);
  }

  private static Optional<Foot> foot(
      HoleId hole, Optional<Measured> measured, Map<HoleId, Point> points) {
    return measured.isPresent()
        ? measured.get().foot()
        : Optional.ofNullable(points.get(hole)).map(Foot::on); // by the arc law
  }

  private double arcOf(HoleId hole, Optional<Measured> measured) {
    return measured.isPresent() ? outline.arcOf(hole.side(), measured.get().point()) : arc(hole);
  }

  private String fix(HoleId before, HoleId hole) {
    if (source(before).isPresent() && source(hole).isPresent()) {
      return "Check what was measured for the two holes.";
    }
    HoleId bare = source(before).isPresent() ? hole : before;
    return "Only one of the two was measured: state coordinates of %s under holes.at too."
        .formatted(bare);
  }
}
