package org.hoopwright.patterns.cli;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A length of string as the command line takes it: a number with the unit that is on the pack. */
final class StringLength {

  private static final Pattern LENGTH =
      Pattern.compile("([0-9]{1,6}(?:\\.[0-9]{1,6})?) ?(mm|m|in|ft)");

  /** Millimetres to the unit; foot and inch as in NIST SP 811, appendix B.8, exactly. */
  private static final Map<String, Double> MILLIMETRES =
      Map.of("mm", 1.0, "m", 1000.0, "in", 25.4, "ft", 304.8);

  private StringLength() {}

  /** The length in mm; empty when it is no number with a unit. */
  static Optional<Double> mm(String value) {
    Matcher m = LENGTH.matcher(value.strip());
    return m.matches()
        ? Optional.ofNullable(MILLIMETRES.get(m.group(2)))
            .map(unit -> Double.parseDouble(m.group(1)) * unit)
        : Optional.empty();
  }
}
