package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;

/** A pair of holes of which one is not on its own side. */
final class PairOnWrongSide extends Rule {

  private final String list;

  /**
   * For one of the pairs.
   *
   * @param list where it stands, such as {@code /crosses/first}
   */
  PairOnWrongSide(FindingCode code, String list) {
    super(code, Stage.LAYOUT);
    this.list = list;
  }

  @Override
  List<String> needs() {
    return List.of(list);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    for (NamedHoles.Pair pair : NamedHoles.pairs(facts.layout())) {
      if (!pair.list().equals(list)) {
        continue;
      }
      for (Side side : Side.values()) {
        HoleId hole = pair.stated().of(side);
        if (hole.side() != side) {
          out.accept(
              finding()
                  .message(
                      "Hole %s stands where a hole of the %s side must."
                          .formatted(hole, Say.of(side)))
                  .at(pair.pointer(facts.layout(), side), facts.layout().places())
                  .about(hole)
                  .fix("Name the left hole first and then the right one, or one name for both.")
                  .build());
        }
      }
    }
  }
}
