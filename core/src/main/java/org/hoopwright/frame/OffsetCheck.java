package org.hoopwright.frame;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.geometry.Side;

/** Checks measured offsets: their number, their range and that they grow. */
final class OffsetCheck {

  private final Layout layout;
  private final List<Finding> findings = new ArrayList<>();
  private final Set<String> checked = new HashSet<>(); // one list may stand for both sides and ends

  private OffsetCheck(Layout layout) {
    this.layout = layout;
  }

  static List<Finding> findings(Layout layout) {
    OffsetCheck check = new OffsetCheck(layout);
    check.run();
    return check.findings;
  }

  private void run() {
    if (layout.mainsSkip().isEmpty()) {
      layout.mainsOffsets().ifPresent(o -> withoutSkip("/mains/offsets"));
      layout.crossesOffsets().ifPresent(o -> withoutSkip("/crosses/offsets"));
    }
    for (Side side : Side.values()) {
      layout
          .mainsOffsets()
          .ifPresent(
              o -> {
                for (End end : End.values()) {
                  list(
                      "main",
                      LayoutPointers.mainOffsets(layout, side, end),
                      o.of(side).at(end),
                      layout.mainsPerSide());
                }
              });
      layout
          .crossesOffsets()
          .ifPresent(
              o ->
                  list(
                      "cross",
                      LayoutPointers.crossOffsets(layout, side),
                      o.of(side).below(),
                      layout.crossesCount()));
    }
  }

  private void withoutSkip(String pointer) {
    findings.add(
        Finding.of(FindingCode.OFFSETS_WITHOUT_SKIP)
            .message("Offsets say where strings are, so it must be stated which holes they use.")
            .at(pointer, layout.places())
            .fix("State mains.skip, or give coordinates of holes under holes.at instead.")
            .build());
  }

  private void list(String what, String pointer, List<Double> offsets, int count) {
    if (!checked.add(pointer)) {
      return;
    }
    if (offsets.size() != count) {
      findings.add(
          Finding.of(FindingCode.OFFSETS_COUNT)
              .message(
                  what.equals("main")
                      ? "There are %s offsets for the %s mains of a side."
                          .formatted(offsets.size(), count)
                      : "There are %s offsets for %s crosses.".formatted(offsets.size(), count))
              .at(pointer, layout.places())
              .fix("Give one offset for each, in order.")
              .build());
    }
    for (int i = 0; i < offsets.size(); i++) {
      double mm = layout.mm(offsets.get(i));
      if (!(mm > 0 && mm <= HoleValueCheck.MAX_COORDINATE_MM)) {
        findings.add(
            Finding.of(FindingCode.NUMBER_RANGE)
                .message(
                    "The offset of %s %s (%s) is not above 0 and at most 10 m."
                        .formatted(what, i + 1, offsets.get(i)))
                .at(pointer + "/" + i, layout.places())
                .fix("Check the number and the unit.")
                .build());
      } else if (i > 0 && offsets.get(i) <= offsets.get(i - 1)) {
        findings.add(
            Finding.of(FindingCode.OFFSETS_ORDER)
                .message(
                    "The offset of %s %s (%s) is not greater than that of %s %s (%s)."
                        .formatted(what, i + 1, offsets.get(i), what, i, offsets.get(i - 1)))
                .at(pointer + "/" + i, layout.places())
                .fix(
                    what.equals("main")
                        ? "List the distances from the long axis outwards."
                        : "List the distances from the head down.")
                .build());
      }
    }
  }
}
