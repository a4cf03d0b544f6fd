package org.hoopwright.patterns.draw;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.HolePositions;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoopOutline;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Outline;
import org.hoopwright.geometry.Point;
import org.hoopwright.route.Route;

/**
 * A picture of a frame at a stage of its work, as SVG.
 *
 * <pre>{@code
 * String svg = Drawing.bed(bed).svg();
 * }</pre>
 *
 * <p>Any layout can be drawn, also one with errors; what of it cannot be drawn is left out. The
 * picture needs no network, no script and no font of its own. Every hole, span, run and knot is one
 * element with an id ({@code hole-L7H}, {@code span-X1}, {@code run-L1-L2}, {@code knot-short}) and
 * a title for screen readers. Immutable; the same input gives the same text on every machine.
 */
public final class Drawing {

  private static final int MOST_NAMES = 600;

  private final Element root;

  private Drawing(Element root) {
    this.root = root;
  }

  /** The frame with its holes. */
  public static Drawing layout(Layout layout) {
    return layout(layout, DrawingOptions.standard());
  }

  /** The frame with its holes; only the list of findings when its hoop cannot be drawn. */
  public static Drawing layout(Layout layout, DrawingOptions options) {
    Optional<Outline> outline = HoopOutline.of(layout).outline();
    Map<HoleId, Point> positions = HolePositions.of(layout).points();
    Scene scene = new Scene(options.idPrefix());
    Page page = new Page(scene, options, layout.name());
    if (outline.isEmpty() || positions.isEmpty()) {
      return new Drawing(page.finished("The hoop or its holes cannot be drawn.", List.of()));
    }
    FrameShape shape = new FrameShape(outline.get(), positions, options.back());
    HolesLayer holes = new HolesLayer(scene, shape, layout, Optional.empty());
    holes.draw();
    if (positions.size() <= MOST_NAMES) {
      holes.names(true);
    }
    holes.sides();
    new FindingsLayer(scene, shape, Optional.empty()).draw(options.findings());
    return new Drawing(
        page.finished(
            "Frame with "
                + positions.size()
                + " holes, for "
                + layout.mainsCount()
                + " mains and "
                + layout.crossesCount()
                + " crosses",
            new Legend(layout, options.findings()).holes().entries()));
  }

  /** The bed: which span runs between which holes, and how they are woven. */
  public static Drawing bed(Bed bed) {
    return bed(bed, DrawingOptions.standard());
  }

  /** The bed: which span runs between which holes, and how they are woven. */
  public static Drawing bed(Bed bed, DrawingOptions options) {
    Scene scene = new Scene(options.idPrefix());
    Page page = new Page(scene, options, bed.layout().name());
    FrameShape shape = shape(bed, options);
    HolesLayer holes = new HolesLayer(scene, shape, bed.layout(), Optional.of(bed));
    holes.draw();
    SpansLayer spans = new SpansLayer(scene, shape, bed);
    spans.draw(id -> Look.PLAIN);
    spans.names();
    if (bed.positions().size() <= MOST_NAMES) {
      holes.names(true);
    }
    holes.sides();
    new FindingsLayer(scene, shape, Optional.of(bed)).draw(options.findings());
    return new Drawing(
        page.finished(
            "Bed: " + Terms.pattern(bed),
            new Legend(bed.layout(), options.findings()).holes().headZone().spans().entries()));
  }

  /** The route: in which order the string runs through the spans, its runs and its knots. */
  public static Drawing route(Bed bed, Route route) {
    return route(bed, route, DrawingOptions.standard());
  }

  /**
   * The route: in which order the string runs through the spans, its runs and its knots.
   *
   * @throws IllegalArgumentException when the route is not one of this bed
   */
  public static Drawing route(Bed bed, Route route, DrawingOptions options) {
    Scene scene = new Scene(options.idPrefix());
    Page page = new Page(scene, options, bed.layout().name());
    FrameShape shape = shape(bed, options);
    HolesLayer holes = new HolesLayer(scene, shape, bed.layout(), Optional.of(bed));
    RouteLayer strings = new RouteLayer(scene, shape, bed, route);
    holes.draw();
    new SpansLayer(scene, shape, bed).draw(id -> Look.of(strings.endClass(id)));
    strings.runs(id -> Look.PLAIN);
    strings.knots(id -> Look.PLAIN);
    strings.passes(id -> Look.PLAIN);
    finishNames(scene, shape, bed, holes, strings, id -> Look.PLAIN);
    new FindingsLayer(scene, shape, Optional.of(bed)).draw(options.findings());
    return new Drawing(
        page.finished(
            "Route: " + Terms.pattern(bed) + ", " + Terms.route(route),
            new Legend(bed.layout(), options.findings())
                .holes()
                .headZone()
                .route(route)
                .entries()));
  }

  /**
   * The plan as it stands after a step.
   *
   * @param plan the plan
   * @param step how many steps are done: 0 for the empty frame, up to the number of steps
   * @throws IllegalArgumentException when the plan has no such step
   */
  public static Drawing plan(BenchPlan plan, int step) {
    return plan(plan, step, DrawingOptions.standard());
  }

  /**
   * The plan as it stands after a step; what this step does is marked.
   *
   * @param plan the plan
   * @param step how many steps are done: 0 for the empty frame, up to the number of steps
   * @param options how to draw
   * @throws IllegalArgumentException when the plan has no such step
   */
  public static Drawing plan(BenchPlan plan, int step, DrawingOptions options) {
    if (step < 0 || step > plan.steps().size()) {
      throw new IllegalArgumentException(
          "The step ("
              + step
              + ") must be from 0 to "
              + plan.steps().size()
              + ", the number of the plan's steps.");
    }
    return new Drawing(planned(plan, new StepStates(plan), step, options, false));
  }

  /** The plan's drawing with what each element needs to be shown at any step. */
  static Element steppable(BenchPlan plan, DrawingOptions options) {
    return planned(plan, new StepStates(plan), plan.steps().size(), options, true);
  }

  private static Element planned(
      BenchPlan plan, StepStates states, int step, DrawingOptions options, boolean all) {
    Bed bed = plan.bed();
    Scene scene = new Scene(options.idPrefix());
    Page page = new Page(scene, options, bed.layout().name());
    FrameShape shape = shape(bed, options);
    HolesLayer holes = new HolesLayer(scene, shape, bed.layout(), Optional.of(bed));
    RouteLayer strings = new RouteLayer(scene, shape, bed, plan.route());
    holes.draw();
    new SpansLayer(scene, shape, bed)
        .draw(id -> states.look("span-" + id, step, all, strings.endClass(id)));
    strings.runs(id -> states.look(id, step, all, ""));
    StepLayer steps = new StepLayer(scene, shape, plan, states, strings);
    steps.draw(step, all);
    strings.knots(id -> states.look(id, step, all, ""));
    strings.passes(id -> states.look("span-" + id, step, all, ""));
    finishNames(scene, shape, bed, holes, strings, id -> states.look(id, step, all, ""));
    new FindingsLayer(scene, shape, Optional.of(bed)).draw(options.findings());
    String what =
        step == 0
            ? "Before the first step of " + plan.steps().size()
            // Not formatted: some locales have digits of their own.
            : "Step "
                + step
                + " of "
                + plan.steps().size()
                + ": "
                + plan.steps().get(step - 1).say();
    Legend legend =
        new Legend(bed.layout(), options.findings()).holes().headZone().route(plan.route()).steps();
    return page.finished(all ? "Plan: " + Terms.pattern(bed) : what, legend.entries());
  }

  private static void finishNames(
      Scene scene,
      FrameShape shape,
      Bed bed,
      HolesLayer holes,
      RouteLayer strings,
      Function<String, Look> knots) {
    if (bed.positions().size() <= MOST_NAMES) {
      holes.names(false);
    }
    strings.knotNames(knots);
    new SpansLayer(scene, shape, bed).names();
    holes.sides();
  }

  private static FrameShape shape(Bed bed, DrawingOptions options) {
    Outline outline =
        HoopOutline.of(bed.layout())
            .outline()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "The bed's layout ("
                            + bed.layout()
                            + ") must have a hoop with an outline."));
    return new FrameShape(outline, bed.positions(), options.back());
  }

  /** The picture as a file of its own, in UTF-8. */
  public String svg() {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + Markup.of(root) + "\n";
  }

  /** The picture to be put into a page, without the declaration. */
  public String inline() {
    return Markup.of(root);
  }

  /** The picture as an element of a page that is still being made. */
  Element element() {
    return root;
  }
}
