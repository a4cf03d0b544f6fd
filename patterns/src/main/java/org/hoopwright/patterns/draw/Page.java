package org.hoopwright.patterns.draw;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.finding.Finding;
import org.hoopwright.geometry.Point;

/** Puts a picture on its page: title above, legend and findings below, all within the edges. */
final class Page {

  private static final double LEAST_WIDTH = 560;
  private static final double MARGIN = 18;
  private static final double TITLE = 22;
  private static final double TEXT = 14;
  private static final double LINE = 1.35;
  private static final double SIGN_ROOM = 30;
  private static final double GAP = 18;

  private final Scene scene;
  private final DrawingOptions options;
  private final String name;
  private final List<Element> texts = new ArrayList<>();
  private double left;
  private double width;
  private double y;

  Page(Scene scene, DrawingOptions options, String name) {
    this.scene = scene;
    this.options = options;
    this.name = name;
  }

  /** The whole picture. */
  Element finished(String subtitle, List<Legend.Entry> legend) {
    Box picture = scene.bounds();
    width = Math.max(LEAST_WIDTH, picture.width());
    left = picture.centre().x() - width / 2;
    List<String> heads = Words.wrap(name, TITLE * Words.BOLD, width, 2);
    String view = options.back() ? "Seen from the back, turned over." : "Seen from the face.";
    List<String> subs =
        Words.wrap(subtitle + (subtitle.endsWith(".") ? " " : ". ") + view, TEXT, width, 6);
    double above = (heads.size() * TITLE + subs.size() * TEXT) * LINE + GAP;
    double top = picture.minY() - above;
    y = top;
    lines("title", heads, "bold", TITLE);
    lines("subtitle", subs, "", TEXT);
    y = picture.maxY() + GAP;
    legend(legend);
    findings();
    double x0 = left - MARGIN;
    double y0 = top - MARGIN;
    double w = width + 2 * MARGIN;
    double h = y + MARGIN - y0;
    return Element.of("svg")
        .attr("xmlns", "http://www.w3.org/2000/svg")
        .attr("id", scene.id("drawing"))
        .attr("class", "hw")
        .attr(
            "viewBox",
            Element.number(x0)
                + " "
                + Element.number(y0)
                + " "
                + Element.number(w)
                + " "
                + Element.number(h))
        .attr("width", Element.number(options.widthMm()) + "mm")
        .attr("height", Element.number(options.widthMm() * h / w) + "mm")
        .attr("role", "img")
        .attr("aria-labelledby", scene.id("drawing-title") + " " + scene.id("drawing-desc"))
        .add(
            Element.of("title").attr("id", scene.id("drawing-title")).text(String.join(" ", heads)))
        .add(
            Element.of("desc")
                .attr("id", scene.id("drawing-desc"))
                .text(String.join(" ", subs) + findingsSummary()))
        .add(Element.of("style").text(Style.CSS))
        .add(
            Element.of("rect")
                .attr("x", x0)
                .attr("y", y0)
                .attr("width", w)
                .attr("height", h)
                .attr("style", "fill:var(--paper)"))
        .addAll(scene.groups())
        .add(Element.of("g").attr("id", scene.id("words")).addAll(texts));
  }

  private String findingsSummary() {
    int n = options.findings().size();
    return n == 0 ? "" : " " + n + (n == 1 ? " finding." : " findings.");
  }

  private void lines(String id, List<String> lines, String look, double size) {
    for (int i = 0; i < lines.size(); i++) {
      text(id + "-" + (i + 1), lines.get(i), look, size, left);
      y += size * LINE;
    }
  }

  private void text(String id, String line, String look, double size, double x) {
    Element element = Element.of("text").attr("id", scene.id(id));
    if (!look.isEmpty()) {
      element.attr("class", look);
    }
    texts.add(element.attr("x", x).attr("y", y + size).attr("font-size", size).text(line));
  }

  private void legend(List<Legend.Entry> entries) {
    double x = left;
    int n = 1;
    for (Legend.Entry entry : entries) {
      double room = SIGN_ROOM + Words.width(entry.words(), TEXT) + GAP;
      if (x > left && x + room > left + width + GAP) {
        x = left;
        y += TEXT * 1.9;
      }
      texts.add(
          Element.of("g")
              .attr("class", "legend")
              .addAll(entry.sign().at(new Point(x + SIGN_ROOM / 2 - 3, y + TEXT * 0.65))));
      text("legend-" + n++, entry.words(), "", TEXT, x + SIGN_ROOM);
      x += room;
    }
    if (!entries.isEmpty()) {
      y += TEXT * 1.9;
    }
  }

  private void findings() {
    List<Finding> all = options.findings();
    for (int i = 0; i < Math.min(FindingsLayer.MOST, all.size()); i++) {
      Finding finding = all.get(i);
      String words =
          finding.severity().word()
              + ": "
              + finding.message()
              + (finding.fix().isEmpty() ? "" : " " + finding.fix());
      List<String> lines = Words.wrap(words, TEXT, width - SIGN_ROOM, 8);
      y += 6;
      texts.add(
          FindingsLayer.sign(i + 1, finding.severity(), new Point(left + 11, y + TEXT * 0.65))
              .attr("class", "finding " + finding.severity().word()));
      for (int k = 0; k < lines.size(); k++) {
        text("finding-" + (i + 1) + "-" + (k + 1), lines.get(k), "", TEXT, left + SIGN_ROOM);
        y += TEXT * LINE;
      }
    }
    if (all.size() > FindingsLayer.MOST) {
      text(
          "findings-more",
          "and " + (all.size() - FindingsLayer.MOST) + " more findings",
          "",
          TEXT,
          left + SIGN_ROOM);
      y += TEXT * LINE;
    }
  }
}
