package org.hoopwright.patterns.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Colours for findings as text; every colour stands on a word that says the same. */
final class Paint {

  /** When results are coloured. The names are the words of the command line. */
  enum When {
    /** On a terminal, unless NO_COLOR is set. */
    auto,
    /** In any case. */
    always,
    /** Never. */
    never
  }

  private static final Pattern SEVERITY =
      Pattern.compile("(?m)^(.*?): (error|warning|note): (.*)( \\[[a-z-]+])$");

  private Paint() {}

  /** Whether to colour. */
  static boolean wanted(When when, boolean terminal) {
    return when == When.always || (when == When.auto && terminal);
  }

  /** The text with its severities coloured. */
  static String findings(String text) {
    Matcher m = SEVERITY.matcher(text);
    return m.replaceAll(
        r ->
            Matcher.quoteReplacement(
                r.group(1)
                    + ": \u001b["
                    + (r.group(2).equals("error")
                        ? "1;31"
                        : r.group(2).equals("warning") ? "1;33" : "1;36")
                    + "m"
                    + r.group(2)
                    + ":\u001b[0m "
                    + r.group(3)
                    + r.group(4)));
  }
}
