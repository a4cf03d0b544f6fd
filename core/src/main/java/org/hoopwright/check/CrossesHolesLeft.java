package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleId;

/** Free holes that no string takes. */
final class CrossesHolesLeft extends Rule {

  CrossesHolesLeft() {
    super(FindingCode.CROSSES_HOLES_LEFT, Stage.BED);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    List<HoleId> over =
        facts.emptyHoles().stream().filter(h -> !facts.ring().isBlocked(h)).toList();
    if (!over.isEmpty()) {
      out.accept(
          finding()
              .message(
                  over.size() == 1
                      ? "Hole %s is left over: no main and no cross takes it."
                          .formatted(over.get(0))
                      : "Holes %s are left over: no main and no cross takes them."
                          .formatted(Say.some(over)))
              .at("/crosses", facts.layout().places())
              .about(over)
              .fact("holes", over.size())
              .fix(
                  "Check crosses.count and mains.skip; name holes that stay empty under crosses.skip.")
              .build());
    }
  }
}
