package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoopOutline;

/** Numbers that make no closed outline round the long axis. */
final class HoopShape extends Rule {

  HoopShape() {
    super(FindingCode.HOOP_SHAPE, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/units", "/hoop");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    for (HoopOutline.Misfit misfit : facts.hoop().misfits()) {
      String text = misfit.flaw().message();
      int cut = text.indexOf("; "); // the rule, and then what to do
      Finding.Builder finding =
          finding()
              .message(cut < 0 ? text : text.substring(0, cut) + ".")
              .at(misfit.pointer(), facts.layout().places())
              .fix(cut < 0 ? "" : Say.capitalised(text.substring(cut + 2)));
      misfit.values().forEach((name, value) -> finding.fact(name, value, unit(name)));
      out.accept(finding.build());
    }
  }

  private static String unit(String name) {
    return name.equals("exponent") || name.equals("points") ? "" : "mm";
  }
}
