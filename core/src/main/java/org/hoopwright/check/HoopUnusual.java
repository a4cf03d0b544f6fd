package org.hoopwright.check;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Hoop;
import org.hoopwright.geometry.Outline;

/** A hoop of a size that the game does not know. */
final class HoopUnusual extends Rule {

  HoopUnusual() {
    super(FindingCode.HOOP_UNUSUAL, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/units", "/hoop", "/game");
  }

  @Override
  List<FindingCode> after() {
    return List.of(FindingCode.HOOP_SHAPE);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    Optional<Usual> usual = Usual.of(facts.layout().game());
    if (usual.isEmpty() || facts.outline().isEmpty()) {
      return;
    }
    Outline o = facts.outline().get();
    size(facts, "length", o.lengthMm(), usual.get().hoopLength(), out);
    size(facts, "width", o.widthMm(), usual.get().hoopWidth(), out);
  }

  private void size(Facts facts, String name, double mm, Usual.Range range, Consumer<Finding> out) {
    if (mm < range.least() || mm > range.most()) {
      String own = facts.layout().hoop() instanceof Hoop.Points ? "points" : name;
      out.accept(
          finding()
              .message(
                  "The hoop's inside %s (%s mm) is not from %s to %s mm, as in %s."
                      .formatted(
                          name,
                          Say.mm(mm),
                          Say.number(range.least()),
                          Say.number(range.most()),
                          facts.layout().game().word()))
              .at("/hoop/" + own, facts.layout().places())
              .fact(name, mm, "mm")
              .fix("Check the number, the unit under units, and the game.")
              .build());
    }
  }
}
