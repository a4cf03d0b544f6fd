package org.hoopwright.patterns.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hoopwright.units.LengthUnit;

/** A length as the command line takes it: a number with its unit. */
final class LengthWord {

  private static final Pattern FORM = Pattern.compile("([0-9]{1,6}(?:\\.[0-9]{1,6})?) ?(mm|in)?");

  private LengthWord() {}

  /**
   * The length in mm.
   *
   * @throws IllegalArgumentException when it is no number with its unit; the message says the way
   *     out
   */
  static double mm(String option, String value) {
    Matcher m = FORM.matcher(value.strip());
    if (!m.matches()) {
      throw new IllegalArgumentException(
          option + " (" + value + ") must be a number with its unit: write it like 180mm or 7in.");
    }
    String number = m.group(1);
    if (m.group(2) == null) {
      throw new IllegalArgumentException(
          option
              + " ("
              + value
              + ") must have its unit: write "
              + number
              + "mm or "
              + number
              + "in.");
    }
    double factor = m.group(2).equals("in") ? LengthUnit.INCH.millimetres() : 1;
    return Double.parseDouble(number) * factor;
  }
}
