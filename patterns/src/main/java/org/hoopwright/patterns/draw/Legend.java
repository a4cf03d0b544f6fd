package org.hoopwright.patterns.draw;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.Severity;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Point;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Route;
import org.hoopwright.route.StringEnd;

/** What the signs of a picture mean, in words; only those that it may show. */
final class Legend {

  private static final Point UP = new Point(0, -1);

  private final Layout layout;
  private final List<Entry> entries = new ArrayList<>();

  /** Draws a sign at a point. */
  interface Sign {
    List<Element> at(Point point);
  }

  /**
   * A sign and what it means.
   *
   * @param sign the sign
   * @param words what it means
   */
  record Entry(Sign sign, String words) {}

  Legend(Layout layout, List<Finding> findings) {
    this.layout = layout;
    for (Severity severity : Severity.values()) {
      if (findings.stream().anyMatch(f -> f.severity() == severity)) {
        add(
            p ->
                List.of(
                    FindingsLayer.sign(0, severity, p).attr("class", "finding " + severity.word())),
            severity.word());
      }
    }
  }

  List<Entry> entries() {
    return List.copyOf(entries);
  }

  private Legend add(Sign sign, String words) {
    entries.add(new Entry(sign, words));
    return this;
  }

  Legend holes() {
    hole("hole", false, false, false, "hole");
    if (!layout.tieOff().isEmpty()) {
      hole("hole tie-off", false, false, true, "tie-off hole");
    }
    if (!layout.shared().isEmpty()) {
      hole("hole shared", false, true, false, "shared hole");
    }
    if (!layout.blocked().isEmpty()) {
      hole("hole blocked", true, false, false, "blocked hole");
    }
    if (!layout.noRun().isEmpty()) {
      add(p -> List.of(line("no-run", p)), "no run may pass");
    }
    return this;
  }

  private void hole(String look, boolean blocked, boolean shared, boolean tieOff, String words) {
    add(
        p ->
            List.of(
                Element.of("g")
                    .attr("class", look)
                    .addAll(HolesLayer.symbol(p, UP, blocked, shared, tieOff))),
        words);
  }

  Legend headZone() {
    return add(p -> List.of(line("head-zone", p)), "head zone");
  }

  Legend spans() {
    add(p -> List.of(line("span main", p)), "main");
    return add(p -> List.of(line("span cross", p)), "cross; the interrupted string lies under");
  }

  private static Element line(String look, Point p) {
    return Element.of("path")
        .attr("class", look)
        .attr(
            "d",
            FrameShape.path(List.of(new Point(p.x() - 11, p.y()), new Point(p.x() + 11, p.y()))));
  }

  Legend route(Route route) {
    for (EndName end : EndName.values()) {
      if (route.end(end).map(StringEnd::passes).filter(p -> !p.isEmpty()).isPresent()) {
        String thick = end == EndName.SHORT ? " (thick)" : "";
        add(p -> List.of(line("span end-" + end.word(), p)), Terms.end(end) + thick);
      }
    }
    add(
        p ->
            List.of(
                Element.of("text")
                    .attr("class", "pass bold")
                    .attr("x", p.x())
                    .attr("y", p.y() + 4)
                    .attr("font-size", 12.5)
                    .attr("text-anchor", "middle")
                    .text("12")),
        "order of the passes, at the hole where each goes in");
    return add(
        p -> List.of(Element.of("g").attr("class", "knot").addAll(RouteLayer.knotSign(p))), "knot");
  }

  Legend steps() {
    add(
        p ->
            List.of(
                ClampSign.inside(
                        new Point(p.x() - 12, p.y()), new Point(p.x() + 12, p.y()), 0, 24, "m1")
                    .attr("class", "clamp machine")),
        "machine clamp");
    add(
        p ->
            List.of(
                ClampSign.outside(
                        new FrameShape.Mouth(0, p, p, new Point(p.x(), p.y() + 12), UP),
                        0,
                        24,
                        "s1")
                    .attr("class", "clamp starting")),
        "starting clamp");
    add(p -> List.of(line("span open", p)), "not strung yet");
    add(p -> List.of(line("span main laced", p)), "laced, not pulled");
    add(p -> List.of(line("span main now", p)), "this step");
    return add(p -> List.of(line("start-mark", p)), "where the starting clamp's mark may end");
  }
}
