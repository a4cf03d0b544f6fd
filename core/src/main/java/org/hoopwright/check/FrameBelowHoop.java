package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Limits;

/** A frame that is smaller than the inside of its hoop. */
final class FrameBelowHoop extends Rule {

  FrameBelowHoop() {
    super(FindingCode.FRAME_BELOW_HOOP, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/units", "/hoop", "/frame");
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.HOOP_SHAPE);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    if (facts.layout().frame().isEmpty() || facts.outline().isEmpty()) {
      return;
    }
    double length = facts.layout().mm(facts.layout().frame().get().length());
    double width = facts.layout().mm(facts.layout().frame().get().width());
    if (Limits.isLength(length) && Limits.isLength(width)) {
      below(facts, "length", length, facts.outline().get().lengthMm(), out);
      below(facts, "width", width, facts.outline().get().widthMm(), out);
    }
  }

  private void below(Facts facts, String name, double frame, double hoop, Consumer<Finding> out) {
    if (frame < hoop) {
      out.accept(
          finding()
              .message(
                  "The frame's %s (%s mm) is less than the hoop's inside %s (%s mm)."
                      .formatted(name, Say.mm(frame), name, Say.mm(hoop)))
              .at("/frame/" + name, facts.layout().places())
              .fact("frame", frame, "mm")
              .fact("hoop", hoop, "mm")
              .fix("Check both numbers and the unit.")
              .build());
    }
  }
}
