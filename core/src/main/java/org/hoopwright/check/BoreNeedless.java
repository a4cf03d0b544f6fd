package org.hoopwright.check;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.PatchStep;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;

/** A stated bore that is what it would be anyway. */
final class BoreNeedless extends Rule {

  BoreNeedless() {
    super(FindingCode.BORE_NEEDLESS, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/holes/head", "/holes/throat", "/holes/shared", "/holes/tieOff");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    for (Map.Entry<HoleRef, Integer> bore : facts.layout().bore().entrySet()) {
      List<HoleId> holes = bore.getKey().holes();
      boolean usual =
          holes.stream()
              .filter(facts.ring()::has)
              .allMatch(
                  h ->
                      bore.getValue()
                          == (facts.ring().isShared(h) || facts.ring().isTieOff(h) ? 2 : 1));
      if (usual && holes.stream().anyMatch(facts.ring()::has)) {
        String pointer = "/holes/bore/" + bore.getKey();
        out.accept(
            finding()
                .message(
                    "The bore of %s, %s, is what it would be anyway."
                        .formatted(bore.getKey(), bore.getValue()))
                .at(pointer, facts.layout().places())
                .about(holes)
                .fact("bore", bore.getValue())
                .fix("Leave it out.")
                .patch(PatchStep.remove(pointer))
                .build());
      }
    }
  }
}
