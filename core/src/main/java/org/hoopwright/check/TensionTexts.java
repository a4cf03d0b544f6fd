package org.hoopwright.check;

import java.util.List;
import org.hoopwright.finding.FindingCode;

/** What the rules of one group say: tension. */
final class TensionTexts {

  static final RuleBook.Group GROUP =
      new RuleBook.Group(
          "Tension",
          List.of(
              RuleText.of(FindingCode.TENSION_RANGE)
                  .says(
                      "Both numbers are above 0 and at most 10000 N, and the least is not above the most.")
                  .example(
                      "willowbank-100", "\"min\": 50, \"max\": 60", "\"min\": 60, \"max\": 50"),
              RuleText.of(FindingCode.TENSION_UNUSUAL)
                  .says(
                      "The range is beyond what the game knows (ranges below). Pounds read as kilograms break frames.")
                  .example("willowbank-100", "\"unit\": \"lbf\"", "\"unit\": \"kgf\""),
              RuleText.of(FindingCode.TENSION_WIDE)
                  .says("The most is more than {TENSION_RATIO} the least.")
                  .example(
                      "willowbank-100", "\"min\": 50, \"max\": 60", "\"min\": 30, \"max\": 62")));

  private TensionTexts() {}
}
