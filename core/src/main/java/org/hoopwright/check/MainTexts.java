package org.hoopwright.check;

import java.util.List;
import org.hoopwright.finding.FindingCode;

/** What the rules of one group say: mains. */
final class MainTexts {

  static final RuleBook.Group GROUP =
      new RuleBook.Group(
          "Mains",
          List.of(
              RuleText.of(FindingCode.MAINS_ODD)
                  .says(
                      "Frames with a main on the long axis cannot be planned yet, and a guess would be wrong.")
                  .example("willowbank-100", "\"count\": 16", "\"count\": 17"),
              RuleText.of(FindingCode.MAINS_TOO_FEW)
                  .says("The least bed has two mains a side.")
                  .example(
                      "willowbank-teaching",
                      "\"mains\": { \"count\": 4,",
                      "\"mains\": { \"count\": 2,"),
              RuleText.of(FindingCode.MAINS_SKIP_MISSING)
                  .says(
                      "Without mains.skip it is not known which holes the mains use. Absent is not the same as [].")
                  .inWords("\"skip\": []", "no mains.skip"),
              RuleText.of(FindingCode.PATTERN_INFERRED)
                  .says(
                      "The layout does not state mains.skip, and the holes allow one reading only. It was used, and is shown, so that it can be written into the file (`infer`).")
                  .example(
                      "willowbank-100",
                      "\"count\": 16, \"start\": \"throat\", \"skip\": [\"7H\", \"9H\", \"7T\", \"9T\"]",
                      "\"count\": 16, \"start\": \"throat\""),
              RuleText.of(FindingCode.PATTERN_UNSURE)
                  .says(
                      "The holes can be read in more than one way that is nearly as good; planning from a guess could crack a frame.")
                  .example(
                      "willowbank-100-worn",
                      "\"count\": 16, \"start\": \"throat\", \"skip\": [\"7H\", \"9H\", \"7T\", \"9T\"]",
                      "\"count\": 16, \"start\": \"throat\""),
              RuleText.of(FindingCode.PATTERN_NONE)
                  .says("No labelling of the holes fits the counts of mains and crosses.")
                  .inWords("\"head\": 18, \"throat\": 17", "\"head\": 8, \"throat\": 8"),
              RuleText.of(FindingCode.MAINS_NO_HOLE)
                  .says("An end of a side has fewer holes for mains than the side has mains.")
                  .example("willowbank-100", "\"count\": 16", "\"count\": 40"),
              RuleText.of(FindingCode.MAIN_HOLE_BLOCKED)
                  .says(
                      "The stated rules put a main through a hole that takes no string. Mains cannot simply pass it by as crosses do.")
                  .example("willowbank-100", "\"blocked\": []", "\"blocked\": [\"L3H\"]"),
              RuleText.of(FindingCode.OFFSETS_COUNT)
                  .says("There is one offset for each string of the side, in order.")
                  .example("willowbank-95", "79, 90]", "79]"),
              RuleText.of(FindingCode.OFFSETS_ORDER)
                  .says(
                      "Offsets of mains grow from the axis outwards, those of crosses from the head down.")
                  .example("willowbank-95", "79, 90]", "90, 79]"),
              RuleText.of(FindingCode.OFFSET_OUTSIDE)
                  .says("A string at that distance would not meet the hoop.")
                  .example("willowbank-95", "79, 90]", "79, 130]"),
              RuleText.of(FindingCode.OFFSETS_DIFFER)
                  .says(
                      "In a shared hole main and cross were measured on their own, and put the hole at heights more than 3 mm apart (our choice: the width of a hole that takes two strings). The main's offset counts.")
                  .inWords(
                      "main at 90 mm, cross at 54.8 mm below the head",
                      "main at 90 mm, cross at 62 mm below the head"),
              RuleText.of(FindingCode.OFFSETS_WITHOUT_SKIP)
                  .says(
                      "Offsets say where strings are, so it must be known which holes the strings use.")
                  .example(
                      "willowbank-95", "    \"skip\": [\"8H\", \"10H\", \"8T\", \"10T\"],\n", ""),
              RuleText.of(FindingCode.MAINS_UNUSUAL)
                  .says("The number of mains is beyond what the game knows (ranges below).")
                  .example("willowbank-100", "\"count\": 16", "\"count\": 8"),
              RuleText.of(FindingCode.MAINS_SKEWED)
                  .says(
                      "Mains are parallel or fan out evenly; one that leans {MAINS_SKEW} out of line with its neighbours has taken a wrong hole at one end.")
                  .example(
                      "willowbank-95",
                      "\"offsets\": [5, 15.2, 25.5, 35.9, 46.5, 57.2, 68, 79, 90]",
                      "\"offsets\": { \"head\": [5, 15.2, 25.5, 35.9, 46.5, 57.2, 68, 79, 90], \"throat\": [5, 15.2, 25.5, 35.9, 55.7, 57.2, 68, 79, 90] }"),
              RuleText.of(FindingCode.MAINS_SPACING)
                  .says(
                      "A gap of more than {GAP_RATIO} those beside it, or less than the inverse, means a main in a wrong hole or a wrong measure.")
                  .example("willowbank-95", "57.2, 68, 79, 90]", "57.2, 58.5, 79, 90]"),
              RuleText.of(FindingCode.MAINS_CENTRE)
                  .says(
                      "The gap between L1 and R1 should be like that between R1 and R2, within {GAP_RATIO}. Distances that were taken from string to string instead of from the axis show up here.")
                  .example("willowbank-95", "\"offsets\": [5, 15.2,", "\"offsets\": [10, 15.2,"),
              RuleText.of(FindingCode.MAINS_NOT_MIRRORED)
                  .says(
                      "On a frame drilled alike on both sides, mains of one number lie within {MIRROR} of mirror images.")
                  .example(
                      "willowbank-95",
                      "\"offsets\": [5, 15.2, 25.5, 35.9, 46.5, 57.2, 68, 79, 90]",
                      "\"offsets\": { \"left\": [5, 15.2, 25.5, 35.9, 46.5, 57.2, 68, 79, 90], \"right\": [5, 15.2, 25.5, 35.9, 53, 60.5, 69, 79, 90] }"),
              RuleText.of(FindingCode.MAINS_SKIP_IDLE)
                  .says(
                      "Mains take holes from the axis outwards until all have one; skipping a hole beyond the outermost main says nothing, so another was likely meant.")
                  .example(
                      "willowbank-100",
                      "\"skip\": [\"7H\", \"9H\", \"7T\", \"9T\"]",
                      "\"skip\": [\"7H\", \"9H\", \"7T\", \"9T\", \"14H\"]")));

  private MainTexts() {}
}
