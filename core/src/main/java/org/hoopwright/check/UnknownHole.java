package org.hoopwright.check;

import java.util.List;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;

/** A name of a hole that the counts do not have. */
final class UnknownHole extends Rule {

  UnknownHole() {
    super(FindingCode.UNKNOWN_HOLE, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/holes/head", "/holes/throat");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    for (NamedHoles list : NamedHoles.lists(facts.layout())) {
      for (NamedHoles.Entry entry : list.entries()) {
        if (!facts.ring().hasAll(entry.ref().holes())) {
          unknown(facts, entry.pointer(), entry.ref().holes(), out);
        }
      }
    }
    for (NamedHoles.Pair pair : NamedHoles.pairs(facts.layout())) {
      if (pair.alike() && pair.holes().stream().noneMatch(facts.ring()::has)) {
        unknown(facts, pair.pointer(facts.layout(), Side.LEFT), pair.holes(), out);
      } else {
        for (Side side : Side.values()) {
          unknown(facts, pair.pointer(facts.layout(), side), List.of(pair.stated().of(side)), out);
        }
      }
    }
  }

  private void unknown(Facts facts, String pointer, List<HoleId> named, Consumer<Finding> out) {
    List<HoleId> missing = named.stream().filter(h -> !facts.ring().has(h)).toList();
    if (missing.isEmpty()) {
      return;
    }
    HoleId one = missing.get(0);
    int count =
        (one.end() == End.HEAD ? facts.layout().headHoles() : facts.layout().throatHoles())
            .of(one.side());
    out.accept(
        finding()
            .message(
                "%s %s not exist: %s %s counted at the %s."
                    .formatted(
                        Say.holes(missing),
                        missing.size() == 1 ? "does" : "do",
                        count,
                        count == 1 ? "is" : "are",
                        one.end().word()))
            .at(pointer, facts.layout().places())
            .about(missing)
            .fact("counted", count)
            .fix("Check the name and the counts under holes.head and holes.throat.")
            .build());
  }
}
