package org.hoopwright.patterns.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hoopwright.bed.Bed;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.NoRun;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;

/** Draws the frame, its holes with their numbers, the head zone and what no run may pass. */
final class HolesLayer {

  private static final double LABEL_GAP = 6;

  private final Scene scene;
  private final FrameShape shape;
  private final Layout layout;
  private final Ring ring;
  private final Optional<Bed> bed;

  HolesLayer(Scene scene, FrameShape shape, Layout layout, Optional<Bed> bed) {
    this.scene = scene;
    this.shape = shape;
    this.layout = layout;
    this.ring = bed.map(Bed::ring).orElseGet(() -> Ring.of(layout));
    this.bed = bed;
  }

  /** The frame, its zones and the holes, without names. */
  void draw() {
    String inner = shape.closed(0);
    String outer = shape.closed(FrameShape.BAND);
    scene.add(
        Scene.Layer.FRAME,
        Element.of("path")
            .attr("id", scene.id("frame"))
            .attr("class", "frame")
            .attr("fill-rule", "evenodd")
            .attr("d", outer + inner)
            .title("The frame, as seen from the " + (shape.back() ? "back." : "face.")));
    for (int i = 0; i < 360; i++) {
      Point p = shape.onRing(shape.ringLength() * i / 360, FrameShape.BAND / 2);
      Box box = Box.around(p, FrameShape.BAND - 4, FrameShape.BAND - 4);
      scene.placer().take(box);
      scene.cover(box.grown(4));
    }
    headZone();
    for (int i = 0; i < layout.noRun().size(); i++) {
      noRun(layout.noRun().get(i), i + 1);
    }
    shape.mouths().forEach(this::hole);
  }

  private void headZone() {
    EachSide<HoleId> last;
    if (bed.isPresent()) {
      last = new EachSide<>(bed.get().headZone(Side.LEFT), bed.get().headZone(Side.RIGHT));
    } else if (layout.headZone().isPresent()) {
      last = layout.headZone().get();
    } else {
      return;
    }
    if (!shape.has(last.left()) || !shape.has(last.right())) {
      return;
    }
    double from = shape.mouth(last.left()).ring() + 7;
    double to = shape.mouth(last.right()).ring() - 7 - shape.ringLength();
    scene.add(
        Scene.Layer.ZONES,
        Element.of("path")
            .attr("id", scene.id("head-zone"))
            .attr("class", "head-zone")
            .attr("d", FrameShape.path(shape.curve(from, to - from, FrameShape.BAND + 2.5)))
            .title("Head zone, from " + last.left() + " to " + last.right() + " round the head."));
  }

  private void noRun(NoRun stretch, int number) {
    for (Side side : Side.values()) {
      Optional<HoleId> a = stretch.from().on(side).filter(shape::has);
      Optional<HoleId> b = stretch.to().on(side).filter(shape::has);
      if (a.isPresent() && b.isPresent()) {
        double from = shape.mouth(a.get()).ring();
        double way = shape.way(from, shape.mouth(b.get()).ring());
        scene.add(
            Scene.Layer.ZONES,
            Element.of("path")
                .attr("id", scene.id("no-run-" + number + "-" + side.letter()))
                .attr("class", "no-run")
                .attr("d", FrameShape.path(shape.curve(from, way, FrameShape.BAND + 6.5)))
                .title("No run may pass from " + a.get() + " to " + b.get() + "."));
      }
    }
  }

  private void hole(HoleId hole, FrameShape.Mouth mouth) {
    Element group = Element.of("g").attr("id", scene.id("hole-" + hole));
    Point c = mouth.centre();
    boolean blocked = ring.has(hole) && ring.isBlocked(hole);
    boolean shared = ring.has(hole) && ring.isShared(hole);
    boolean tieOff = ring.has(hole) && ring.isTieOff(hole);
    group.attr(
        "class",
        "hole"
            + (blocked ? " blocked" : "")
            + (shared ? " shared" : "")
            + (tieOff ? " tie-off" : ""));
    group.title(about(hole, blocked, shared, tieOff));
    group.addAll(symbol(c, mouth.out(), blocked, shared, tieOff));
    scene.add(Scene.Layer.HOLES, group);
    Box box = Box.around(c, 17, 17);
    scene.placer().take(box);
    scene.cover(box);
  }

  /** A hole's sign: a ring, a diamond round it, two rings, or a crossed square. */
  static List<Element> symbol(Point c, Point out, boolean blocked, boolean shared, boolean tieOff) {
    List<Element> parts = new ArrayList<>();
    if (tieOff) {
      double r = 9.5;
      parts.add(
          Element.of("path")
              .attr("class", "diamond")
              .attr(
                  "d",
                  FrameShape.path(
                          List.of(
                              new Point(c.x(), c.y() - r),
                              new Point(c.x() + r, c.y()),
                              new Point(c.x(), c.y() + r),
                              new Point(c.x() - r, c.y())))
                      + "Z"));
    }
    if (blocked) {
      parts.add(
          Element.of("rect")
              .attr("x", c.x() - 6)
              .attr("y", c.y() - 6)
              .attr("width", 12)
              .attr("height", 12));
      parts.add(
          Element.of("path")
              .attr("class", "cross-out")
              .attr(
                  "d",
                  FrameShape.path(
                          List.of(new Point(c.x() - 6, c.y() - 6), new Point(c.x() + 6, c.y() + 6)))
                      + FrameShape.path(
                          List.of(
                              new Point(c.x() + 6, c.y() - 6), new Point(c.x() - 6, c.y() + 6)))));
    } else if (shared) {
      Point along = new Point(-out.y(), out.x());
      for (double d : new double[] {-3.6, 3.6}) {
        Point p = FrameShape.along(c, along, d);
        parts.add(Element.of("circle").attr("cx", p.x()).attr("cy", p.y()).attr("r", 4.2));
      }
    } else {
      parts.add(Element.of("circle").attr("cx", c.x()).attr("cy", c.y()).attr("r", 4.6));
    }
    return parts;
  }

  private String about(HoleId hole, boolean blocked, boolean shared, boolean tieOff) {
    StringBuilder text = new StringBuilder("Hole " + hole);
    text.append(blocked ? ", blocked" : "").append(shared ? ", shared" : "");
    text.append(tieOff ? ", tie-off hole" : "");
    bed.ifPresent(
        b -> {
          if (!b.spansAt(hole).isEmpty()) {
            text.append(": ").append(Markup.list(b.spansAt(hole)));
          }
        });
    return text.append('.').toString();
  }

  /** Writes the holes' numbers, and beside the special ones what they are. */
  void names(boolean withKinds) {
    for (boolean special : new boolean[] {false, true}) {
      for (Map.Entry<HoleId, FrameShape.Mouth> e : shape.mouths().entrySet()) {
        String kind = withKinds ? kind(e.getKey()) : "";
        if (kind.isEmpty() != special) {
          name(e.getKey(), e.getValue(), kind);
        }
      }
    }
  }

  private String kind(HoleId hole) {
    List<String> words = new ArrayList<>();
    if (ring.has(hole)) {
      if (ring.isBlocked(hole)) {
        words.add("blocked");
      }
      if (ring.isShared(hole)) {
        words.add("shared");
      }
      if (ring.isTieOff(hole)) {
        words.add("tie-off");
      }
    }
    return String.join(", ", words);
  }

  private void name(HoleId hole, FrameShape.Mouth mouth, String kind) {
    String text = "" + hole.number() + hole.end().letter() + (kind.isEmpty() ? "" : " " + kind);
    scene.label(
        "name-" + hole,
        text,
        "hole-name",
        Scene.LABEL,
        mouth.outer(),
        FrameShape.along(mouth.outer(), mouth.out(), LABEL_GAP),
        mouth.out());
  }

  /** Writes which side and end is which. */
  void sides() {
    side("head", "HEAD", 0);
    side("throat", "THROAT", shape.throat());
    side("left", "LEFT", shape.throat() / 2);
    side("right", "RIGHT", (shape.throat() + shape.ringLength()) / 2);
  }

  private void side(String id, String text, double u) {
    Point out = shape.outwards(u);
    Point from = shape.onRing(u, FrameShape.BAND + 40);
    double width = Words.width(text, Scene.LABEL) * Words.BOLD + 10;
    scene
        .placer()
        .outside(from, out, width, Scene.LABEL * 1.2)
        .ifPresent(
            box ->
                scene.textIn(
                    Scene.Layer.LABELS, "side-" + id, text, "side bold", Scene.LABEL, box));
  }
}
