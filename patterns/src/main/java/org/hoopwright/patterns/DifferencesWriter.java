package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hoopwright.compare.Difference;
import org.hoopwright.compare.Topic;

/** Writes what differs: as text for people, and as {@code hoopwright/differences-1}. */
public final class DifferencesWriter {

  /** The format of differences. */
  public static final String FORMAT = "hoopwright/differences-1";

  /** So many orders of passes that one alone allows are listed in a text. */
  private static final int ORDERS_SHOWN = 10;

  private DifferencesWriter() {}

  /**
   * The differences as JSON: members in a fixed order, one difference a line, {@code first} and
   * {@code second} absent where there is no value.
   */
  public static String json(Compared first, Compared second, List<Difference> differences) {
    return JsonLines.object()
        .put("format", FORMAT)
        .put("first", compared(first))
        .put("second", compared(second))
        .put("differences", JsonLines.lines(differences, DifferencesWriter::difference))
        .end()
        .document();
  }

  private static JsonLines compared(Compared c) {
    JsonLines.Members m = JsonLines.lineObject().put("file", c.file()).put("name", c.name());
    c.sha256().ifPresent(sha -> m.put("sha256", sha));
    c.route().ifPresent(rank -> m.put("route", rank));
    return m.end();
  }

  private static JsonLines difference(Difference d) {
    JsonLines.Members m =
        JsonLines.lineObject().put("topic", d.topic().word()).put("about", d.about());
    d.first().ifPresent(value -> m.put("first", value));
    d.second().ifPresent(value -> m.put("second", value));
    return m.put("say", d.say()).end();
  }

  /**
   * The differences as lines of at most 100 characters, part by part. Of the orders of passes that
   * one alone allows the first {@value #ORDERS_SHOWN} are listed, and the rest counted.
   */
  public static String text(Compared first, Compared second, List<Difference> differences) {
    SheetText sheet = new SheetText();
    sheet.paragraph("", "WHAT DIFFERS");
    sheet.paragraph("  first:  ", first.title());
    sheet.paragraph("  second: ", second.title());
    if (differences.isEmpty()) {
      sheet.blank().paragraph("", "Nothing differs.");
    }
    Map<Topic.Part, List<Difference>> parts = new LinkedHashMap<>();
    for (Difference d : differences) {
      parts.computeIfAbsent(d.topic().part(), p -> new ArrayList<>()).add(d);
    }
    boolean layouts = first.route().isEmpty();
    parts.forEach(
        (part, these) -> {
          sheet.heading(heading(part, layouts));
          Map<Boolean, Integer> orders = new LinkedHashMap<>();
          for (Difference d : these) {
            int order =
                d.topic() == Topic.ROUTES_ORDER
                    ? orders.merge(d.first().isPresent(), 1, Integer::sum)
                    : 0;
            if (order <= ORDERS_SHOWN) {
              sheet.paragraph("  - ", d.say());
            }
          }
          orders.forEach((inFirst, n) -> more(sheet, inFirst, n - ORDERS_SHOWN));
        });
    return sheet.toString();
  }

  private static void more(SheetText sheet, boolean inFirst, int more) {
    if (more > 0) {
      sheet.paragraph(
          "  - ",
          "So it is with "
              + more
              + " more that the "
              + (inFirst ? "first" : "second")
              + " alone allows; --format json lists them all.");
    }
  }

  private static String heading(Topic.Part part, boolean layouts) {
    return switch (part) {
      case LAYOUT -> "WHAT THE LAYOUTS STATE";
      case BED -> "SPANS AND PLACES OF HOLES";
      case ROUTES -> "WHICH ORDERS OF PASSES ARE POSSIBLE";
      case ROUTE -> layouts ? "THE BEST ROUTES" : "THE ROUTES";
      case PLAN -> "THE PLANS";
    };
  }
}
