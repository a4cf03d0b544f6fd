package org.hoopwright.check;

import java.util.List;
import org.hoopwright.finding.FindingCode;

/** What the rules of one group say: hoop. */
final class HoopTexts {

  static final RuleBook.Group GROUP =
      new RuleBook.Group(
          "Hoop",
          List.of(
              RuleText.of(FindingCode.HOOP_SHAPE)
                  .says(
                      "The numbers make no closed outline that meets the long axis exactly twice.")
                  .example(
                      "willowbank-teaching",
                      "\"length\": 120, \"width\": 100",
                      "\"length\": 120, \"width\": -100"),
              RuleText.of(FindingCode.HOOP_OFF_CENTRE)
                  .says(
                      "Coordinates have their origin at the middle of the hoop's inside length; an outline whose middle lies elsewhere by more than {HOOP_CENTRE} shifts every cross.")
                  .example("willowbank-racquetball", "[0, 150],", "[0, 154],"),
              RuleText.of(FindingCode.HOOP_UNUSUAL)
                  .says(
                      "The hoop's inside length or width is beyond what the game knows (ranges below). The usual causes are the unit and outside measures.")
                  .example("willowbank-100", "\"length\": 330,", "\"length\": 33,"),
              RuleText.of(FindingCode.HOOP_PROPORTION)
                  .says(
                      "A racket's hoop is longer than wide, and no more than {HOOP_RATIO} as long.")
                  .example(
                      "willowbank-100",
                      "\"length\": 330, \"width\": 248",
                      "\"length\": 248, \"width\": 330"),
              RuleText.of(FindingCode.HOOP_EXPONENT)
                  .says(
                      "Between {EXPONENT_LEAST} and {EXPONENT_MOST} a superellipse looks like a hoop; beyond, it has points or corners.")
                  .example("willowbank-100", "\"exponent\": 2.1", "\"exponent\": 5"),
              RuleText.of(FindingCode.HOOP_UNEVEN)
                  .says(
                      "The two halves of the outline differ by more than {HOOP_MIRROR} from mirror images, so something was measured from another axis.")
                  .example("willowbank-racquetball", "[112.9, 57.4]", "[106.9, 55]"),
              RuleText.of(FindingCode.FRAME_BELOW_HOOP)
                  .says("The whole racket cannot be smaller than the inside of its hoop.")
                  .example(
                      "willowbank-100",
                      "\"frame\": { \"length\": 685,",
                      "\"frame\": { \"length\": 27,")));

  private HoopTexts() {}
}
