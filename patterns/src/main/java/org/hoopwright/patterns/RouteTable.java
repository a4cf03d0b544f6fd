package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hoopwright.bed.Bed;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.Route;
import org.hoopwright.route.RouteNotation;
import org.hoopwright.route.RoutePreferences;
import org.hoopwright.route.RouteResult;

/** All routes of a search as a table for people, best first. */
public final class RouteTable {

  private RouteTable() {}

  /**
   * The table: for each route its rank and what each preference says of it; then its family, the
   * route in one line, and why it stands where it does.
   *
   * @param bed the bed that was searched
   * @param result what the search found; when it stopped at its limit the table says so
   * @param limit the most routes to list, 1 or more
   * @return lines of at most 100 characters, each ended by {@code \n}
   * @throws IllegalArgumentException when the limit is below 1
   */
  public static String of(Bed bed, RouteResult result, int limit) {
    if (limit < 1) {
      throw new IllegalArgumentException("The limit (%s) must be 1 or more.".formatted(limit));
    }
    int shown = Math.min(limit, result.ranked().size());
    SheetText sheet = new SheetText();
    sheet.paragraph("", "ROUTES: " + bed.layout().name() + ", " + Words.pattern(bed));
    sheet.paragraph("", count(bed, result, shown));
    if (shown > 0) {
      sheet.blank();
      columns(sheet, bed, result.ranked().subList(0, shown));
      sheet.blank();
      routes(sheet, result.ranked().subList(0, shown));
      sheet.blank();
      legend(sheet, bed, result);
    }
    return sheet.toString();
  }

  private static String count(Bed bed, RouteResult result, int shown) {
    String classes =
        Words.count(result.ranked().size(), "class of pass orders", "classes of pass orders");
    String all =
        result.status() == RouteResult.Status.LIMIT_REACHED
            ? "The search stopped at its limit of "
                + result.request().maxNodes()
                + " nodes with "
                + classes
                + " found; there may be more, and better ones."
            : "The rules allow " + classes + ", and these are all.";
    String mirror = bed.symmetric() ? " A route and its mirror image are one class." : "";
    String cut = shown < result.ranked().size() ? " The first " + shown + " are listed." : "";
    return all + mirror + cut;
  }

  private static void columns(SheetText sheet, Bed bed, List<RankedRoute> ranked) {
    List<String> names = new ArrayList<>(ranked.get(0).values().keySet());
    if (!RouteJson.asksForSomething(bed.layout())) {
      names.remove(RoutePreferences.MAKER.name());
    }
    List<Boolean> right = new ArrayList<>(List.of(true));
    List<List<String>> rows = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of("rank"));
    for (String name : names) {
      right.add(ranked.stream().allMatch(r -> isNumber(r.values().getOrDefault(name, ""))));
      head.add(label(name));
    }
    head.add("");
    rows.add(head);
    for (int i = 0; i < ranked.size(); i++) {
      List<String> row = new ArrayList<>(List.of(Integer.toString(i + 1)));
      Map<String, String> values = ranked.get(i).values();
      names.forEach(name -> row.add(values.getOrDefault(name, "")));
      row.add("");
      rows.add(row);
    }
    sheet.table(0, right, rows);
  }

  private static String label(String name) {
    return name.equals(RoutePreferences.LONGEST_RUN.name()) ? "longest run" : name;
  }

  private static boolean isNumber(String value) {
    return value.matches("-?[0-9]+");
  }

  private static void routes(SheetText sheet, List<RankedRoute> ranked) {
    int width = Integer.toString(ranked.size()).length();
    for (int i = 0; i < ranked.size(); i++) {
      RankedRoute r = ranked.get(i);
      String number = Integer.toString(i + 1);
      String mark = " ".repeat(width - number.length()) + number + "  ";
      String indent = " ".repeat(mark.length());
      sheet.paragraph(mark, title(r.route()) + ": " + RouteNotation.of(r.route()));
      sheet.paragraph(indent, r.why());
    }
  }

  private static void legend(SheetText sheet, Bed bed, RouteResult result) {
    String reasons =
        result.request().preferences().stream()
            .filter(
                p ->
                    !p.name().equals(RoutePreferences.MAKER.name())
                        || RouteJson.asksForSomething(bed.layout()))
            .map(p -> p.reason())
            .collect(Collectors.joining("; "));
    sheet.paragraph("", "Ranked by, the first difference decides: " + reasons + ".");
    sheet.paragraph(
        "", "Runs are counted in holes of a side's list, string in mm in the finished frame.");
  }

  private static String title(Route route) {
    return family(route) + ", mains from the " + route.mainsStart().word();
  }

  /** The families of a route in words, {@code plain} when it has none. */
  static String family(Route route) {
    return route.families().isEmpty()
        ? "plain"
        : route.families().stream().map(f -> f.word()).collect(Collectors.joining(", "));
  }
}
