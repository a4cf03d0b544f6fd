package org.hoopwright.check;

import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;

/** Even the best route has many passes through covered holes. */
final class RouteHard extends Rule {

  RouteHard() {
    super(FindingCode.ROUTE_HARD, Stage.ROUTE);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    int covered = facts.route().measures().covered();
    int most = (int) Math.ceil(Threshold.COVERED_SHARE.value() * facts.bed().spans().size());
    if (covered > most) {
      out.accept(
          finding()
              .message(
                  "Even in the best route %s of %s passes meet a covered hole."
                      .formatted(covered, facts.bed().spans().size()))
              .at("/holes", facts.layout().places())
              .fact("covered", covered)
              .fact("passes", facts.bed().spans().size())
              .fix(
                  "Check mains.skip and the holes named shared; an awl and scraps of string will be needed.")
              .build());
    }
  }
}
