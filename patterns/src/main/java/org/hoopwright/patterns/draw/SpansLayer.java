package org.hoopwright.patterns.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Crossing;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.geometry.Point;

/** Draws mains and crosses; where a string passes under another it is interrupted. */
final class SpansLayer {

  private static final double GAP = 5.5;
  private static final double CROSSING = 4;

  private final Scene scene;
  private final FrameShape shape;
  private final Bed bed;

  SpansLayer(Scene scene, FrameShape shape, Bed bed) {
    this.scene = scene;
    this.shape = shape;
    this.bed = bed;
  }

  /**
   * Draws all spans; labels then keep away from where they cross, as far as they can.
   *
   * @param finish adds to a span's element what its stage knows about it: how it looks
   */
  void draw(Function<SpanId, Look> finish) {
    for (Span span : bed.spans()) {
      Look look = finish.apply(span.id());
      Element path =
          Element.of("path")
              .attr("id", scene.id("span-" + span.id()))
              .attr("class", "span " + (span.id().isMain() ? "main" : "cross") + look.classes())
              .attr("d", line(span));
      look.data().forEach(path::attr);
      if (span.id().isCross()) {
        keepCrossingsClear(span);
      }
      scene.add(
          Scene.Layer.SPANS,
          path.title(
              (span.id().isMain() ? "Main " : "Cross ")
                  + span.id()
                  + " from "
                  + span.from()
                  + " to "
                  + span.to()
                  + "."));
    }
  }

  private void keepCrossingsClear(Span span) {
    Point a = shape.mouth(span.from()).inner();
    Point b = shape.mouth(span.to()).inner();
    for (Crossing c : bed.crossings(span.id())) {
      double part = span.lengthMm() <= 0 ? 0 : c.fromLeftMm() / span.lengthMm();
      Point at = Point.interpolate(a, b, Math.max(0, Math.min(1, part)));
      scene.placer().avoid(Box.around(at, CROSSING, CROSSING));
    }
  }

  private String line(Span span) {
    Point a = shape.mouth(span.from()).inner();
    Point b = shape.mouth(span.to()).inner();
    double length = a.distanceTo(b);
    StringBuilder d = new StringBuilder();
    Point from = shape.mouth(span.from()).centre();
    if (length > 4 * GAP) {
      for (double at : gaps(span, length)) {
        Point before = Point.interpolate(a, b, (at - GAP) / length);
        Point behind = Point.interpolate(a, b, (at + GAP) / length);
        d.append(FrameShape.path(bent(from, a, before, d.length() == 0)));
        from = behind;
      }
    }
    Point end = shape.mouth(span.to()).centre();
    List<Point> last = new ArrayList<>(bent(from, a, b, d.length() == 0));
    last.add(end);
    return d.append(FrameShape.path(last)).toString();
  }

  private static List<Point> bent(Point from, Point mouth, Point to, boolean first) {
    return first ? List.of(from, mouth, to) : List.of(from, to);
  }

  /** Where the span is the lower one, as far as the picture has room for it; in order. */
  private List<Double> gaps(Span span, double length) {
    List<Double> gaps = new ArrayList<>();
    double after = GAP;
    for (Crossing c : bed.crossings(span.id())) {
      boolean over = span.id().isCross() == (c.crossOver() != shape.back());
      double mm = span.id().isMain() ? c.fromHeadMm() : c.fromLeftMm();
      double at = span.lengthMm() <= 0 ? 0 : mm / span.lengthMm() * length;
      if (!over && at - GAP >= after - GAP && at + GAP < length) {
        gaps.add(at);
        after = at + 2 * GAP;
      }
    }
    return gaps;
  }

  /** Writes the spans' names in a row and a column through the middle. */
  void names() {
    for (Span span : bed.spans()) {
      Point a = shape.mouth(span.from()).inner();
      Point b = shape.mouth(span.to()).inner();
      double at = a.distanceTo(b) / 2;
      if (span.id().isMain()) {
        // Half-way between two crosses near the middle, so that no crossing is hidden.
        at = rowBetween(span, at);
      }
      scene.labelOn("name-" + span.id(), span.id().toString(), "span-name", Scene.SMALL, a, b, at);
    }
  }

  private double rowBetween(Span span, double middle) {
    int j = bed.crossCount() / 2;
    if (j < 1 || j >= bed.crossCount() || span.lengthMm() <= 0) {
      return middle;
    }
    List<Crossing> met = bed.crossings(span.id());
    for (int i = 0; i + 1 < met.size(); i++) {
      if (met.get(i).cross().number() == j) {
        double mm = (met.get(i).fromHeadMm() + met.get(i + 1).fromHeadMm()) / 2;
        return mm * 2 * middle / span.lengthMm();
      }
    }
    return middle;
  }
}
