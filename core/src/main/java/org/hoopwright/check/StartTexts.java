package org.hoopwright.check;

import java.util.List;
import org.hoopwright.finding.FindingCode;

/** What the rules of one group say: start, direction and route. */
final class StartTexts {

  static final RuleBook.Group GROUP =
      new RuleBook.Group(
          "Start, direction and route",
          List.of(
              RuleText.of(FindingCode.HEAD_ZONE_HOLE)
                  .says("The head zone is counted from the head.")
                  .example("willowbank-100", "\"headZone\": \"10H\"", "\"headZone\": \"10T\""),
              RuleText.of(FindingCode.HEAD_ZONE_SHORT)
                  .says(
                      "Strings shear most on the bends of the head (common practice, no source). A zone that leaves the outermost mains out allows a starting clamp there.")
                  .example("willowbank-100", "\"headZone\": \"10H\"", "\"headZone\": \"4H\""),
              RuleText.of(FindingCode.MAINS_END_THROAT)
                  .says(
                      "Mains end where they started when there is an even number a side. Where they end at the throat, one piece strings the crosses from there up, or goes round the frame.")
                  .example("willowbank-97", "\"start\": \"head\"", "\"start\": \"throat\""),
              RuleText.of(FindingCode.DIRECTION_UPWARD)
                  .says(
                      "Crosses from the throat up put more pressure on the bends at the shoulders; makers' leaflets that ask for it come first all the same.")
                  .example(
                      "willowbank-100",
                      "\"direction\": \"either\"",
                      "\"direction\": \"throat-to-head\""),
              RuleText.of(FindingCode.ROUTE_UNKNOWN)
                  .says(
                      "The search reached its limit of nodes before it found a route or proved that there is none."),
              RuleText.of(FindingCode.ROUTE_HARD)
                  .says(
                      "More than {COVERED_SHARE} of the passes go through a hole that an earlier run covers, in the best route that there is."),
              RuleText.of(FindingCode.ROUTE_LONG_RUN)
                  .says(
                      "Runs over many places need a groove that long. The limit is 4 places unless the job says otherwise.")
                  .example(
                      "willowbank-teaching",
                      "\"tieOff\": [\"1H\", \"1T\", \"2T\"]",
                      "\"tieOff\": [\"3H\", \"3T\"]"),
              RuleText.of(FindingCode.ROUTE_DOUBLED)
                  .says(
                      "More than {DOUBLED_SHARE} of the runs lie over an earlier one, in the best route that there is."),
              RuleText.of(FindingCode.MAINS_START_INFERRED)
                  .says(
                      "The layout does not say at which end the mains start, and only one end leads to a route; it was taken.")
                  .inWords("\"start\": \"throat\"", "no mains.start"),
              RuleText.of(FindingCode.DETOUR)
                  .says(
                      "The nearest pattern that leaves the blocked hole out is shown: which strings move, and which holes take two. Look whether these holes are wide enough.")
                  .example("willowbank-100", "\"blocked\": []", "\"blocked\": [\"L3H\"]"),
              RuleText.of(FindingCode.DETOUR_NONE)
                  .says(
                      "No pattern near the stated one leaves the blocked hole out and can be strung.")
                  .example("willowbank-100", "\"blocked\": []", "\"blocked\": [\"1H\", \"1T\"]"),
              RuleText.of(FindingCode.HALF_DONE)
                  .says("What a half-done job leaves to choose, or forbids."),
              RuleText.of(FindingCode.ROUTE_OBSTACLE)
                  .says(
                      "One of the facts that together forbid every route; lifting any one of them may be enough.")
                  .example(
                      "willowbank-100",
                      "\"tieOff\": [\"5H\", \"6T\", \"8T\", \"12T\"]",
                      "\"tieOff\": [\"3H\", \"3T\"]"),
              RuleText.of(FindingCode.NO_ROUTE)
                  .says(
                      "The search proved that no order of the string keeps to all hard rules. A smallest set of facts that together forbid it is named.")
                  .example(
                      "willowbank-100",
                      "\"tieOff\": [\"5H\", \"6T\", \"8T\", \"12T\"]",
                      "\"tieOff\": []")));

  private StartTexts() {}
}
