package org.hoopwright.patterns.draw;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hoopwright.units.Force;
import org.hoopwright.units.ForceUnit;
import org.hoopwright.units.LengthUnit;

/** Puts numbers with units into a sheet so that the reader can switch the units. */
final class SheetText {

  private static final Pattern LENGTH = Pattern.compile("(?<![\\w.])([0-9]+(?:\\.[0-9]+)?) mm\\b");

  private final ForceUnit forces;
  private final LengthUnit lengths;

  SheetText(ForceUnit forces, LengthUnit lengths) {
    this.forces = forces;
    this.lengths = lengths;
  }

  /** Adds a sentence; lengths in mm in it become lengths in the reader's unit. */
  Element sentence(Element into, String sentence) {
    String text = Words.clean(sentence);
    Matcher m = LENGTH.matcher(text);
    int from = 0;
    while (m.find()) {
      into.text(text.substring(from, m.start()));
      into.add(length(Double.parseDouble(m.group(1))));
      from = m.end();
    }
    return into.text(text.substring(from));
  }

  /** A length. */
  Element length(double mm) {
    String shown =
        lengths == LengthUnit.MILLIMETRE
            ? String.format(Locale.ROOT, "%.0f mm", mm)
            : String.format(Locale.ROOT, mm < 1000 ? "%.2f in" : "%.0f in", mm / 25.4);
    return Element.of("span").attr("class", "q").attr("data-mm", Element.number(mm)).text(shown);
  }

  /** A force. */
  Element force(Force force) {
    String shown = String.format(Locale.ROOT, "%.1f %s", force.in(forces), forces.symbol());
    return Element.of("span")
        .attr("class", "q")
        .attr("data-newtons", String.format(Locale.ROOT, "%.4f", force.newtons()))
        .text(shown);
  }
}
