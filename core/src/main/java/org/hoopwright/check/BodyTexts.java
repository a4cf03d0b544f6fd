package org.hoopwright.check;

import java.util.List;
import org.hoopwright.finding.FindingCode;

/** What the rules of one group say: governing bodies. */
final class BodyTexts {

  static final RuleBook.Group GROUP =
      new RuleBook.Group(
          "Governing bodies",
          List.of(
              RuleText.of(FindingCode.RULE_SIZE)
                  .says(
                      "A frame beyond the limits of the game's governing body is not allowed in play under its rules. SI values count. Each finding names its source.")
                  .example(
                      "willowbank-100",
                      "\"frame\": { \"length\": 685,",
                      "\"frame\": { \"length\": 745,"),
              RuleText.of(FindingCode.PATTERN_THIN_CENTRE)
                  .says(
                      "The rules of tennis and the laws of badminton ask that the pattern be not less dense in the centre than in any other area. We read that as: the mean gap of the middle third is at most {CENTRE_RATIO} that of the outer thirds. Only measured strings are judged.")
                  .example(
                      "willowbank-95",
                      "\"offsets\": [5, 15.2, 25.5, 35.9, 46.5, 57.2, 68, 79, 90]",
                      "\"offsets\": [6.5, 18.5, 30, 40.5, 50.5, 60, 69.3, 79, 90]"),
              RuleText.of(FindingCode.PATTERN_NOT_UNIFORM)
                  .says(
                      "The rules of tennis and squash and the laws of badminton (in one of two copies seen) ask for a pattern that is generally uniform. We read that as: in the middle half of the bed the widest gap is at most {UNIFORM_RATIO} the narrowest. Only measured strings are judged.")
                  .example(
                      "willowbank-95",
                      "102, 115.3, 128.7, 142, 155.3,",
                      "102, 113, 122, 139, 156,")));

  private BodyTexts() {}
}
