package org.hoopwright.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.PatchStep;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;

/** A hole that is named twice in one list. */
final class HoleTwice extends Rule {

  HoleTwice() {
    super(FindingCode.HOLE_TWICE, Stage.LAYOUT);
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    for (NamedHoles list : NamedHoles.lists(facts.layout())) {
      Set<HoleId> seen = new HashSet<>();
      for (NamedHoles.Entry entry : list.entries()) {
        List<HoleId> again = again(entry.ref(), seen);
        if (!again.isEmpty()) {
          out.accept(
              finding()
                  .message(
                      "%s %s already named before in the same list; %s."
                          .formatted(
                              Say.holes(again),
                              again.size() == 1 ? "is" : "are",
                              list.table() ? "the last value counts" : "once is enough"))
                  .at(entry.pointer(), facts.layout().places())
                  .about(again)
                  .fix("Leave one of the names out.")
                  .patch(
                      again.size() == entry.ref().holes().size()
                          ? List.of(PatchStep.remove(entry.pointer()))
                          : List.of())
                  .build());
        }
      }
    }
  }

  private static List<HoleId> again(HoleRef ref, Set<HoleId> seen) {
    List<HoleId> again = List.of();
    for (HoleId hole : ref.holes()) {
      if (!seen.add(hole)) {
        again = again.isEmpty() ? List.of(hole) : List.of(again.get(0), hole); // two at most
      }
    }
    return again;
  }
}
