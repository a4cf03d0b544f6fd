package org.hoopwright.patterns.draw;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hoopwright.geometry.Point;

/** A picture while it is being made: elements in layers, and the room they take. */
final class Scene {

  /** Layers from the bottom up. */
  enum Layer {
    FRAME,
    ZONES,
    SPANS,
    PLATES,
    RUNS,
    HOLES,
    MARKS,
    LEADERS,
    LABELS
  }

  /** Font sizes, in page units. */
  static final double LABEL = 14;

  static final double SMALL = 11.5;

  /** Height of a label in font sizes: labels are made of letters without descenders. */
  private static final double LINE = 0.95;

  private final String prefix;
  private final Map<Layer, List<Element>> layers = new EnumMap<>(Layer.class);
  private final Placer placer = new Placer();
  private Box bounds = new Box(0, 0, 0, 0);

  Scene(String prefix) {
    this.prefix = prefix;
    for (Layer layer : Layer.values()) {
      layers.put(layer, new ArrayList<>());
    }
  }

  /** An id that is unique on the page when {@code name} is unique in the picture. */
  String id(String name) {
    return prefix + name;
  }

  Placer placer() {
    return placer;
  }

  void add(Layer layer, Element element) {
    layers.getOrDefault(layer, new ArrayList<>()).add(element);
  }

  /** Makes the picture large enough for this. */
  void cover(Box box) {
    bounds = bounds.union(box);
  }

  void cover(List<Point> points) {
    points.forEach(p -> cover(Box.around(p, 4, 4)));
  }

  Box bounds() {
    return bounds;
  }

  /** The layers as groups, bottom first; empty ones are left out. */
  List<Element> groups() {
    List<Element> groups = new ArrayList<>();
    layers.forEach(
        (layer, elements) -> {
          if (!elements.isEmpty()) {
            groups.add(Element.of("g").addAll(elements));
          }
        });
    return groups;
  }

  /**
   * Writes a label outside the frame, with a line to what it is about when it cannot stand close.
   *
   * @param about where the line begins
   * @param from from where on there is room
   * @param out which way to look
   */
  Optional<Element> label(
      String id, String text, String look, double size, Point about, Point from, Point out) {
    double width = Words.width(text, size) * (look.contains("bold") ? Words.BOLD : 1);
    // A word's space to the next label: two that touch read as one.
    Optional<Box> place = placer.outside(from, out, width + 0.4 * size, size * LINE);
    place.ifPresent(box -> leader(about, from, box));
    return place.map(box -> textIn(Layer.LABELS, id, text, look, size, box));
  }

  private void leader(Point about, Point from, Box box) {
    Point near =
        new Point(
            Math.max(box.minX(), Math.min(box.maxX(), from.x())),
            Math.max(box.minY(), Math.min(box.maxY(), from.y())));
    if (near.distanceTo(from) > 6) {
      add(
          Layer.LEADERS,
          Element.of("path")
              .attr("class", "leader")
              .attr("d", FrameShape.path(List.of(about, near))));
    }
  }

  /** Writes a label on a line of the picture, where there is room. */
  Optional<Element> labelOn(
      String id, String text, String look, double size, Point a, Point b, double at) {
    double width = Words.width(text, size) * (look.contains("bold") ? Words.BOLD : 1);
    return placer
        .onLine(a, b, at, width, size * LINE)
        .map(
            box -> {
              plate(box);
              return textIn(Layer.LABELS, id, text, look, size, box);
            });
  }

  /** Hides the line under a label, so that it does not strike the letters through. */
  private void plate(Box box) {
    add(
        Layer.PLATES,
        Element.of("rect")
            .attr("class", "plate")
            .attr("x", box.minX() - 1)
            .attr("y", box.minY())
            .attr("width", box.width() + 2)
            .attr("height", box.height()));
  }

  /** Writes a text in the middle of a box. */
  Element textIn(Layer layer, String id, String text, String look, double size, Box box) {
    Point c = box.centre();
    Element element =
        Element.of("text")
            .attr("id", id(id))
            .attr("class", look)
            .attr("x", c.x())
            .attr("y", c.y() + 0.36 * size)
            .attr("font-size", size)
            .attr("text-anchor", "middle")
            .text(text);
    add(layer, element);
    cover(box);
    return element;
  }
}
