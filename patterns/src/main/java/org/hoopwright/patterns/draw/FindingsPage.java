package org.hoopwright.patterns.draw;

import java.util.List;
import java.util.Optional;
import org.hoopwright.Hoopwright;
import org.hoopwright.bed.Bed;
import org.hoopwright.finding.Finding;
import org.hoopwright.frame.Layout;

/**
 * What was found in layout files, as one HTML page with a drawing of each layout on which the
 * findings are marked. The page has no script and needs no network.
 */
public final class FindingsPage {

  private static final String STYLE =
      """
      :root { --paper: #fff; --ink: #1d2733; color-scheme: light dark; }
      @media screen and (prefers-color-scheme: dark) { :root { --paper: #14181d; --ink: #e8ecf0; } }
      body { margin: 0 auto; padding: 1rem; max-width: 60rem; background: var(--paper); color: var(--ink);
        font: 1rem/1.45 "DejaVu Sans", Verdana, Arial, sans-serif; overflow-wrap: anywhere; }
      svg { width: 100%; height: auto; }
      li { margin: .3rem 0; }
      """;

  private FindingsPage() {}

  /**
   * A file that was checked.
   *
   * @param file its name, as the reader knows it
   * @param layout what could be read of it
   * @param findings what was found, in the order in which it is to be shown
   */
  public record Checked(String file, Optional<Layout> layout, List<Finding> findings) {
    /** Copies the list. */
    public Checked {
      findings = List.copyOf(findings);
    }
  }

  /** The page for these files, in UTF-8. */
  public static String html(List<Checked> files) {
    Element main = Element.of("main").add(Element.of("h1").text("Findings"));
    for (int i = 0; i < files.size(); i++) {
      main.add(section(files.get(i), "f" + (i + 1) + "-"));
    }
    return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"UTF-8\">\n"
        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
        + "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
        + "style-src 'unsafe-inline'\">\n<title>Findings</title>\n<style>\n"
        + STYLE
        + "</style>\n</head>\n"
        + Markup.of(Element.of("body").add(main))
        + "\n</html>\n";
  }

  private static Element section(Checked checked, String prefix) {
    Element section = Element.of("section");
    section.add(Element.of("h2").text(Words.clean(checked.file())));
    if (checked.findings().isEmpty()) {
      section.add(Element.of("p").text("Nothing was found."));
    } else {
      Element list = Element.of("ol");
      checked.findings().forEach(f -> list.add(item(f)));
      section.add(list);
    }
    checked.layout().ifPresent(l -> section.add(drawing(l, checked.findings(), prefix)));
    return section;
  }

  private static Element item(Finding finding) {
    String at =
        finding.place().map(p -> "line " + p.line() + ", column " + p.column() + ": ").orElse("");
    String fix = finding.fix().isEmpty() ? "" : " " + finding.fix();
    return Element.of("li")
        .text(at)
        .add(Element.of("strong").text(finding.severity().word()))
        .text(": " + Words.clean(finding.message() + fix) + " [" + finding.code().code() + "]");
  }

  private static Element drawing(Layout layout, List<Finding> findings, String prefix) {
    DrawingOptions options = DrawingOptions.builder().findings(findings).idPrefix(prefix).build();
    Optional<Bed> bed = Hoopwright.assign(layout).bed();
    return (bed.isPresent() ? Drawing.bed(bed.get(), options) : Drawing.layout(layout, options))
        .element();
  }
}
