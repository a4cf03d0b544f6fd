package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Findings;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoopOutline;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.LayoutPointers;
import org.hoopwright.frame.Limits;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Side;

/**
 * The assignment that a layout's skip rules state.
 *
 * <p>Main k of a side takes, at each end, the k-th hole from the axis that {@code mains.skip} does
 * not name. Crosses take the free holes (without a main, not in {@code crosses.skip}, not blocked)
 * in list order, from {@code crosses.first} on. If these are too few, just as many shared holes
 * carry a cross beside their main as are needed; which ones is chosen at the least cost: skew of
 * crosses and unevenness of their spacing, or the distance from their measured heights. A choice is
 * a warning that names the runner-up; it is exact, or the warning says that the search ended at its
 * limit. A stated {@code crosses.last} narrows the choice, and is checked. If the free holes are
 * too many the rest stay empty. Each side is read on its own.
 */
public final class StatedAssignment {

  private final Layout layout;
  private final Ring ring;
  private final HoopOutline hoop;
  private final List<Finding> findings = new ArrayList<>();

  private StatedAssignment(Layout layout) {
    this.layout = layout;
    this.ring = Ring.of(layout);
    this.hoop = HoopOutline.of(layout);
  }

  /**
   * Works out the bed. Never throws: what stands in the way is a finding.
   *
   * <p>Of the layout itself it asks for sound counts ({@link Limits#countsSound}), a hoop with an
   * outline, and a first cross that each side can have; without them there is no bed. These and all
   * other faults of the layout itself are for the rules on layouts to report: {@code
   * Hoopwright.assign} does both, and gives no bed of a layout with errors.
   *
   * @return the bed, and the assignment's own findings; no bed when one of them is an error
   */
  public static Assignment assign(Layout layout) {
    return new StatedAssignment(layout).run();
  }

  private Assignment run() {
    Optional<Bed> bed = Optional.empty();
    if (Limits.countsSound(layout)) {
      if (layout.mainsSkip().isPresent()) {
        bed = work(new StatedRules(layout, ring, layout.mainsSkip().get()));
      } else {
        skipMissing();
      }
    }
    List<Finding> sorted = Findings.sorted(findings);
    return new Assignment(Findings.hasErrors(sorted) ? Optional.empty() : bed, sorted);
  }

  private void skipMissing() {
    findings.add(
        Finding.of(FindingCode.MAINS_SKIP_MISSING)
            .at("/mains/skip", layout.places())
            .fix(
                "Name the holes that the mains leave out under mains.skip ([] for none), or have them read off the holes.")
            .build());
  }

  private Optional<Bed> work(StatedRules rules) {
    boolean mainsFit = checkMains(rules);
    if (!mainsFit) {
      return Optional.empty(); // which holes are left for crosses is not known
    }
    StatedCrosses left = new StatedCrosses(rules, Side.LEFT);
    StatedCrosses right = new StatedCrosses(rules, Side.RIGHT);
    findings.addAll(left.findings());
    findings.addAll(right.findings());
    if (left.items().isEmpty() || right.items().isEmpty()) {
      return Optional.empty();
    }
    return choose(rules, left.items().get(), right.items().get());
  }

  private boolean checkMains(StatedRules rules) {
    boolean fit = true;
    for (Side side : Side.values()) {
      for (End end : End.values()) {
        List<HoleId> holes = rules.mainHoles(side, end);
        if (holes.size() < layout.mainsPerSide()) {
          fit = false;
          findings.add(
              Finding.of(FindingCode.MAINS_NO_HOLE)
                  .message(
                      "The %s mains of the %s side find only %s holes at the %s."
                          .formatted(
                              layout.mainsPerSide(), Words.of(side), holes.size(), end.word()))
                  .at("/mains/count", layout.places())
                  .fact("mains", layout.mainsPerSide())
                  .fact("holes", holes.size())
                  .fix("Check mains.count, mains.skip and the counts of holes.")
                  .build());
        }
        for (int k = 1; k <= holes.size(); k++) {
          if (ring.isBlocked(holes.get(k - 1))) {
            findings.add(mainBlocked(SpanId.main(side, k), holes.get(k - 1)));
          }
        }
      }
    }
    return fit;
  }

  private Finding mainBlocked(SpanId main, HoleId hole) {
    return Finding.of(FindingCode.MAIN_HOLE_BLOCKED)
        .message("Main %s needs hole %s, which is blocked.".formatted(main, hole))
        .at(LayoutPointers.entry("/holes/blocked", layout.blocked(), hole), layout.places())
        .about(hole, main)
        .fix(
            "Have a detour worked out, or state one: name the hole under mains.skip and a neighbour that can take two strings under holes.shared.")
        .build();
  }

  private Optional<Bed> choose(StatedRules rules, CrossItems left, CrossItems right) {
    HolePositions before = HolePositions.of(layout, ring, labels(rules, Set.of()), hoop);
    if (before.points().isEmpty()) {
      return Optional.empty(); // the hoop has no outline, which a rule on layouts reports
    }
    SharedChoice choice =
        SharedChoice.of(side(left, before, Side.LEFT), side(right, before, Side.RIGHT));
    List<HoleId> leftHoles = left.holes(choice.of(Side.LEFT));
    List<HoleId> rightHoles = right.holes(choice.of(Side.RIGHT));
    new SharedReport(layout, left, right, choice).finding().ifPresent(findings::add);
    Set<HoleId> crosses = new HashSet<>(leftHoles);
    crosses.addAll(rightHoles);
    Labels labels = labels(rules, crosses);
    StatedCrosses.last(rules, Side.LEFT, leftHoles.get(leftHoles.size() - 1))
        .ifPresent(findings::add);
    StatedCrosses.last(rules, Side.RIGHT, rightHoles.get(rightHoles.size() - 1))
        .ifPresent(findings::add);
    findings.addAll(Capacity.findings(layout, ring, labels));
    HolePositions positions =
        layout.crossesOffsets().isEmpty()
            ? before // where crosses are is known without knowing which holes are theirs
            : HolePositions.of(layout, ring, labels, hoop);
    findings.addAll(positions.findings());
    if (Findings.hasErrors(findings)) {
      return Optional.empty();
    }
    return Optional.of(Bed.of(layout, labels, positions.points()));
  }

  private ChoiceSide side(CrossItems items, HolePositions positions, Side side) {
    List<Double> measured = layout.crossesOffsets().map(o -> o.of(side).below()).orElse(List.of());
    double top = hoop.outline().map(o -> o.headAxisPoint().y()).orElse(0.0);
    return new ChoiceSide(
        items,
        positions.points(),
        measured.size() == items.crosses()
            ? measured.stream().map(d -> top - layout.mm(d)).toList()
            : List.of());
  }

  private Labels labels(StatedRules rules, Set<HoleId> crosses) {
    return new Labels(
        /* left= */ labels(rules, crosses, Side.LEFT),
        /* right= */ labels(rules, crosses, Side.RIGHT));
  }

  private List<HoleLabel> labels(StatedRules rules, Set<HoleId> crosses, Side side) {
    return ring.list(side).stream()
        .map(h -> HoleLabel.of(rules.carriesMain(h), crosses.contains(h)))
        .toList();
  }
}
