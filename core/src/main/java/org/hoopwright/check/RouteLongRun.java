package org.hoopwright.check;

import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;

/** Even the best route has a run as long as the limit. */
final class RouteLongRun extends Rule {

  RouteLongRun() {
    super(FindingCode.ROUTE_LONG_RUN, Stage.ROUTE);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    int longest = facts.route().measures().longestRun();
    int limit = facts.route().runLimit();
    if (longest >= limit) {
      out.accept(
          finding()
              .message(
                  "The best route has a run over %s places, the most that the limit of %s allows."
                      .formatted(longest, limit))
              .at("/holes", facts.layout().places())
              .fact("places", longest)
              .fact("limit", limit)
              .fix(
                  "Check whether the frame has a groove for it; if not, name the stretch under holes.noRun.")
              .build());
    }
  }
}
