package org.hoopwright.patterns.draw;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import org.hoopwright.Plan;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.Step;
import org.hoopwright.bench.StringNeed;
import org.hoopwright.finding.Finding;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.TensionRange;
import org.hoopwright.units.ForceUnit;

/**
 * A plan as one HTML page for the bench.
 *
 * <p>The page needs no network. It can be read and printed, on two A4 pages, without its script;
 * the script steps through the plan with the arrow keys, shows the frame at each step, keeps ticks
 * and switches units. All text of a layout is escaped, and the page's own policy allows no script
 * but its own. Immutable; the same plan gives the same bytes on every machine.
 */
public final class BenchSheet {

  /** Room for the printed list of work on one A4 page in two columns, in points. */
  private static final double COLUMN_HEIGHT = 725;

  private static final double COLUMN_WIDTH = 238;
  private static final double[] PRINT_SIZES = {11.5, 11, 10.5, 10, 9.5, 9, 8.5, 8, 7.5, 7, 6.5, 6};

  private final BenchPlan plan;
  private final List<String> cautions;
  private final List<Finding> findings;
  private final SheetText text;

  private BenchSheet(BenchPlan plan, List<String> cautions, List<Finding> findings) {
    this.plan = plan;
    this.cautions = List.copyOf(cautions);
    this.findings = List.copyOf(findings);
    Layout layout = plan.bed().layout();
    ForceUnit forces = layout.tension().map(TensionRange::unit).orElse(ForceUnit.NEWTON);
    this.text = new SheetText(forces, layout.units());
  }

  /** The sheet of a proven plan. */
  public static BenchSheet of(Plan plan) {
    return new BenchSheet(plan.bench(), plan.cautions(), plan.findings());
  }

  /**
   * The sheet of a bench plan.
   *
   * @param plan the plan
   * @param cautions what to mind, most important first; shown at the top
   * @param findings what is worth knowing about the layout and the plan
   */
  public static BenchSheet of(BenchPlan plan, List<String> cautions, List<Finding> findings) {
    return new BenchSheet(plan, cautions, findings);
  }

  /** The page, in UTF-8. */
  public String html() {
    String script = resource("sheet.js");
    String style = resource("sheet.css");
    Layout layout = plan.bed().layout();
    String title = Words.clean(layout.name());
    StringBuilder page = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n");
    page.append("<meta charset=\"UTF-8\">\n");
    page.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
    page.append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; ");
    page.append("style-src 'unsafe-inline'; script-src 'sha256-").append(sha256(script));
    page.append("'\">\n");
    page.append(Markup.of(Element.of("title").text("Bench sheet: " + title))).append('\n');
    page.append("<style>\n").append(style).append(printSize()).append("</style>\n</head>\n");
    page.append(Markup.of(body(title))).append('\n');
    int end = page.lastIndexOf("</body>");
    page.insert(end, "<script>" + script + "</script>\n");
    return page.append("</html>\n").toString();
  }

  private Element body(String title) {
    Element main = Element.of("main");
    main.add(
        Element.of("section")
            .attr("class", "picture")
            .attr("aria-label", "Drawing")
            .add(Drawing.steppable(plan, DrawingOptions.standard())));
    main.add(now());
    main.add(
        Element.of("section")
            .attr("class", "list")
            .add(Element.of("h2").attr("id", "steps-title").text("All steps"))
            .add(steps()));
    return Element.of("body")
        .add(
            Element.of("header")
                .add(Element.of("h1").text(title))
                .add(
                    Element.of("p")
                        .text(Terms.pattern(plan.bed()) + "; " + Terms.route(plan.route()) + "."))
                .add(units())
                .add(cautions())
                .add(facts()))
        .add(main)
        .add(work());
  }

  private Element units() {
    Element controls = Element.of("div").attr("class", "controls").attr("id", "units");
    controls.attr("hidden", "hidden");
    controls.add(choice("force", "Forces in", List.of("N", "lbf", "kgf")));
    controls.add(choice("length", "Lengths in", List.of("mm", "in")));
    return controls;
  }

  private static Element choice(String name, String legend, List<String> units) {
    Element set = Element.of("fieldset").add(Element.of("legend").text(legend));
    for (String unit : units) {
      set.add(
          Element.of("label")
              .add(Element.of("input").attr("type", "radio").attr("name", name).attr("value", unit))
              .text(" " + unit));
    }
    return set;
  }

  private Element cautions() {
    Element list = Element.of("ul");
    cautions.forEach(c -> list.add(text.sentence(Element.of("li"), c)));
    Element section =
        Element.of("section")
            .attr("class", "cautions")
            .attr("aria-labelledby", "cautions-title")
            .add(Element.of("h2").attr("id", "cautions-title").text("Before you begin"))
            .add(list);
    if (!findings.isEmpty()) {
      Element found = Element.of("ul").attr("class", "findings");
      for (Finding f : findings) {
        Element item = Element.of("li");
        item.add(Element.of("strong").text(f.severity().word() + ": "));
        found.add(text.sentence(item, f.message() + (f.fix().isEmpty() ? "" : " " + f.fix())));
      }
      section.add(found);
    }
    return section;
  }

  private Element facts() {
    Layout layout = plan.bed().layout();
    Element list = Element.of("dl").attr("class", "facts");
    fact(list, "Tension of the mains", text.force(plan.job().mainsTension(layout)));
    fact(list, "Tension of the crosses", text.force(plan.job().crossesTension(layout)));
    for (int i = 0; i < plan.cutLengthsMm().size(); i++) {
      String what =
          plan.cutLengthsMm().size() == 1
              ? "Cut"
              : i == 0 ? "Cut for the mains" : "Cut for the crosses";
      fact(list, what, text.length(plan.cutLengthsMm().get(i)));
    }
    for (StringNeed need : StringNeed.of(plan)) {
      boolean all = need.pieces().size() == plan.route().pieces().size();
      String which = all ? "" : need.pieces().get(0) == 0 ? ", mains" : ", crosses";
      fact(
          list,
          "String at hand" + which,
          Element.of("span").add(text.length(need.atHandMm())).text(", " + need.verdict().word()));
    }
    plan.route().pieces().stream()
        .flatMap(p -> p.ends().stream())
        .forEach(
            e ->
                fact(
                    list,
                    Markup.capital(Terms.knot(e.name(), e.finish())),
                    Element.of("span").text(e.finish().hole() + " round " + e.finish().anchor())));
    plan.start()
        .map(s -> s.method().word().replace("-", " ") + " on " + s.anchor())
        .ifPresent(s -> fact(list, "Start of the mains", Element.of("span").text(s)));
    return list;
  }

  private static void fact(Element list, String what, Element value) {
    list.add(Element.of("div").add(Element.of("dt").text(what)).add(Element.of("dd").add(value)));
  }

  private Element now() {
    return Element.of("section")
        .attr("id", "controls")
        .attr("aria-label", "The step at hand")
        .attr("hidden", "hidden")
        .add(
            Element.of("p")
                .attr("id", "count")
                .text("Overview of " + plan.steps().size() + " steps"))
        .add(
            Element.of("p")
                .attr("id", "say")
                .attr("aria-live", "polite")
                .text("Press Next, or the right arrow key, for the first step."))
        .add(
            Element.of("p")
                .attr("class", "buttons")
                .add(button("back", "Back"))
                .add(button("tick", "Tick off"))
                .add(button("next", "Next")));
  }

  private static Element button(String id, String words) {
    return Element.of("button").attr("type", "button").attr("id", id).text(words);
  }

  private Element steps() {
    Element list = Element.of("ol").attr("id", "steps").attr("aria-labelledby", "steps-title");
    for (int i = 0; i < plan.steps().size(); i++) {
      Step step = plan.steps().get(i);
      Element words = Element.of("span").attr("class", "say");
      text.sentence(words, step.say());
      if (step instanceof Step.Pull pull) {
        words.text(" ").add(Element.of("b").add(text.force(pull.tension())));
      }
      list.add(
          Element.of("li")
              .attr("id", "step-" + (i + 1))
              .add(
                  Element.of("label")
                      .add(Element.of("input").attr("type", "checkbox"))
                      .text(" ")
                      .add(words)));
    }
    return list;
  }

  private Element work() {
    Element list = Element.of("ol");
    int number = 1;
    for (SheetRow row : SheetRow.of(plan)) {
      list.add(
          text.sentence(Element.of("li").add(Element.of("b").text(number++ + "  ")), row.text()));
    }
    Element intro = Element.of("p");
    intro.text("Pull mains with ").add(text.force(plan.job().mainsTension(plan.bed().layout())));
    intro.text(", crosses with ").add(text.force(plan.job().crossesTension(plan.bed().layout())));
    intro.text("; set clamps ").add(text.length(plan.job().bench().clampDistanceMm()));
    intro.text(" from the hole unless it says otherwise; let go after each pull.");
    return Element.of("section")
        .attr("class", "work")
        .add(Element.of("h2").text("Work list"))
        .add(intro)
        .add(list);
  }

  /** The largest letters with which the work list fits one page. */
  private String printSize() {
    List<SheetRow> rows = SheetRow.of(plan);
    double size = PRINT_SIZES[PRINT_SIZES.length - 1];
    for (double s : PRINT_SIZES) {
      int lines = 0;
      for (SheetRow row : rows) {
        lines += Words.wrap("00  " + row.text(), s, COLUMN_WIDTH, 99).size();
      }
      if (lines * s * 1.2 + rows.size() * 1.6 <= 2 * COLUMN_HEIGHT) {
        size = s;
        break;
      }
    }
    return String.format(
        Locale.ROOT,
        "@media print{.work ol{font-size:%.1fpt}.picture svg{height:%.0fmm}}\n",
        size,
        printedPicture());
  }

  /** The height of the printed drawing, in mm: what title, cautions and facts leave of a page. */
  private double printedPicture() {
    int lines = 0;
    for (String caution : cautions) {
      lines += Words.wrap(caution, 8.5, 500, 99).size();
    }
    for (Finding f : findings) {
      lines += Words.wrap(f.severity().word() + ": " + f.message() + f.fix(), 8.5, 500, 99).size();
    }
    int facts =
        3
            + plan.cutLengthsMm().size()
            + StringNeed.of(plan).size()
            + 2 * plan.route().pieces().size();
    int rows = (facts + 3) / 4;
    double rest = 277 - 28 - lines * 4.0 - rows * 10.5 - 12;
    return Math.max(80, Math.min(165, rest));
  }

  private static String resource(String name) {
    try (InputStream in = BenchSheet.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("The file (" + name + ") is missing in our own jar.");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String sha256(String text) {
    try {
      return Base64.getEncoder()
          .encodeToString(
              MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256.", e);
    }
  }
}
