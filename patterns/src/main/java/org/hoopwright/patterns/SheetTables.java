package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Crossing;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.EndLength;
import org.hoopwright.geometry.Side;
import org.hoopwright.replay.Estimates;
import org.hoopwright.replay.Interval;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Piece;
import org.hoopwright.route.Route;
import org.hoopwright.route.StringEnd;

/** The tables at the end of a sheet: weave, lengths, estimates. */
final class SheetTables {

  private SheetTables() {}

  /** For each cross, in the order of the route, where it enters and what it does first. */
  static void weave(SheetText sheet, Bed bed, Route route) {
    sheet.heading("WEAVE");
    sheet.paragraph(
        "  ",
        "Over and under in turn, along every cross and every main; no two overs and no two unders in"
            + " a row. Odd crosses go over R1, even crosses under it, in whatever order they go in."
            + " Each cross in its order, with the first main it meets:");
    List<String> cells = new ArrayList<>();
    for (Piece piece : route.pieces()) {
      for (StringEnd end : piece.ends()) {
        end.passes().stream()
            .filter(p -> p.span().isCross())
            .forEach(p -> first(bed, p).ifPresent(cells::add));
      }
    }
    inColumns(sheet, cells);
  }

  private static Optional<String> first(Bed bed, Pass pass) {
    List<Crossing> met = bed.crossings(pass.span());
    if (met.isEmpty()) {
      return Optional.empty();
    }
    boolean fromLeft = pass.from().side() == Side.LEFT;
    Crossing c = met.get(fromLeft ? 0 : met.size() - 1);
    return Optional.of(
        pass.span() + " from " + pass.from() + (c.crossOver() ? " over " : " under ") + c.main());
  }

  /** Cells in three columns, each column read downwards. */
  private static void inColumns(SheetText sheet, List<String> cells) {
    int columns = 3;
    int rows = (cells.size() + columns - 1) / columns;
    List<List<String>> table = new ArrayList<>();
    for (int r = 0; r < rows; r++) {
      List<String> row = new ArrayList<>();
      for (int c = 0; c < columns; c++) {
        int i = c * rows + r;
        row.add(i < cells.size() ? cells.get(i) : "");
      }
      table.add(row);
    }
    sheet.table(4, List.of(false, false), table);
  }

  static void lengths(SheetText sheet, BenchPlan bench) {
    sheet.heading("STRING FOR EACH END, mm, unstretched");
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of("piece", "end", "spans", "runs", "frame", "knot", "reach", "stretch", "total", ""));
    for (EndLength l : bench.lengths()) {
      rows.add(
          List.of(
              Words.role(bench.route().pieces().get(l.piece()).role()),
              l.end().word(),
              Decimals.near(l.spansMm(), 0),
              Decimals.near(l.runsMm(), 0),
              Decimals.near(l.frameMm(), 0),
              Decimals.near(l.knotMm(), 0),
              Decimals.near(l.reachMm(), 0),
              Decimals.near(l.stretchMm(), 0),
              Decimals.up(l.totalMm(), 0),
              ""));
    }
    sheet.table(2, List.of(false, false, true, true, true, true, true, true, true), rows);
    sheet.paragraph(
        "  ",
        "Cut lengths are the ends of a piece together, rounded up. The total is rounded up too.");
  }

  static void estimates(SheetText sheet, Estimates e) {
    sheet.heading("ESTIMATES (worked out from the parameters below, not measured)");
    List<List<String>> rows = new ArrayList<>();
    spans(e.spanTension(), true).ifPresent(i -> rows.add(row("left in the mains", i)));
    spans(e.spanTension(), false).ifPresent(i -> rows.add(row("left in the crosses", i)));
    e.clampPeak().forEach((clamp, i) -> rows.add(row("most on " + clamp.replace('-', ' '), i)));
    e.hoopPeak().forEach((name, i) -> rows.add(row(hoop(name), i)));
    sheet.table(2, List.of(false), rows);
    List<List<String>> parameters = new ArrayList<>();
    e.parameters()
        .forEach(
            (name, i) ->
                parameters.add(
                    List.of(parameter(name), shown(i.low()) + " to " + shown(i.high()))));
    if (!parameters.isEmpty()) {
      sheet.paragraph("  ", "Parameters:");
      sheet.table(4, List.of(false), parameters);
    }
  }

  private static Optional<Interval> spans(Map<SpanId, Interval> tension, boolean mains) {
    return tension.entrySet().stream()
        .filter(e -> e.getKey().isMain() == mains)
        .map(Map.Entry::getValue)
        .reduce(Interval::hull);
  }

  private static List<String> row(String what, Interval newtons) {
    return List.of(what, Measures.range(newtons));
  }

  private static String hoop(String name) {
    return switch (name) {
      case "along" -> "most that squeezes the hoop along";
      case "across" -> "most that squeezes the hoop across";
      case "imbalance" -> "most by which left and right mains differ";
      default -> name;
    };
  }

  /** Three digits are more than these parameters are known to. */
  private static String shown(double value) {
    return Decimals.near(value, Math.abs(value) < 100 ? 2 : 0);
  }

  /** What a parameter of the estimates is, or its name when it is not one of the usual ones. */
  static String parameter(String name) {
    return switch (name) {
      case "friction" -> "friction of string on the frame, coefficient";
      case "wrapFactor" -> "bends, as a multiple of what the holes' places give";
      case "weaveFriction" -> "friction of string on string in the weave, coefficient";
      case "tensionerShare" -> "share of the pull that acts when the clamp goes on";
      case "drawbackMm" -> "slip back when a clamp or knot takes the load, mm";
      case "backUpShare" -> "share that a clamp bears which backs another up";
      case "knotShare" -> "tightness of the stretch to a knot, share of its span's";
      case "mainsStiffness" -> "stiffness of the mains' string, N for a stretch by its length";
      case "crossesStiffness" -> "stiffness of the crosses' string, N for a stretch by its length";
      default -> name;
    };
  }
}
