package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Limits;

/** A length or width of the frame that is no size. */
final class FrameSizeRange extends Rule {

  FrameSizeRange() {
    super(FindingCode.NUMBER_RANGE, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/units", "/frame");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    facts
        .layout()
        .frame()
        .ifPresent(
            f -> {
              size(facts, "length", f.length(), out);
              size(facts, "width", f.width(), out);
            });
  }

  private void size(Facts facts, String name, double stated, Consumer<Finding> out) {
    if (!Limits.isLength(facts.layout().mm(stated))) {
      out.accept(
          finding()
              .message(
                  "The frame's %s (%s) is not above 0 and at most 10 m.".formatted(name, stated))
              .at("/frame/" + name, facts.layout().places())
              .fact(name, facts.layout().mm(stated), "mm")
              .fix("Check the number and the unit.")
              .build());
    }
  }
}
