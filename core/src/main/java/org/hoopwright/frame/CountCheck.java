package org.hoopwright.frame;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.geometry.Side;

/** Checks the counts of holes, mains and crosses. */
final class CountCheck {

  /** The fewest mains: two a side. */
  static final int MIN_MAINS = 4;

  /** The fewest crosses. */
  static final int MIN_CROSSES = 2;

  /** The most mains or crosses: a side has no more holes for them. */
  static final int MAX_STRINGS = 2 * HoleId.MAX_NUMBER;

  private CountCheck() {}

  static List<Finding> findings(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    holes(layout, End.HEAD, layout.headHoles(), findings);
    holes(layout, End.THROAT, layout.throatHoles(), findings);
    int mains = layout.mainsCount();
    if (mains % 2 != 0) {
      findings.add(
          Finding.of(FindingCode.MAINS_ODD)
              .message("The number of mains (%s) is odd, which is not supported.".formatted(mains))
              .at("/mains/count", layout.places())
              .fix("Check the count; frames with a main on the long axis cannot be planned.")
              .build());
    }
    if (mains < MIN_MAINS) {
      findings.add(
          Finding.of(FindingCode.MAINS_TOO_FEW)
              .message(
                  "The number of mains (%s) is below %s, the fewest.".formatted(mains, MIN_MAINS))
              .at("/mains/count", layout.places())
              .fix("State all mains, those of both sides together.")
              .build());
    }
    tooMany(layout, "mains", mains, findings);
    int crosses = layout.crossesCount();
    if (crosses < MIN_CROSSES) {
      findings.add(
          Finding.of(FindingCode.CROSSES_TOO_FEW)
              .message(
                  "The number of crosses (%s) is below %s, the fewest."
                      .formatted(crosses, MIN_CROSSES))
              .at("/crosses/count", layout.places())
              .fix("State all crosses.")
              .build());
    }
    tooMany(layout, "crosses", crosses, findings);
    return findings;
  }

  private static void tooMany(Layout layout, String what, int count, List<Finding> findings) {
    if (count > MAX_STRINGS) {
      findings.add(
          Finding.of(FindingCode.NUMBER_RANGE)
              .message(
                  "The number of %s (%s) is above %s, the most."
                      .formatted(what, count, MAX_STRINGS))
              .at("/" + what + "/count", layout.places())
              .fix("Check the count.")
              .build());
    }
  }

  private static void holes(
      Layout layout, End end, EachSide<Integer> counts, List<Finding> findings) {
    String pointer = "/holes/" + end.word();
    for (Side side : Side.values()) {
      int count = counts.of(side);
      if (count >= 1 && count <= HoleId.MAX_NUMBER) {
        continue;
      }
      String own = pointer + (side == Side.LEFT ? "/left" : "/right");
      boolean alike = counts.same() && !layout.places().knows(own);
      if (alike && side == Side.RIGHT) {
        continue; // said with the left side
      }
      findings.add(
          Finding.of(FindingCode.NUMBER_RANGE)
              .message(
                  "The number of holes at the %s%s (%s) is not from 1 to %s."
                      .formatted(
                          end.word(),
                          alike ? "" : side == Side.LEFT ? " on the left" : " on the right",
                          count,
                          HoleId.MAX_NUMBER))
              .at(alike ? pointer : own, layout.places())
              .fix("Count the holes of each side from the long axis outwards.")
              .build());
    }
  }
}
