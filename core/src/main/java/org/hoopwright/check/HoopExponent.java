package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Hoop;

/** A superellipse far from the shape of a hoop. */
final class HoopExponent extends Rule {

  HoopExponent() {
    super(FindingCode.HOOP_EXPONENT, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/hoop");
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.HOOP_SHAPE);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    if (facts.layout().hoop() instanceof Hoop.Superellipse s
        && (s.exponent() < Threshold.EXPONENT_LEAST.value()
            || s.exponent() > Threshold.EXPONENT_MOST.value())) {
      out.accept(
          finding()
              .message(
                  "An exponent of %s makes the hoop %s."
                      .formatted(
                          Say.number(s.exponent()),
                          s.exponent() < 2 ? "pointed" : "nearly a rectangle"))
              .at("/hoop/exponent", facts.layout().places())
              .fact("exponent", s.exponent(), "")
              .fix("An ellipse has 2; hoops with fuller shoulders have up to 3.")
              .build());
    }
  }
}
