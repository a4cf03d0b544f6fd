package org.hoopwright.patterns.draw;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.bed.Span;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.ClampSide;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.Start;
import org.hoopwright.bench.StartMark;
import org.hoopwright.bench.Step;
import org.hoopwright.geometry.Point;

/** Draws what a plan's steps add to the route: clamps, grips and the starting clamp's mark. */
final class StepLayer {

  private final Scene scene;
  private final FrameShape shape;
  private final BenchPlan plan;
  private final StepStates states;
  private final RouteLayer strings;

  StepLayer(Scene scene, FrameShape shape, BenchPlan plan, StepStates states, RouteLayer strings) {
    this.scene = scene;
    this.shape = shape;
    this.plan = plan;
    this.states = states;
    this.strings = strings;
  }

  /** Draws what is there after a step, or all that is there after any. */
  void draw(int step, boolean all) {
    for (int i = 0; i < plan.steps().size(); i++) {
      int n = i + 1;
      if (plan.steps().get(i) instanceof Step.SetClamp s && shown("clamp-" + n, step, all)) {
        clamp(n, s, step, all);
      } else if (plan.steps().get(i) instanceof Step.Pull s && shown("grip-" + n, step, all)) {
        grip(n, s, step, all);
      }
    }
    plan.start()
        .flatMap(Start::mark)
        .filter(m -> shown("start-mark", step, all))
        .ifPresent(m -> mark(m, step, all));
  }

  private boolean shown(String name, int step, boolean all) {
    return all || states.at(name, step).equals(StepStates.ON);
  }

  private void clamp(int n, Step.SetClamp s, int step, boolean all) {
    boolean starting = s.clamp().startsWith("starting");
    Span span = plan.bed().span(s.span());
    FrameShape.Mouth near = shape.mouth(s.near());
    double length = clampLength();
    Element sign;
    if (s.side() == ClampSide.INSIDE) {
      Point from = near.inner();
      Point to = shape.mouth(span.other(s.near())).inner();
      double at = s.distanceMm() * shape.scale();
      sign = ClampSign.inside(from, to, at, length, shortName(s.clamp()));
      if (!all) {
        scene.placer().take(ClampSign.roomInside(from, to, at, length));
      }
    } else {
      double at = Math.min(40, 6 + s.distanceMm() * shape.scale());
      Point middle = FrameShape.along(near.outer(), near.out(), at + 12);
      sign = ClampSign.outside(near, at, 24, shortName(s.clamp()));
      Box box = Box.around(middle, 26, 26);
      scene.placer().take(box);
      scene.cover(box);
    }
    String name = "clamp-" + n;
    Look look = states.look(name, step, all, starting ? " starting" : " machine");
    sign.attr("id", scene.id(name)).attr("class", "clamp" + look.classes());
    look.data().forEach(sign::attr);
    scene.add(
        Scene.Layer.MARKS,
        sign.title(
            Terms.clamp(s.clamp())
                + " on "
                + s.span()
                + (s.side() == ClampSide.INSIDE ? " inside near " : " outside at ")
                + s.near()
                + "."));
  }

  private double clampLength() {
    Job job = plan.job();
    return Math.max(16, job.bench().clampLengthMm() * shape.scale());
  }

  private static String shortName(String clamp) {
    return clamp.charAt(0) + clamp.substring(clamp.lastIndexOf('-') + 1);
  }

  /** An arrow away from the frame where the tensioner pulls. */
  private void grip(int n, Step.Pull s, int step, boolean all) {
    String name = "grip-" + n;
    Look look = states.look(name, step, all, "");
    Element group =
        Element.of("g").attr("id", scene.id(name)).attr("class", "grip" + look.classes());
    look.data().forEach(group::attr);
    group.title("Pull of " + Markup.list(s.tails()) + " at " + Markup.list(s.at()) + ".");
    for (int i = 0; i < s.at().size(); i++) {
      FrameShape.Mouth mouth = shape.mouth(s.at().get(i));
      Point end = FrameShape.along(mouth.outer(), mouth.out(), 26);
      List<Point> line = List.of(mouth.outer(), end);
      group.add(Element.of("path").attr("class", "line").attr("d", FrameShape.path(line)));
      group.add(RouteLayer.arrow(end, mouth.out(), 9));
      Box box = Box.around(FrameShape.along(mouth.outer(), mouth.out(), 18), 24, 34);
      if (!all) {
        scene.placer().take(box);
      }
      scene.cover(box);
    }
    scene.add(Scene.Layer.MARKS, group);
  }

  private void mark(StartMark mark, int step, boolean all) {
    for (Run run : strings.runs()) {
      boolean forward = run.from().equals(mark.from()) && run.to().equals(mark.to());
      boolean backward = run.from().equals(mark.to()) && run.to().equals(mark.from());
      if (forward || backward) {
        List<Point> line = new ArrayList<>(strings.lanes().line(run));
        if (backward) {
          java.util.Collections.reverse(line);
        }
        Look look = states.look("start-mark", step, all, "");
        Element path =
            Element.of("path")
                .attr("id", scene.id("start-mark"))
                .attr("class", "start-mark" + look.classes())
                .attr(
                    "d",
                    FrameShape.path(
                        part(
                            line.subList(1, line.size()),
                            mark.lowMm() * shape.scale(),
                            mark.highMm() * shape.scale())));
        look.data().forEach(path::attr);
        scene.add(
            Scene.Layer.RUNS,
            path.title(
                "Where the starting clamp's mark may end, between "
                    + mark.from()
                    + " and "
                    + mark.to()
                    + "."));
        return;
      }
    }
  }

  /** The part of a line between two distances from its beginning. */
  private static List<Point> part(List<Point> line, double low, double high) {
    List<Point> part = new ArrayList<>();
    double before = 0;
    for (int i = 0; i + 1 < line.size(); i++) {
      double length = line.get(i).distanceTo(line.get(i + 1));
      double from = Math.max(0, low - before);
      double to = Math.min(length, high - before);
      if (length > 0 && from <= to) {
        part.add(Point.interpolate(line.get(i), line.get(i + 1), from / length));
        part.add(Point.interpolate(line.get(i), line.get(i + 1), to / length));
      }
      before += length;
    }
    if (part.isEmpty()) {
      part.add(line.get(line.size() - 1));
      part.add(line.get(line.size() - 1));
    }
    return part;
  }
}
