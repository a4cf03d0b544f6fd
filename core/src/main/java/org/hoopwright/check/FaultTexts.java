package org.hoopwright.check;

import java.util.List;
import org.hoopwright.finding.FindingCode;

/** What the rules of one group say: a fault of ours. */
final class FaultTexts {

  static final RuleBook.Group GROUP =
      new RuleBook.Group(
          "A fault of ours",
          List.of(
              RuleText.of(FindingCode.RULE_CRASHED)
                  .says(
                      "One rule failed on this layout; all others were asked. Please report it with the layout.")));

  private FaultTexts() {}
}
