package org.hoopwright.check;

import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;

/** Even the best route lays many runs over others. */
final class RouteDoubled extends Rule {

  RouteDoubled() {
    super(FindingCode.ROUTE_DOUBLED, Stage.ROUTE);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    int doubled = facts.route().measures().doubled();
    int most = (int) Math.ceil(Threshold.DOUBLED_SHARE.value() * facts.bed().spans().size());
    if (doubled > most) {
      out.accept(
          finding()
              .message(
                  "Even in the best route %s of %s runs lie over another."
                      .formatted(doubled, facts.bed().spans().size()))
              .at("/holes", facts.layout().places())
              .fact("doubled", doubled)
              .fact("runs", facts.bed().spans().size())
              .fix("Check that the frame has room for two strings side by side there.")
              .build());
    }
  }
}
