package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutPointers;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Side;

/** Compares what labels lay through each hole with what the hole takes. */
final class Capacity {

  private Capacity() {}

  /**
   * {@code bore-too-small} for each hole with more passes than it takes, but for blocked ones,
   * which have findings of their own.
   */
  static List<Finding> findings(Layout layout, Ring ring, Labels labels) {
    List<Finding> findings = new ArrayList<>();
    for (Side side : Side.values()) {
      for (HoleId hole : ring.list(side)) {
        int passes = labels.of(side).get(ring.place(hole)).passes();
        if (!ring.isBlocked(hole) && passes > ring.passLimit(hole)) {
          findings.add(tooSmall(layout, ring, hole, passes));
        }
      }
    }
    return findings;
  }

  private static Finding tooSmall(Layout layout, Ring ring, HoleId hole, int passes) {
    return Finding.of(FindingCode.BORE_TOO_SMALL)
        .message(
            "Hole %s must take %s %s, but its bore is %s."
                .formatted(hole, passes, passes == 1 ? "string" : "strings", ring.bore(hole)))
        .at(LayoutPointers.member("/holes/bore", layout.bore().keySet(), hole), layout.places())
        .about(hole)
        .fact("needed", passes)
        .fact("bore", ring.bore(hole))
        .fix("Check the bore, or name the hole under mains.skip or crosses.skip.")
        .build();
  }
}
