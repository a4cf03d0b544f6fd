package org.hoopwright.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;

/** A tie-off hole whose passes leave no room for a knot. */
final class TieOffFull extends Rule {

  TieOffFull() {
    super(FindingCode.TIE_OFF_FULL, Stage.BED);
  }

  @Override
  List<String> needs() {
    return List.of("/holes/tieOff", "/holes/bore");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    perEntry(
            facts,
            hole ->
                facts.bed().spansAt(hole).size() > 0
                    && facts.bed().spansAt(hole).size() + 1 > facts.ring().bore(hole))
        .forEach(
            (pointer, holes) ->
                out.accept(
                    finding()
                        .message(
                            "%s no room for a knot: the strings that run through fill the bore."
                                .formatted(
                                    Say.holes(holes) + (holes.size() == 1 ? " has" : " have")))
                        .at(pointer, facts.layout().places())
                        .about(holes)
                        .fix(
                            "State a greater bore under holes.bore if the hole has it, or take it out of holes.tieOff.")
                        .build()));
  }

  /** Tie-off holes of which something is true, by the entry that names them. */
  static Map<String, List<HoleId>> perEntry(Facts facts, Predicate<HoleId> test) {
    Map<String, List<HoleId>> found = new LinkedHashMap<>();
    List<HoleRef> refs = facts.layout().tieOff();
    for (int i = 0; i < refs.size(); i++) {
      List<HoleId> holes =
          refs.get(i).holes().stream()
              .filter(facts.ring()::has)
              .filter(h -> !facts.ring().isBlocked(h))
              .filter(test)
              .toList();
      if (!holes.isEmpty()) {
        found.put("/holes/tieOff/" + i, holes);
      }
    }
    return found;
  }
}
