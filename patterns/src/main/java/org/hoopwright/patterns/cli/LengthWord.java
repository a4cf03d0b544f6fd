package org.hoopwright.patterns.cli;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A length as the command line takes it: a number with its unit. */
final class LengthWord {

  private static final Pattern FORM =
      Pattern.compile("([0-9]{1,6}(?:\\.[0-9]{1,6})?) ?(mm|m|in|ft)?");

  /** Millimetres to the unit; inch and foot exactly, NIST SP 811, appendix B.8. */
  private static final Map<String, Double> MILLIMETRES =
      Map.of("mm", 1.0, "m", 1000.0, "in", 25.4, "ft", 304.8);

  private LengthWord() {}

  /** What a length is of, which says in what units people write it. */
  enum Of {
    BENCH("mm", "in", "180mm or 7in"),
    STRING("m", "ft", "12m or 40ft");

    private final String metric;
    private final String imperial;
    private final String example;

    Of(String metric, String imperial, String example) {
      this.metric = metric;
      this.imperial = imperial;
      this.example = example;
    }
  }

  /**
   * The length in mm.
   *
   * @throws IllegalArgumentException when it is no number with its unit; the message says the way
   *     out
   */
  static double mm(String option, String value, Of of) {
    Matcher m = FORM.matcher(value.strip());
    if (!m.matches()) {
      throw new IllegalArgumentException(
          option
              + " ("
              + value
              + ") must be a number with its unit: write it like "
              + of.example
              + ".");
    }
    String number = m.group(1);
    Double unit = m.group(2) == null ? null : MILLIMETRES.get(m.group(2));
    if (unit == null) {
      throw new IllegalArgumentException(
          option
              + " ("
              + value
              + ") must have its unit: write "
              + number
              + of.metric
              + " or "
              + number
              + of.imperial
              + ".");
    }
    return Double.parseDouble(number) * unit;
  }
}
