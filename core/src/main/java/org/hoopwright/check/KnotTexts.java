package org.hoopwright.check;

import java.util.List;
import org.hoopwright.finding.FindingCode;

/** What the rules of one group say: tie-off holes. */
final class KnotTexts {

  static final RuleBook.Group GROUP =
      new RuleBook.Group(
          "Tie-off holes",
          List.of(
              RuleText.of(FindingCode.TIE_OFF_FEW)
                  .says("Fewer than {KNOT_PLACES}: no job can be finished.")
                  .example(
                      "willowbank-100",
                      "\"tieOff\": [\"5H\", \"6T\", \"8T\", \"12T\"]",
                      "\"tieOff\": [\"L5H\"]"),
              RuleText.of(FindingCode.TIE_OFF_FULL)
                  .says("The strings that run through the hole fill its bore, so no knot goes in.")
                  .example(
                      "willowbank-badminton",
                      "\"tieOff\": [\"7H\", \"9H\", \"6T\", \"9T\"]",
                      "\"tieOff\": [\"8H\", \"9H\", \"6T\", \"9T\"]"),
              RuleText.of(FindingCode.TIE_OFF_NO_ANCHOR)
                  .says(
                      "A knot is tied round the string that runs through its own hole; a hole without string offers none.")
                  .example(
                      "willowbank-100",
                      "\"count\": 19, \"skip\": []",
                      "\"count\": 18, \"skip\": [\"12T\"]"),
              RuleText.of(FindingCode.TIE_OFF_ONE_SIDE)
                  .says(
                      "The ends of a string come out on both sides. A name without L or R means both.")
                  .example(
                      "willowbank-100",
                      "\"tieOff\": [\"5H\", \"6T\", \"8T\", \"12T\"]",
                      "\"tieOff\": [\"L5H\", \"L6T\", \"L8T\", \"L12T\"]")));

  private KnotTexts() {}
}
