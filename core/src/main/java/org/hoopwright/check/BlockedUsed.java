package org.hoopwright.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Layout;

/** A blocked hole of which something else is said that it can no longer do. */
final class BlockedUsed extends Rule {

  BlockedUsed() {
    super(FindingCode.BLOCKED_USED, Stage.LAYOUT);
  }

  @Override
  List<String> needs() {
    return List.of("/holes/head", "/holes/throat", "/holes/blocked");
  }

  @Override
  void look(Facts facts, Consumer<Finding> out) {
    Layout layout = facts.layout();
    Map<String, List<HoleRef>> lists = new LinkedHashMap<>();
    lists.put("/holes/tieOff", layout.tieOff());
    lists.put("/holes/shared", layout.shared());
    lists.forEach(
        (list, refs) -> {
          for (int i = 0; i < refs.size(); i++) {
            List<HoleId> blocked =
                refs.get(i).holes().stream().filter(facts.ring()::isBlocked).toList();
            if (!blocked.isEmpty()) {
              out.accept(
                  finding()
                      .message(
                          "%s blocked, so %s no %s hole."
                              .formatted(
                                  Say.holes(blocked) + (blocked.size() == 1 ? " is" : " are"),
                                  blocked.size() == 1 ? "it is" : "they are",
                                  list.endsWith("tieOff") ? "tie-off" : "shared"))
                      .at(list + "/" + i, layout.places())
                      .about(blocked)
                      .fix("Take the hole out of one of the two lists.")
                      .build());
            }
          }
        });
  }
}
