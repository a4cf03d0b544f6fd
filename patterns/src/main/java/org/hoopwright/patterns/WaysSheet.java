package org.hoopwright.patterns;

import java.util.List;
import org.hoopwright.Cautions;
import org.hoopwright.bench.Step;
import org.hoopwright.bench.WayOn;
import org.hoopwright.finding.Finding;
import org.hoopwright.patterns.json.Shown;
import org.hoopwright.route.EndName;
import org.hoopwright.route.RouteNotation;

/**
 * The ways on from a half-done job as a sheet of text: cautions first, then every way with what it
 * costs, then the steps of the first.
 */
public final class WaysSheet {

  private WaysSheet() {}

  /**
   * The sheet.
   *
   * @param ways at least one, best first
   * @throws IllegalArgumentException when there are none
   */
  public static String of(List<WayOn> ways) {
    if (ways.isEmpty()) {
      throw new IllegalArgumentException(
          "The number of ways on (0) must be 1 or more.\nMaybe say that there is none.");
    }
    SheetText sheet = new SheetText();
    sheet.heading("TAKE CARE");
    Cautions.USUAL.forEach(c -> sheet.paragraph("  ! ", c));
    sheet.heading("WAYS ON, cheapest first");
    for (int i = 0; i < ways.size(); i++) {
      way(sheet, i + 1, ways.get(i));
    }
    WayOn first = ways.get(0);
    if (!first.undo().isEmpty()) {
      sheet.heading("THE FIRST, STEP BY STEP: WHAT IS UNDONE");
      steps(sheet, 1, first.undo());
    }
    sheet.heading("THE FIRST, STEP BY STEP: HOW IT GOES ON");
    steps(sheet, 1 + first.undo().size(), first.goOn().steps());
    return sheet.toString();
  }

  private static void way(SheetText sheet, int number, WayOn way) {
    sheet.paragraph("  " + number + ". ", say(way));
    sheet.paragraph("     ", RouteNotation.of(way.goOn().route()));
    for (Finding finding : way.findings()) {
      sheet.paragraph("     ", Shown.escaped(finding.message()));
    }
  }

  /** What a way costs, whether it keeps to what the maker asks, and what is taken on trust. */
  static String say(WayOn way) {
    String wishes =
        way.wishesMissed() > 0
            ? " It does not keep to everything that the frame's maker asks."
            : "";
    List<EndName> unmeasured = way.unmeasured();
    String trust =
        unmeasured.isEmpty()
            ? ""
            : " Nobody has measured the tail of the "
                + Words.and(unmeasured.stream().map(Words::end).toList())
                + ": see that it is enough.";
    return way.say() + wishes + trust;
  }

  private static void steps(SheetText sheet, int from, List<Step> steps) {
    for (int i = 0; i < steps.size(); i++) {
      String number = (from + i) + ". ";
      sheet.paragraph(" ".repeat(Math.max(0, 7 - number.length())) + number, steps.get(i).say());
    }
  }
}
