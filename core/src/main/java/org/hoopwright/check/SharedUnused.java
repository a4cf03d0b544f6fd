package org.hoopwright.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.LayoutPointers;
import org.hoopwright.geometry.Side;

/** Shared holes that carry one string only. */
final class SharedUnused extends Rule {

  SharedUnused() {
    super(FindingCode.SHARED_UNUSED, Stage.BED);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    Map<String, List<HoleId>> unused = new LinkedHashMap<>();
    for (Side side : Side.values()) {
      for (HoleId hole : facts.ring().list(side)) {
        if (facts.ring().isShared(hole)
            && !facts.ring().isBlocked(hole)
            && facts.bed().spansAt(hole).size() < 2) {
          unused
              .computeIfAbsent(
                  LayoutPointers.entry("/holes/shared", facts.layout().shared(), hole),
                  p -> new ArrayList<>())
              .add(hole);
        }
      }
    }
    unused.forEach(
        (pointer, holes) ->
            out.accept(
                finding()
                    .message(
                        "Shared %s %s fewer than two strings."
                            .formatted(
                                (holes.size() == 1 ? "hole " : "holes ") + Say.some(holes),
                                holes.size() == 1 ? "carries" : "carry"))
                    .at(pointer, facts.layout().places())
                    .about(holes)
                    .fact("holes", holes.size())
                    .build()));
  }
}
