package org.hoopwright.patterns.draw;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Point;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Moment;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Piece;
import org.hoopwright.route.Route;
import org.hoopwright.route.StringEnd;

/** Draws a route on its bed: runs, directions, the numbers of the passes, knots. */
final class RouteLayer {

  private static final double NUMBER_AT = 12;
  private static final double ARROW_AT = 3;
  private static final double KNOT_AT = 24;

  private final Scene scene;
  private final FrameShape shape;
  private final Bed bed;
  private final Route route;
  private final List<Run> runs;
  private final Lanes lanes;
  private final Map<SpanId, Integer> numbers = new TreeMap<>();
  private final Map<SpanId, EndName> ends = new TreeMap<>();

  RouteLayer(Scene scene, FrameShape shape, Bed bed, Route route) {
    this.scene = scene;
    this.shape = shape;
    this.bed = bed;
    this.route = route;
    this.runs = Run.of(route);
    this.lanes = new Lanes(shape, runs);
    for (Moment m : route.order()) {
      if (m.what() == Moment.What.PASS) {
        SpanId span = passes(m.end()).get(m.pass()).span();
        numbers.put(span, numbers.size() + 1);
        ends.put(span, m.end());
      }
    }
  }

  private List<Pass> passes(EndName name) {
    return route.end(name).map(StringEnd::passes).orElse(List.of());
  }

  List<Run> runs() {
    return runs;
  }

  Lanes lanes() {
    return lanes;
  }

  /** Whose string a span is, as a class. */
  String endClass(SpanId span) {
    EndName end = ends.get(span);
    return end == null ? "" : " end-" + end.word();
  }

  /** Draws the runs, each beside the others. */
  void runs(Function<String, Look> finish) {
    for (Run run : runs) {
      List<Point> line = lanes.line(run);
      Look look = finish.apply(run.id());
      Element group =
          Element.of("g")
              .attr("id", scene.id(run.id()))
              .attr("class", "run end-" + run.end().word() + look.classes());
      look.data().forEach(group::attr);
      group.title(about(run));
      group.add(Element.of("path").attr("class", "line").attr("d", FrameShape.path(line)));
      int middle = line.size() / 2;
      Point a = line.get(middle - 1);
      Point b = line.get(Math.min(line.size() - 1, middle + 1));
      if (!run.id().equals(Run.CENTRE_LOOP) && a.distanceTo(b) > 0) {
        group.add(arrow(Point.interpolate(a, b, 0.5), direction(a, b), 5.5));
      }
      scene.add(Scene.Layer.RUNS, group);
      scene.cover(line);
      line.forEach(p -> scene.placer().take(Box.around(p, 7, 7)));
    }
  }

  private static String about(Run run) {
    if (run.id().equals(Run.CENTRE_LOOP)) {
      return "The centre loop, from " + run.from() + " to " + run.to() + ".";
    }
    return (run.before().isPresent() ? "Run of the " : "To the knot of the ")
        + Terms.end(run.end())
        + " from "
        + run.from()
        + " to "
        + run.to()
        + ".";
  }

  static Point direction(Point from, Point to) {
    double length = Math.max(1e-9, from.distanceTo(to));
    return new Point((to.x() - from.x()) / length, (to.y() - from.y()) / length);
  }

  /** A triangle that points in a direction of length 1, its middle at a point. */
  static Element arrow(Point at, Point way, double size) {
    Point tip = FrameShape.along(at, way, size);
    Point foot = FrameShape.along(at, way, -size * 0.7);
    Point across = new Point(-way.y(), way.x());
    return Element.of("path")
        .attr("class", "arrow")
        .attr(
            "d",
            FrameShape.path(
                    List.of(
                        tip,
                        FrameShape.along(foot, across, size * 0.75),
                        FrameShape.along(foot, across, -size * 0.75)))
                + "Z");
  }

  /** Draws which way each span is strung, and when: its number in time order. */
  void passes(Function<SpanId, Look> finish) {
    for (Piece piece : route.pieces()) {
      for (StringEnd end : piece.ends()) {
        for (Pass pass : end.passes()) {
          Point a = shape.mouth(pass.from()).inner();
          Point b = shape.mouth(pass.to()).inner();
          if (a.distanceTo(b) <= 0) {
            continue;
          }
          Point way = direction(a, b);
          Look look = finish.apply(pass.span());
          Element arrow = arrow(FrameShape.along(b, way, -ARROW_AT - 6), way, 6.5);
          arrow.attr("class", "arrow end-" + end.name().word() + look.classes());
          look.data().forEach(arrow::attr);
          scene.placer().take(Box.around(FrameShape.along(b, way, -ARROW_AT - 6), 12, 12));
          scene.add(Scene.Layer.MARKS, arrow);
        }
      }
    }
    for (Piece piece : route.pieces()) {
      for (StringEnd end : piece.ends()) {
        for (Pass pass : end.passes()) {
          String number = String.valueOf(numbers.getOrDefault(pass.span(), 0));
          Look look = finish.apply(pass.span());
          scene
              .labelOn(
                  "pass-" + pass.span(),
                  number,
                  "pass bold" + look.classes(),
                  Scene.SMALL + 1,
                  shape.mouth(pass.from()).inner(),
                  shape.mouth(pass.to()).inner(),
                  NUMBER_AT)
              .ifPresent(text -> look.data().forEach(text::attr));
        }
      }
    }
  }

  /** Draws the knots: a tie-off knot on its anchor inside, a starting knot outside. */
  void knots(Function<String, Look> finish) {
    for (Piece piece : route.pieces()) {
      for (StringEnd end : piece.ends()) {
        Knot knot = end.finish();
        String id = "knot-" + end.name().word();
        Look look = finish.apply(id);
        FrameShape.Mouth mouth = shape.mouth(knot.hole());
        Point at = knotAt(knot, mouth);
        Element group =
            Element.of("g").attr("id", scene.id(id)).attr("class", "knot" + look.classes());
        look.data().forEach(group::attr);
        group.title(
            (knot.kind() == Knot.Kind.STARTING ? "Starting knot at " : "Tie-off knot at ")
                + knot.hole()
                + " round "
                + knot.anchor()
                + ", "
                + Terms.end(end.name())
                + ".");
        group.addAll(knotSign(at));
        scene.add(Scene.Layer.MARKS, group);
        Box box = Box.around(at, 14, 14);
        scene.placer().take(box);
        scene.cover(box);
        end.startingClamp().ifPresent(hole -> startingClamp(end.name(), hole, look));
      }
    }
  }

  private Point knotAt(Knot knot, FrameShape.Mouth mouth) {
    if (knot.kind() == Knot.Kind.STARTING) {
      return FrameShape.along(mouth.outer(), mouth.out(), 3);
    }
    Optional<HoleId> other =
        bed.find(knot.anchor()).filter(s -> s.uses(knot.hole())).map(s -> s.other(knot.hole()));
    return other
        .map(o -> FrameShape.along(mouth.inner(), toward(mouth, o), KNOT_AT))
        .orElse(mouth.inner());
  }

  private Point toward(FrameShape.Mouth mouth, HoleId other) {
    return direction(mouth.inner(), shape.mouth(other).inner());
  }

  /** A knot's sign: a filled ball with a light eye. */
  static List<Element> knotSign(Point at) {
    return List.of(
        Element.of("circle")
            .attr("class", "ball")
            .attr("cx", at.x())
            .attr("cy", at.y())
            .attr("r", 6.5),
        Element.of("circle")
            .attr("class", "eye")
            .attr("cx", at.x())
            .attr("cy", at.y())
            .attr("r", 2.2));
  }

  private void startingClamp(EndName end, HoleId hole, Look look) {
    FrameShape.Mouth mouth = shape.mouth(hole);
    Element clamp =
        ClampSign.outside(mouth, 6, 24, "s1")
            .attr("id", scene.id("begin-" + end.word()))
            .attr("class", "clamp starting" + look.classes())
            .title("Starting clamp outside the frame at " + hole + ".");
    scene.add(Scene.Layer.MARKS, clamp);
    Box box = Box.around(FrameShape.along(mouth.outer(), mouth.out(), 14), 22, 22);
    scene.placer().take(box);
    scene.cover(box);
  }

  /** Writes beside each knot whose it is. */
  void knotNames(Function<String, Look> finish) {
    for (Piece piece : route.pieces()) {
      for (StringEnd end : piece.ends()) {
        Knot knot = end.finish();
        FrameShape.Mouth mouth = shape.mouth(knot.hole());
        Look look = finish.apply("knot-" + end.name().word());
        scene
            .label(
                "knot-name-" + end.name().word(),
                Terms.knot(end.name(), knot),
                "knot-name bold" + look.classes(),
                Scene.LABEL,
                mouth.outer(),
                FrameShape.along(mouth.outer(), mouth.out(), 22),
                mouth.out())
            .ifPresent(text -> look.data().forEach(text::attr));
      }
    }
  }
}
