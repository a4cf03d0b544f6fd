package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.LayoutBuilder;
import org.hoopwright.geometry.Point;
import org.hoopwright.patterns.json.JsonNode;
import org.hoopwright.patterns.json.JsonNode.ArrayNode;
import org.hoopwright.patterns.json.Pointers;

/** Reads {@code hoop}. */
final class HoopBinder {

  static final String ELLIPSE = "superellipse";
  static final String POINTS = "points";

  /** An ellipse. */
  static final double DEFAULT_EXPONENT = 2.0;

  /** The exponent of an ellipse, which holds when none is stated. */
  static final double EXPONENT = 2.0;

  // Any hoop that no check minds; what rests on it is not reported.
  private static final Hoop NOT_KNOWN = new Hoop.Superellipse(300, 250, DEFAULT_EXPONENT);

  private static final List<String> MEMBERS =
      List.of("shape", "length", "width", "exponent", "points");

  private final Values values;

  HoopBinder(Values values) {
    this.values = values;
  }

  /** Whether the hoop is known; in the builder there is one in any case. */
  boolean bind(Optional<JsonNode> node, LayoutBuilder b) {
    Optional<Hoop> hoop =
        node.flatMap(n -> values.object(n, "/hoop", "hoop"))
            .flatMap(o -> hoop(MemberReader.of(values, o, "/hoop", "hoop", MEMBERS)));
    b.hoop(hoop.orElse(NOT_KNOWN));
    return hoop.isPresent();
  }

  private Optional<Hoop> hoop(MemberReader m) {
    Optional<String> shape =
        m.need("shape")
            .flatMap(n -> values.word(n, "/hoop/shape", "hoop.shape", List.of(ELLIPSE, POINTS)));
    if (shape.isEmpty()) {
      return Optional.empty(); // which members are needed is not known
    }
    if (shape.get().equals(POINTS)) {
      for (String name : List.of("length", "width", "exponent")) {
        m.refuse(
            name,
            "does not belong to a hoop of shape \"points\".",
            "Leave it out, or state the shape \"superellipse\".");
      }
      return m.need("points")
          .flatMap(n -> values.list(n, "/hoop/points", "hoop.points", "pairs [x, y]"))
          .map(this::points);
    }
    m.refuse(
        "points",
        "does not belong to a hoop of shape \"superellipse\".",
        "Leave it out, or state the shape \"points\".");
    Optional<Double> length = number(m, m.need("length"), "length");
    Optional<Double> width = number(m, m.need("width"), "width");
    Optional<Double> exponent =
        m.has("exponent") ? number(m, m.find("exponent"), "exponent") : Optional.of(EXPONENT);
    return length.isPresent() && width.isPresent() && exponent.isPresent()
        ? Optional.of(new Hoop.Superellipse(length.get(), width.get(), exponent.get()))
        : Optional.empty();
  }

  private Optional<Double> number(MemberReader m, Optional<JsonNode> node, String name) {
    return node.flatMap(n -> values.number(n, m.pointer(name), m.title(name)));
  }

  private Hoop points(ArrayNode list) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < list.items().size(); i++) {
      int index = i;
      values
          .point(
              list.items().get(i),
              () ->
                  new Values.Named(
                      Pointers.to("/hoop/points", index), HoleValues.entry(index, "hoop.points")))
          .ifPresent(points::add);
    }
    return new Hoop.Points(points);
  }
}
