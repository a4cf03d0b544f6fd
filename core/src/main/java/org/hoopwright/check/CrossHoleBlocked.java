package org.hoopwright.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutPointers;

/** Blocked holes that the crosses pass by. */
final class CrossHoleBlocked extends Rule {

  CrossHoleBlocked() {
    super(FindingCode.CROSS_HOLE_BLOCKED, Stage.BED);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    Layout layout = facts.layout();
    Map<String, List<HoleId>> passed = new LinkedHashMap<>();
    for (HoleId hole : facts.emptyHoles()) {
      boolean fromFirst =
          layout
              .crossesFirst()
              .map(f -> facts.ring().place(f.of(hole.side())) <= facts.ring().place(hole))
              .orElse(true);
      if (facts.ring().isBlocked(hole) && fromFirst) {
        passed
            .computeIfAbsent(
                LayoutPointers.entry("/holes/blocked", layout.blocked(), hole),
                p -> new ArrayList<>())
            .add(hole);
      }
    }
    passed.forEach(
        (pointer, holes) ->
            out.accept(
                finding()
                    .message(
                        "The crosses pass by %s, which %s blocked."
                            .formatted(
                                (holes.size() == 1 ? "hole " : "holes ") + Say.some(holes),
                                holes.size() == 1 ? "is" : "are"))
                    .at(pointer, layout.places())
                    .about(holes)
                    .fact("holes", holes.size())
                    .build()));
  }
}
