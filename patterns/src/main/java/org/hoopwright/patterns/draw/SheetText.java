package org.hoopwright.patterns.draw;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hoopwright.units.Force;
import org.hoopwright.units.ForceUnit;
import org.hoopwright.units.LengthUnit;

/** Puts numbers with units into a sheet so that the reader can switch the units. */
final class SheetText {

  private static final Pattern QUANTITY =
      Pattern.compile("(?<![\\w.])([0-9]{1,9}(?:\\.[0-9]{1,9})?) (mm|N|lbf|kgf)\\b");

  private final ForceUnit forces;
  private final LengthUnit lengths;

  SheetText(ForceUnit forces, LengthUnit lengths) {
    this.forces = forces;
    this.lengths = lengths;
  }

  /** Adds a sentence; lengths in mm and forces in it become those in the reader's unit. */
  Element sentence(Element into, String sentence) {
    String text = Words.clean(sentence);
    Matcher m = QUANTITY.matcher(text);
    int from = 0;
    while (m.find()) {
      into.text(text.substring(from, m.start()));
      quantity(into, m.group(), m.group(1), m.group(2));
      from = m.end();
    }
    return into.text(text.substring(from));
  }

  private void quantity(Element into, String text, String number, String unit) {
    double value = Double.parseDouble(number);
    Optional<ForceUnit> forceUnit = ForceUnit.ofSymbol(unit);
    if (forceUnit.isEmpty()) {
      into.add(length(value));
    } else if (value * forceUnit.get().newtons() <= Force.MAX_NEWTONS) {
      into.add(force(Force.of(value, forceUnit.get()), number.contains(".") ? 1 : 0));
    } else {
      into.text(text); // no force of ours: it stands in some name
    }
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
    return force(force, 1);
  }

  private Element force(Force force, int decimals) {
    String shown =
        String.format(Locale.ROOT, "%." + decimals + "f %s", force.in(forces), forces.symbol());
    return Element.of("span")
        .attr("class", "q")
        .attr("data-newtons", String.format(Locale.ROOT, "%.4f", force.newtons()))
        .attr("data-decimals", decimals)
        .text(shown);
  }
}
