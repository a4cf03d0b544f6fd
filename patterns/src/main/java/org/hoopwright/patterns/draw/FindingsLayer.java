package org.hoopwright.patterns.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.Severity;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Point;

/** Marks findings at their holes and spans with the numbers of the list below the picture. */
final class FindingsLayer {

  /** How many findings are marked and listed; the rest is counted. */
  static final int MOST = 60;

  private static final int MOST_MARKS_EACH = 12;
  private static final double SIGN = 21;

  private final Scene scene;
  private final FrameShape shape;
  private final Optional<Bed> bed;

  FindingsLayer(Scene scene, FrameShape shape, Optional<Bed> bed) {
    this.scene = scene;
    this.shape = shape;
    this.bed = bed;
  }

  void draw(List<Finding> findings) {
    for (int i = 0; i < Math.min(MOST, findings.size()); i++) {
      int number = i + 1;
      Finding finding = findings.get(i);
      List<String> about = finding.about().stream().distinct().limit(MOST_MARKS_EACH).toList();
      for (String name : about) {
        Optional<HoleId> hole = HoleId.find(name).filter(shape::has);
        if (hole.isPresent()) {
          atHole(number, finding, hole.get());
        } else {
          span(name).ifPresent(s -> atSpan(number, finding, s, name));
        }
      }
    }
  }

  private Optional<Span> span(String name) {
    return SpanId.find(name).flatMap(id -> bed.flatMap(b -> b.find(id)));
  }

  private void atHole(int number, Finding finding, HoleId hole) {
    FrameShape.Mouth mouth = shape.mouth(hole);
    Point from = FrameShape.along(mouth.outer(), mouth.out(), 8);
    scene
        .placer()
        .outside(from, mouth.out(), SIGN, SIGN)
        .ifPresent(box -> mark(number, finding, hole.toString(), mouth.outer(), box));
  }

  private void atSpan(int number, Finding finding, Span span, String name) {
    Point a = shape.mouth(span.from()).inner();
    Point b = shape.mouth(span.to()).inner();
    scene
        .placer()
        .onLine(a, b, a.distanceTo(b) * 0.3, SIGN, SIGN)
        .ifPresent(box -> mark(number, finding, name, box.centre(), box));
  }

  private void mark(int number, Finding finding, String name, Point about, Box box) {
    scene.add(
        Scene.Layer.LEADERS,
        Element.of("path")
            .attr("class", "leader")
            .attr("d", FrameShape.path(List.of(about, box.centre()))));
    scene.add(
        Scene.Layer.LABELS,
        sign(number, finding, box.centre())
            .attr("class", "finding " + finding.severity().word())
            .title(
                finding.severity().word() + " at " + name + ": " + Words.clean(finding.message())));
    scene.cover(box);
  }

  /**
   * A finding's sign: an eight-cornered one for errors, a triangle for warnings, a ring for notes.
   */
  static Element sign(int number, Finding finding, Point at) {
    return sign(number, finding.severity(), at);
  }

  static Element sign(int number, Severity severity, Point at) {
    List<Point> corners = new ArrayList<>();
    double r = SIGN / 2;
    if (severity == Severity.WARNING) {
      corners.add(new Point(at.x(), at.y() - r));
      corners.add(new Point(at.x() + r, at.y() + r * 0.8));
      corners.add(new Point(at.x() - r, at.y() + r * 0.8));
    } else if (severity == Severity.ERROR) {
      for (double[] c :
          new double[][] {{-4, -9}, {4, -9}, {9, -4}, {9, 4}, {4, 9}, {-4, 9}, {-9, 4}, {-9, -4}}) {
        corners.add(new Point(at.x() + c[0], at.y() + c[1]));
      }
    }
    Element group = Element.of("g");
    group.add(
        corners.isEmpty()
            ? Element.of("circle").attr("cx", at.x()).attr("cy", at.y()).attr("r", 9)
            : Element.of("path").attr("d", FrameShape.path(corners) + "Z"));
    if (number > 0) {
      group.add(
          Element.of("text")
              .attr("class", "finding-number bold")
              .attr("x", at.x())
              .attr("y", at.y() + (severity == Severity.WARNING ? 6.5 : 4))
              .attr("font-size", number > 9 ? 9 : 11)
              .attr("text-anchor", "middle")
              .text(String.valueOf(number)));
    }
    return group;
  }
}
