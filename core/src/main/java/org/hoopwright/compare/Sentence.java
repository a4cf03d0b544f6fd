package org.hoopwright.compare;

import java.util.Locale;

/** The sentence of a difference. */
final class Sentence {

  private Sentence() {}

  /**
   * Two facts, with what they begin with alike said once: "The mains start at the throat in the
   * first, at the head in the second."
   */
  static String both(Facts.Fact first, Facts.Fact second) {
    return capital(
        first.lead().equals(second.lead())
            ? clause(first) + " in the first, " + second.rest() + " in the second."
            : "in the first " + clause(first) + "; in the second " + clause(second) + ".");
  }

  /** A fact of one of the two, and what is said of the other. */
  static String one(Facts.Fact fact, boolean ofFirst) {
    return ofFirst
        ? "In the first " + clause(fact) + "; in the second " + fact.absent() + "."
        : "In the second " + clause(fact) + "; in the first " + fact.absent() + ".";
  }

  private static String clause(Facts.Fact fact) {
    return fact.lead() + " " + fact.rest();
  }

  static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
