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
                      "What a layout's maker asks is a preference; a plan that cannot keep to all of it is made and says so.")
                  .call(
                      "plan sample:willowbank-97 --pieces 1",
                      "plan sample:willowbank-97 --pieces 2"),
              RuleText.of(FindingCode.START_CLAMP_HEAD_ZONE)
                  .says("Only when the caller allowed it: strings shear most there.")
                  .call(
                      "plan sample:willowbank-100 --anchor-main 2",
                      "plan sample:willowbank-100 --anchor-main 1"),
              RuleText.of(FindingCode.START_CLAMP_SLIPS)
                  .says(
                      "The starting clamp was tested and lets go, so the mains start another way.")
                  .call(
                      "plan sample:willowbank-100 --start-clamp-test 16/nylon/40lbf/held",
                      "plan sample:willowbank-100 --start-clamp-test 16/nylon/20lbf/slipped"),
              RuleText.of(FindingCode.START_CLAMP_REFUSED)
                  .says(
                      "A starting clamp was asked for, or tests call for one, behind a machine clamp or as a third clamp; none is free, it would sit in the head zone, or it lets the string go.")
                  .call(
                      "plan sample:willowbank-100 --clamp-test 16/nylon/60lbf/held",
                      "plan sample:willowbank-100 --clamp-test 16/nylon/40lbf/slipped"),
              RuleText.of(FindingCode.CLAMP_AWAY)
                  .says(
                      "A clamp that sits near the frame would close holes of crosses still to come, so it sits farther in; the string between it and the frame is slack.")
                  .call(
                      "plan sample:willowbank-teaching --direction head-to-throat",
                      "plan sample:willowbank-teaching --direction throat-to-head"),
              RuleText.of(FindingCode.CLAMP_MAY_SLIP)
                  .says("The clamp bears as much as this string pulled out of it at in a test.")
                  .call(
                      "plan sample:willowbank-100 --clamp-test 16/nylon/80lbf/held",
                      "plan sample:willowbank-100 --clamp-test 16/nylon/40lbf/slipped"),
              RuleText.of(FindingCode.CLAMP_UNTESTED)
                  .says("No test says that the clamp holds so much.")
                  .call(
                      "plan sample:willowbank-100 --clamp-test 16/nylon/80lbf/held",
                      "plan sample:willowbank-100 --clamp-test 16/nylon/40lbf/held"),
              RuleText.of(FindingCode.CLAMP_NOT_CLEANED)
                  .says("A clamp that slipped once slips again until its jaws are clean.")
                  .call(
                      "plan sample:willowbank-100 --clamp-test 16/nylon/40lbf/slipped --clamp-test cleaned --clamp-test 16/nylon/80lbf/held",
                      "plan sample:willowbank-100 --clamp-test 16/nylon/40lbf/slipped"),
              RuleText.of(FindingCode.CLAMP_ALONE)
                  .says(
                      "A floating clamp grips two neighbouring strings, and needs the second one tight.")
                  .call(
                      "plan sample:willowbank-100 --clamps fixed",
                      "plan sample:willowbank-100 --clamps floating"),
              RuleText.of(FindingCode.MARK_ON_BEND)
                  .says(
                      "A starting clamp marks the string; in the bend of the head zone a mark is where it breaks.")
                  .call(
                      "plan sample:willowbank-teaching --anchor-main 2",
                      "plan sample:willowbank-teaching --anchor-main 1"),
              RuleText.of(FindingCode.ANCHOR_WEAKER)
                  .says("A knot that cinches round a softer string can cut it.")
                  .call(
                      "plan sample:willowbank-100 --material polyester/natural-gut",
                      "plan sample:willowbank-100 --material natural-gut/polyester"),
              RuleText.of(FindingCode.STRING_SHORT)
                  .says("The pieces need more string than there is.")
                  .call(
                      "plan sample:willowbank-100 --at-hand 12m",
                      "plan sample:willowbank-100 --at-hand 9m"),
              RuleText.of(FindingCode.STRING_TIGHT)
                  .says("The string may just be enough: measure before you cut.")
                  .call(
                      "plan sample:willowbank-100 --at-hand 12m",
                      "plan sample:willowbank-100 --at-hand 11.2m"),
              RuleText.of(FindingCode.TENSION_ABOVE_MAX)
                  .says("Too high a pull can crack the frame.")
                  .call(
                      "plan sample:willowbank-100 --tension 55lbf",
                      "plan sample:willowbank-100 --tension 70lbf"),
              RuleText.of(FindingCode.TENSION_BELOW_MIN)
                  .says("Likely the wrong unit.")
                  .call(
                      "plan sample:willowbank-100 --tension 55lbf",
                      "plan sample:willowbank-100 --tension 30lbf")));

  private PlanTexts() {}
}
