package org.hoopwright.check;

import java.util.List;
import org.hoopwright.finding.FindingCode;

/** What the rules of one group say: holes. */
final class HoleTexts {

  static final RuleBook.Group GROUP =
      new RuleBook.Group(
          "Holes",
          List.of(
              RuleText.of(FindingCode.UNKNOWN_HOLE)
                  .says(
                      "The layout counts holes from each end of each side; a name beyond these counts is a slip or a wrong count.")
                  .example(
                      "willowbank-teaching",
                      "[\"1H\", \"1T\", \"2T\"]",
                      "[\"1H\", \"1T\", \"9T\"]"),
              RuleText.of(FindingCode.HOLE_TWICE)
                  .says(
                      "Naming a hole twice does no harm by itself but is likely a slip: another hole may have been meant.")
                  .example(
                      "willowbank-teaching",
                      "[\"1H\", \"1T\", \"2T\"]",
                      "[\"1H\", \"1T\", \"1T\"]"),
              RuleText.of(FindingCode.HOLE_ORDER)
                  .says(
                      "Positions must follow the list of the side along the outline, empty holes included; otherwise strings would be thought to cross that do not.")
                  .example("willowbank-teaching", "\"2H\": [27, 50.5]", "\"2H\": [7, 59.5]"),
              RuleText.of(FindingCode.HOLE_OFF_HOOP)
                  .says(
                      "Stated coordinates lie more than {OFF_HOOP} from the inside of the hoop. That is more than the depth of a frame's wall.")
                  .example("willowbank-teaching", "\"2H\": [27, 50.5]", "\"2H\": [27, 90.5]"),
              RuleText.of(FindingCode.HOLE_WRONG_SIDE)
                  .says(
                      "A hole of the right side has x above 0, one of the left side below 0; a name without side gives the right hole.")
                  .example("willowbank-teaching", "\"2H\": [27, 50.5]", "\"2H\": [-27, 50.5]"),
              RuleText.of(FindingCode.BORE_TOO_SMALL)
                  .says(
                      "A shared hole must take two passes and a tie-off hole its anchor and a knot, so both need a bore of 2 or more.")
                  .example(
                      "willowbank-100", "\"bore\": { \"L8T\": 3 }", "\"bore\": { \"L8T\": 1 }"),
              RuleText.of(FindingCode.NO_RUN_SIDES)
                  .says(
                      "A forbidden stretch joins two different holes of one side, or of both sides when neither name has one.")
                  .example("willowbank-100", "[\"5T\", \"6T\"]", "[\"5T\", \"R6T\"]"),
              RuleText.of(FindingCode.HOLES_CROWDED)
                  .says(
                      "Neighbouring holes nearer than {HOLES_APART} cannot be drilled: one of them was measured wrongly, or counted twice.")
                  .example("willowbank-teaching", "\"4H\": [49.3, 10]", "\"4H\": [43.6, 28.6]"),
              RuleText.of(FindingCode.HOLES_GAP)
                  .says(
                      "A gap between neighbours of more than {HOLES_GAP} the usual one of their side means that a hole was not counted, or was measured wrongly.")
                  .inWords("\"head\": 18", "\"head\": 12, with the same coordinates"),
              RuleText.of(FindingCode.HOLES_UNEVEN)
                  .says(
                      "Some frames are drilled so; on others one hole was missed. Both sides' counts are shown.")
                  .example(
                      "willowbank-100",
                      "\"throat\": 17",
                      "\"throat\": { \"left\": 17, \"right\": 18 }"),
              RuleText.of(FindingCode.HOLES_NOT_MIRRORED)
                  .says("Holes of one name differ from mirror images by more than {MIRROR}.")
                  .example(
                      "willowbank-100",
                      "\"at\": { \"L1H\": [-5.1, 164.9] }",
                      "\"at\": { \"L1H\": [-5.1, 164.9], \"R1H\": [12.4, 164] }"),
              RuleText.of(FindingCode.BORE_NEEDLESS)
                  .says("A bore that only repeats the default is noise that can go stale.")
                  .example(
                      "willowbank-100", "\"bore\": { \"L8T\": 3 }", "\"bore\": { \"L8T\": 2 }"),
              RuleText.of(FindingCode.BORE_IDLE)
                  .says(
                      "Passes alone stay at 1, or 2 in a shared hole, and only a tie-off hole takes a knot: a wider bore is of no use unless the hole is named as one of them.")
                  .example(
                      "willowbank-100", "\"bore\": { \"L8T\": 3 }", "\"bore\": { \"L7T\": 3 }"),
              RuleText.of(FindingCode.BLOCKED_USED)
                  .says(
                      "A blocked hole takes nothing at all, so it can be neither shared nor for a knot.")
                  .example("willowbank-100", "\"blocked\": []", "\"blocked\": [\"12T\"]")));

  private HoleTexts() {}
}
