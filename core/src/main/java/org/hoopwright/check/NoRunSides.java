package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.NoRun;

/** A forbidden stretch that does not join two different holes of a side. */
final class NoRunSides extends Rule {

  NoRunSides() {
    super(FindingCode.NO_RUN_SIDES, Stage.LAYOUT);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    List<NoRun> stretches = facts.layout().noRun();
    for (int i = 0; i < stretches.size(); i++) {
      NoRun no = stretches.get(i);
      String why = wrong(no);
      if (!why.isEmpty()) {
        out.accept(
            finding()
                .message(
                    "The ends of the forbidden stretch, %s and %s, %s."
                        .formatted(no.from(), no.to(), why))
                .at("/holes/noRun/" + i, facts.layout().places())
                .about(no.from(), no.to())
                .fix(
                    "Name two different holes of one side, such as L5T and L6T, or 5T and 6T for both sides.")
                .build());
      }
    }
  }

  private static String wrong(NoRun no) {
    if (!no.from().side().equals(no.to().side())) {
      return no.from().side().isPresent() && no.to().side().isPresent()
          ? "are not on one side"
          : "must both have a side or both have none";
    }
    return no.from().equals(no.to()) ? "are one and the same hole" : "";
  }
}
