package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.geometry.Side;

/** The two sides count different numbers of holes. */
final class HolesUneven extends Rule {

  HolesUneven() {
    super(FindingCode.HOLES_UNEVEN, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/holes/head", "/holes/throat");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    int left = facts.ring().size(Side.LEFT);
    int right = facts.ring().size(Side.RIGHT);
    if (left != right) {
      out.accept(
          finding()
              .message("The left side has %s holes and the right side %s.".formatted(left, right))
              .at("/holes", facts.layout().places())
              .fact("left", left)
              .fact("right", right)
              .build());
    }
  }
}
