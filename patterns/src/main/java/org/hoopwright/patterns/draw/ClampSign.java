package org.hoopwright.patterns.draw;

import java.util.List;
import org.hoopwright.geometry.Point;

/** Clamps on the page: a box with jaws inside the hoop, a wedge outside the frame. */
final class ClampSign {

  private ClampSign() {}

  /** A machine clamp on a span. */
  static Element inside(Point from, Point to, double at, double length, String text) {
    Point way = RouteLayer.direction(from, to);
    Point across = new Point(-way.y(), way.x());
    Point a = FrameShape.along(from, way, at);
    Point b = FrameShape.along(from, way, at + length);
    double half = 9.5;
    Point middle = Point.interpolate(a, b, 0.5);
    return Element.of("g")
        .add(
            Element.of("path")
                .attr("class", "jaws")
                .attr(
                    "d",
                    FrameShape.path(
                            List.of(
                                FrameShape.along(a, across, half),
                                FrameShape.along(b, across, half),
                                FrameShape.along(b, across, -half),
                                FrameShape.along(a, across, -half)))
                        + "Z"))
        .add(name(middle, text));
  }

  private static Element name(Point middle, String text) {
    return Element.of("text")
        .attr("class", "clamp-name bold")
        .attr("x", middle.x())
        .attr("y", middle.y() + 4)
        .attr("font-size", 11)
        .attr("text-anchor", "middle")
        .text(text);
  }

  /** The room that a clamp inside takes. */
  static Box roomInside(Point from, Point to, double at, double length) {
    Point way = RouteLayer.direction(from, to);
    Point middle = FrameShape.along(from, way, at + length / 2);
    double w = Math.abs(way.x()) * length + Math.abs(way.y()) * 19;
    double h = Math.abs(way.y()) * length + Math.abs(way.x()) * 19;
    return Box.around(middle, Math.max(w, 21), Math.max(h, 14));
  }

  /** A starting clamp outside the frame at a hole: a wedge that points to the frame. */
  static Element outside(FrameShape.Mouth mouth, double at, double length, String text) {
    Point across = new Point(-mouth.out().y(), mouth.out().x());
    Point near = FrameShape.along(mouth.outer(), mouth.out(), at);
    Point far = FrameShape.along(mouth.outer(), mouth.out(), at + length);
    return Element.of("g")
        .add(
            Element.of("path")
                .attr("class", "jaws")
                .attr(
                    "d",
                    FrameShape.path(
                            List.of(
                                FrameShape.along(near, across, 4),
                                FrameShape.along(far, across, 12),
                                FrameShape.along(far, across, -12),
                                FrameShape.along(near, across, -4)))
                        + "Z"))
        .add(name(FrameShape.along(far, mouth.out(), -9), text));
  }
}
