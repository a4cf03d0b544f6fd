package org.hoopwright.check;

import java.util.List;
import org.hoopwright.finding.FindingCode;

/** What the rules of one group say: crosses. */
final class CrossTexts {

  static final RuleBook.Group GROUP =
      new RuleBook.Group(
          "Crosses",
          List.of(
              RuleText.of(FindingCode.CROSSES_TOO_FEW)
                  .says("The least bed has two crosses.")
                  .example(
                      "willowbank-teaching",
                      "\"crosses\": { \"count\": 4,",
                      "\"crosses\": { \"count\": 1,"),
              RuleText.of(FindingCode.CROSSES_NO_HOLE)
                  .says("A side has fewer free and shared holes than there are crosses.")
                  .example("willowbank-100", "\"count\": 19", "\"count\": 22"),
              RuleText.of(FindingCode.CROSSES_HOLES_LEFT)
                  .says(
                      "Holes are left that no string takes. That may be meant, and then crosses.skip says so; else a count is wrong.")
                  .example(
                      "willowbank-teaching",
                      "\"count\": 4, \"first\": \"3H\", \"last\": \"3T\"",
                      "\"count\": 3"),
              RuleText.of(FindingCode.CROSSES_FIRST)
                  .says(
                      "The stated first hole carries a main that shares it with nothing, or is left out or blocked.")
                  .example("willowbank-100", "\"first\": \"7H\"", "\"first\": \"6H\""),
              RuleText.of(FindingCode.CROSSES_LAST)
                  .says(
                      "The last cross comes out at another hole than stated, so a count, a skip or the first hole is wrong. This is the best check of a layout: state it.")
                  .example("willowbank-100", "\"last\": \"7T\"", "\"last\": \"9T\""),
              RuleText.of(FindingCode.CROSS_HOLE_BLOCKED)
                  .says("Crosses pass by a blocked hole and take the next one.")
                  .inWords("\"blocked\": []", "\"blocked\": [\"L11H\"]"),
              RuleText.of(FindingCode.SHARED_CHOICE)
                  .says(
                      "More holes are named as shared than the crosses need, so one choice among them was made at the least cost. Another choice makes another pattern.")
                  .example(
                      "willowbank-100-worn",
                      "\"shared\": [\"L10H\"]",
                      "\"shared\": [\"L10H\", \"L8H\"]"),
              RuleText.of(FindingCode.SHARED_UNUSED)
                  .says("A hole named as shared carries one string only.")
                  .example("willowbank-100", "\"shared\": []", "\"shared\": [\"3H\"]"),
              RuleText.of(FindingCode.SHARED_CANDIDATE)
                  .says(
                      "A detour or a reading makes a hole take two strings that is not named under holes.shared; whether it is wide enough only a look can tell.")
                  .example(
                      "willowbank-badminton",
                      "\"tieOff\": [\"7H\", \"9H\", \"6T\", \"9T\"],\n    \"shared\": [\"8H\", \"10H\", \"8T\", \"10T\"]\n  },\n  \"mains\": { \"count\": 22, \"start\": \"throat\", \"skip\": [] }",
                      "\"tieOff\": [\"7H\", \"9H\", \"6T\", \"9T\"]\n  },\n  \"mains\": { \"count\": 22, \"start\": \"throat\" }"),
              RuleText.of(FindingCode.TIE_OFF_CANDIDATE)
                  .says(
                      "No tie-off hole is stated, and likely ones were taken for it; look at the frame before you rely on them.")
                  .example(
                      "willowbank-badminton",
                      "\"tieOff\": [\"7H\", \"9H\", \"6T\", \"9T\"],\n    \"shared\": [\"8H\", \"10H\", \"8T\", \"10T\"]\n  },\n  \"mains\": { \"count\": 22, \"start\": \"throat\", \"skip\": [] }",
                      "\"shared\": [\"8H\", \"10H\", \"8T\", \"10T\"]\n  },\n  \"mains\": { \"count\": 22, \"start\": \"throat\" }"),
              RuleText.of(FindingCode.CROSSES_UNUSUAL)
                  .says("The number of crosses is beyond what the game knows (ranges below).")
                  .example("willowbank-100", "\"count\": 19", "\"count\": 12"),
              RuleText.of(FindingCode.CROSSES_SKEWED)
                  .says(
                      "A cross lies level; one that is {CROSS_SKEW} higher at one end runs to a wrong hole.")
                  .example(
                      "willowbank-110",
                      "\"count\": 18, \"first\": \"9H\", \"last\": \"9T\"",
                      "\"count\": 17, \"first\": [\"L9H\", \"R10H\"]"),
              RuleText.of(FindingCode.CROSSES_SPACING)
                  .says(
                      "A gap of more than {GAP_RATIO} those beside it, or less than the inverse, means a cross in a wrong hole or a wrong measure.")
                  .example("willowbank-95", "142, 155.3,", "142, 146,"),
              RuleText.of(FindingCode.CROSSES_SKIP_IDLE)
                  .says(
                      "Crosses cannot take a hole that carries a main or is blocked anyway; naming it says nothing, so another was likely meant.")
                  .example(
                      "willowbank-100", "\"skip\": [], \"first\"", "\"skip\": [\"3H\"], \"first\""),
              RuleText.of(FindingCode.SPAN_ALONE)
                  .says("A string that meets no other is held by no weave.")
                  .example(
                      "willowbank-teaching",
                      "\"skip\": [] },\n  \"crosses\": { \"count\": 4, \"first\": \"3H\", \"last\": \"3T\" }",
                      "\"skip\": [\"1H\", \"1T\"] },\n  \"crosses\": { \"count\": 4 }")));

  private CrossTexts() {}
}
