package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;

/** Says which shared holes were chosen to carry two, what else there was, and by how much. */
final class SharedReport {

  private final Layout layout;
  private final CrossItems left;
  private final CrossItems right;
  private final SharedChoice choice;

  SharedReport(Layout layout, CrossItems left, CrossItems right, SharedChoice choice) {
    this.layout = layout;
    this.left = left;
    this.right = right;
    this.choice = choice;
  }

  /** The warning; empty when there was no choice. */
  Optional<Finding> finding() {
    if (choice.second().isEmpty()) {
      return Optional.empty();
    }
    List<HoleId> taken = shared(choice.picks());
    List<HoleId> other = shared(choice.second().get());
    List<HoleId> all = new ArrayList<>(left.optional());
    all.addAll(right.optional());
    boolean measured = layout.crossesOffsets().isPresent();
    // Below the last digit shown a difference is no reason to prefer one.
    boolean tie = choice.gain() < 0.05;
    String message =
        "Of the shared holes %s the crosses need %s, and %s %s taken; %s would %s."
            .formatted(
                Words.some(all),
                taken.size(),
                Words.some(taken),
                taken.size() == 1 ? "was" : "were",
                Words.some(other),
                tie
                    ? "do as well"
                    : (measured
                            ? "lie %s mm farther from the measured heights"
                            : "cost %s mm more in skew and spacing")
                        .formatted(Words.mm(choice.gain())));
    if (!choice.proven()) {
      message += " The search for a better choice ended at its limit.";
    }
    return Optional.of(
        Finding.of(FindingCode.SHARED_CHOICE)
            .message(message)
            .at("/holes/shared", layout.places())
            .about(taken)
            .about(all.stream().filter(h -> !taken.contains(h)).toList())
            .fact("needed", taken.size())
            .fact("gain", choice.gain(), "mm")
            .fix("Leave only the holes that carry two strings under holes.shared.")
            .build());
  }

  private List<HoleId> shared(EachSide<int[]> picks) {
    List<HoleId> holes = new ArrayList<>();
    for (Side side : Side.values()) {
      CrossItems items = side == Side.LEFT ? left : right;
      for (int i : picks.of(side)) {
        if (!items.items().get(i).must()) {
          holes.add(items.items().get(i).hole());
        }
      }
    }
    return holes;
  }
}
