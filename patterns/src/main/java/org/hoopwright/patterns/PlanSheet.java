package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.hoopwright.Plan;
import org.hoopwright.bed.Bed;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.Start;
import org.hoopwright.bench.StartMark;
import org.hoopwright.bench.Step;
import org.hoopwright.bench.StringNeed;
import org.hoopwright.finding.Finding;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.hoopwright.material.StringSpec;
import org.hoopwright.route.CoveredHole;
import org.hoopwright.route.LaidRuns;
import org.hoopwright.route.Piece;
import org.hoopwright.route.Route;
import org.hoopwright.route.RouteNotation;
import org.hoopwright.route.StringEnd;

/**
 * A plan as a sheet of text to work from at the bench: cautions first, then the route and why, what
 * to cut and pull, the start, the numbered steps in phases, the weave, lengths, estimates and
 * findings.
 *
 * <p>No line is wider than 100 characters, whatever the names are; what does not show is written as
 * an escape. The same plan gives the same text in every locale.
 */
public final class PlanSheet {

  private final Plan plan;
  private final BenchPlan bench;
  private final Bed bed;
  private final Route route;
  private final SheetText sheet = new SheetText();

  private PlanSheet(Plan plan) {
    this.plan = plan;
    this.bench = plan.bench();
    this.bed = bench.bed();
    this.route = bench.route();
  }

  /** The sheet of a plan, lines ended by {@code \n}. */
  public static String of(Plan plan) {
    return new PlanSheet(plan).write();
  }

  private String write() {
    title();
    cautions();
    names();
    route();
    stringAndTension();
    bench.start().ifPresent(this::start);
    covered();
    beside();
    steps();
    SheetTables.weave(sheet, bed, route);
    SheetTables.lengths(sheet, bench);
    SheetTables.estimates(sheet, plan.estimates());
    findings();
    return sheet.toString();
  }

  private void title() {
    sheet.rule('=');
    sheet.paragraph("", "STRINGING PLAN: " + bed.layout().name());
    sheet.paragraph(
        "",
        Words.pattern(bed)
            + ", "
            + (route.pieces().size() == 1 ? "one piece" : "two pieces")
            + ", crosses "
            + Words.direction(route.direction()));
    sheet.rule('=');
  }

  private void cautions() {
    sheet.heading("TAKE CARE");
    plan.cautions().forEach(c -> sheet.paragraph("  ! ", c));
  }

  private void names() {
    HoleId head = bed.crosses().get(0).from();
    HoleId throat = bed.mains(Side.RIGHT).get(1).to();
    sheet.heading("NAMES ON THIS SHEET");
    sheet.paragraph(
        "  ",
        "Look at the face with the head at the top. L1 is the first main left of the long axis, R"
            + bed.mainsPerSide()
            + " the outermost on the right; X1 is the cross nearest the head, X"
            + bed.crossCount()
            + " the one nearest the throat. Holes are counted outwards from the long axis, from the"
            + " head and from the throat: "
            + head
            + " is hole "
            + head.number()
            + " on the left from the "
            + head.end().word()
            + ", "
            + throat
            + " hole "
            + throat.number()
            + " on the right from the "
            + throat.end().word()
            + ". A run is string along the outside of the frame from hole to hole.");
  }

  private void route() {
    sheet.heading("THE ROUTE (" + RouteTable.family(route) + ")");
    sheet.paragraph(
        "  ",
        "The mains start at the "
            + route.mainsStart().word()
            + "; the short end is on the "
            + Words.side(route.shortSide())
            + "; the crosses go in "
            + Words.direction(route.direction())
            + ".");
    List<List<String>> rows = new ArrayList<>();
    for (Piece piece : route.pieces()) {
      for (StringEnd end : piece.ends()) {
        String passes = end.passes().isEmpty() ? "" : RouteNotation.spans(end.passes()) + ", then ";
        String clamp =
            end.startingClamp().map(h -> "starting clamp outside at " + h + ", later ").orElse("");
        rows.add(List.of(Words.end(end.name()), passes + clamp + Words.knot(end.finish())));
      }
    }
    sheet.table(2, List.of(false), rows);
    sheet.paragraph("  ", "Why this one: " + plan.ranked().why());
  }

  private void stringAndTension() {
    Layout layout = bed.layout();
    Job job = bench.job();
    sheet.heading("STRING AND TENSION");
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < route.pieces().size(); i++) {
      Piece piece = route.pieces().get(i);
      StringSpec string =
          piece.role() == Piece.Role.CROSSES ? job.crossesString(layout) : job.mainsString(layout);
      rows.add(
          List.of(
              "cut " + Words.role(piece.role()),
              Measures.string(bench.cutLengthsMm().get(i)) + " of " + Words.string(string)));
      int index = i;
      bench.lengths().stream()
          .filter(l -> l.piece() == index && l.piece() == 0)
          .forEach(
              l ->
                  rows.add(
                      List.of("  of it, " + Words.end(l.end()), Measures.string(l.totalMm()))));
    }
    StringNeed.of(bench)
        .forEach(
            need ->
                rows.add(List.of("at hand" + Words.piecesOf(route, need), Measures.atHand(need))));
    rows.add(List.of("pull mains", Measures.force(job.mainsTension(layout))));
    rows.add(List.of("pull crosses", Measures.force(job.crossesTension(layout))));
    if (job.lastPullExtra().newtons() > 0) {
      rows.add(List.of("last pull before a knot", Measures.force(job.lastPullExtra()) + " more"));
    }
    sheet.table(2, List.of(false), rows);
    layout
        .tension()
        .ifPresent(
            t ->
                sheet.paragraph(
                    "  ",
                    "The frame's maker allows "
                        + Measures.force(t.least())
                        + " to "
                        + Measures.force(t.most())
                        + "."));
  }

  private void start(Start start) {
    sheet.heading("HOW THE MAINS START");
    String how =
        switch (start.method()) {
          case ANCHOR_MAIN ->
              "Both tails are pulled once together. Then main "
                  + start.anchor()
                  + " is held by a machine clamp inside and by a starting clamp outside"
                  + start.clampOutside().map(h -> " at " + h).orElse("")
                  + ", and the other mains are pulled one by one before it gets its own pull.";
          case HAND_HELD ->
              "Both tails are pulled once together. Then main "
                  + start.anchor()
                  + " is held by a machine clamp inside; a hand keeps its tail straight, and bears no"
                  + " tension, while the first main of the other side is pulled.";
          case DOUBLED_CLAMP ->
              "Both tails are pulled once together. Then both machine clamps hold main "
                  + start.anchor()
                  + " side by side until the first main of the other side is pulled.";
        };
    sheet.paragraph("  ", how);
    start.mark().ifPresent(this::mark);
  }

  private void mark(StartMark mark) {
    sheet.paragraph(
        "  ",
        "The starting clamp may leave a mark. After the full pull it lies "
            + Decimals.near(mark.lowMm(), 0)
            + " to "
            + Decimals.near(mark.highMm(), 0)
            + " mm along the string from the outer mouth of "
            + mark.from()
            + " towards "
            + mark.to()
            + ", "
            + mark.at().stream().map(Words::spot).collect(Collectors.joining(" or "))
            + ".");
  }

  private void covered() {
    List<CoveredHole> covered = route.measures().coveredHoles();
    sheet.heading("COVERED HOLES");
    if (covered.isEmpty()) {
      sheet.paragraph("  ", "None: every pass finds its holes open.");
      return;
    }
    for (CoveredHole.KeepOpen how : CoveredHole.KeepOpen.values()) {
      List<CoveredHole> these = covered.stream().filter(c -> c.keepOpen() == how).toList();
      if (!these.isEmpty()) {
        sheet.paragraph(
            "  - ",
            Words.keepOpen(how)
                + these.stream()
                    .map(c -> c.hole() + " for " + c.span())
                    .collect(Collectors.joining(", "))
                + ".");
      }
    }
  }

  private void beside() {
    LaidRuns laid = LaidRuns.of(bed, route);
    long doubled = laid.runs().stream().filter(LaidRuns.Laid::doubled).count();
    sheet.heading("RUNS SIDE BY SIDE");
    if (doubled == 0 && laid.holes().isEmpty()) {
      sheet.paragraph("  ", "None: every run and every string in a hole is by itself.");
      return;
    }
    sheet.paragraph(
        "  ",
        Words.count((int) doubled, "run shares", "runs share")
            + " a stretch of the frame with an earlier one, and "
            + Words.count(laid.holes().size(), "hole holds", "holes hold")
            + " more than one string. Laid as the steps say, no string crosses another outside the"
            + " frame.");
    for (LaidRuns.Laid l : laid.runs()) {
      if (!l.upon().isEmpty()) {
        sheet.paragraph(
            "  - ",
            "From "
                + l.run().from()
                + " to "
                + l.run().to()
                + " three runs share a stretch: one must lie upon another there.");
      }
    }
  }

  private void steps() {
    sheet.heading("STEPS");
    int width = Integer.toString(bench.steps().size()).length();
    for (SheetPhases.Phase phase : SheetPhases.of(bench)) {
      sheet.blank().paragraph("  ", phase.heading());
      for (int i = 0; i < phase.steps().size(); i++) {
        Step step = phase.steps().get(i);
        String number = Integer.toString(phase.first() + i);
        String indent = opensString(step) ? "" : "  ";
        sheet.paragraph(
            "  " + " ".repeat(width - number.length()) + number + ". " + indent, step.say());
      }
    }
  }

  /** Whether a step begins with another string; what is done with that string is set in. */
  private static boolean opensString(Step step) {
    return !(step instanceof Step.Pull
        || step instanceof Step.SetClamp
        || step instanceof Step.FreeClamp
        || step instanceof Step.Hold
        || step instanceof Step.Release);
  }

  private void findings() {
    sheet.heading("FINDINGS");
    if (plan.findings().isEmpty()) {
      sheet.paragraph("  ", "None.");
    }
    for (Finding f : plan.findings()) {
      String place = f.place().map(p -> "line " + p.line() + ": ").orElse("");
      sheet.paragraph(
          "  - ", f.severity().word() + ": " + place + f.message() + " [" + f.code().code() + "]");
      if (!f.fix().isEmpty()) {
        sheet.paragraph("    ", f.fix());
      }
    }
  }
}
