package org.hoopwright.check;

import java.util.List;
import org.hoopwright.finding.FindingCode;

/** What the rules of one group say: what a plan says. */
final class PlanTexts {

  static final RuleBook.Group GROUP =
      new RuleBook.Group(
          "What a plan says",
          List.of(
              RuleText.of(FindingCode.MAKER_DEPARTURE)
                  .says(
                      "What a layout's maker asks is a preference; a plan that cannot keep to all of it is made and says so."),
              RuleText.of(FindingCode.START_CLAMP_HEAD_ZONE)
                  .says("Only when the caller allowed it: strings shear most there."),
              RuleText.of(FindingCode.START_CLAMP_SLIPS)
                  .says(
                      "The starting clamp was tested and lets go, so the mains start another way."),
              RuleText.of(FindingCode.CLAMP_AWAY)
                  .says(
                      "A clamp that sits near the frame would close holes of crosses still to come, so it sits farther in; the string between it and the frame is slack."),
              RuleText.of(FindingCode.CLAMP_MAY_SLIP)
                  .says("The clamp bears as much as this string pulled out of it at in a test."),
              RuleText.of(FindingCode.CLAMP_UNTESTED)
                  .says("No test says that the clamp holds so much."),
              RuleText.of(FindingCode.CLAMP_NOT_CLEANED)
                  .says("A clamp that slipped once slips again until its jaws are clean."),
              RuleText.of(FindingCode.CLAMP_ALONE)
                  .says(
                      "A floating clamp grips two neighbouring strings, and needs the second one tight."),
              RuleText.of(FindingCode.MARK_ON_BEND)
                  .says(
                      "A starting clamp marks the string; in the bend of the head zone a mark is where it breaks."),
              RuleText.of(FindingCode.ANCHOR_WEAKER)
                  .says("A knot that cinches round a softer string can cut it."),
              RuleText.of(FindingCode.STRING_SHORT)
                  .says("The pieces need more string than there is."),
              RuleText.of(FindingCode.STRING_TIGHT)
                  .says("The string may just be enough: measure before you cut."),
              RuleText.of(FindingCode.TENSION_ABOVE_MAX)
                  .says("Too high a pull can crack the frame.")
                  .inWords("--tension 55lbf", "--tension 70lbf"),
              RuleText.of(FindingCode.TENSION_BELOW_MIN)
                  .says("Likely the wrong unit.")
                  .inWords("--tension 55lbf", "--tension 30lbf")));

  private PlanTexts() {}
}
