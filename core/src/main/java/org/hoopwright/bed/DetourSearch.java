package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.frame.EachSide;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;

/**
 * The patterns nearest to a stated one that leave its blocked holes out.
 *
 * <p>The stated pattern is what the skip rules give when nothing is blocked. A side without a
 * blocked hole keeps its labels; on the others strings may move, holes may become shared, and holes
 * may stay empty, each at its cost ({@link LabelWeights#DETOUR}). A hole may take two strings when
 * the layout says so or its bore is 2 or more; else, if no bore is stated, it is doubtful: dearer,
 * and its bore must be looked at.
 */
public final class DetourSearch {

  /** Patterns that are given at most. */
  public static final int MOST = 12;

  // Patterns this much dearer than the nearest are still given, because the nearest may have no
  // route. Our choice.
  private static final double WINDOW_MM = 12;

  // One hole moves a few strings; a search that takes longer has lost its way.
  private static final long MAX_NODES = 1_000_000;

  private static final double ROUND = 1000;

  private final Layout layout;
  private final Bed stated;
  private final Ring ring;

  private DetourSearch(Layout layout, Bed stated) {
    this.layout = layout;
    this.stated = stated;
    ring = Ring.of(layout);
  }

  /**
   * What a search for a detour came to.
   *
   * @param stated the bed as if nothing were blocked; empty when the skip rules do not give one
   * @param needed whether a string of it runs through a blocked hole
   * @param patterns the patterns that work, nearest first, at most {@link #MOST}
   * @param proven false when a limit ended the search
   */
  public record Result(
      Optional<Bed> stated, boolean needed, List<Pattern> patterns, boolean proven) {
    /** Copies the list. */
    public Result {
      patterns = List.copyOf(patterns);
    }
  }

  /**
   * One pattern that leaves the blocked holes out.
   *
   * @param labelling what each hole carries, and what that costs
   * @param bed the bed; its layout states the pattern's own skip rules and shared holes
   * @param doubtful holes that take two strings though the layout does not say that they can
   */
  public record Pattern(Labelling labelling, Bed bed, List<HoleId> doubtful) {
    /** Copies the list. */
    public Pattern {
      doubtful = List.copyOf(doubtful);
    }
  }

  /**
   * Searches the patterns round the blocked holes of a layout that states its skip rules.
   *
   * @return what was found; without a stated bed nothing is
   */
  public static Result search(Layout layout) {
    Optional<Bed> stated =
        StatedAssignment.assign(layout.toBuilder().blocked(List.of()).build()).bed();
    if (stated.isEmpty()) {
      return new Result(Optional.empty(), false, List.of(), /* proven= */ true);
    }
    return new DetourSearch(layout, stated.get()).run();
  }

  private Result run() {
    EachSide<Boolean> hit = new EachSide<>(hit(Side.LEFT), hit(Side.RIGHT));
    if (!hit.left() && !hit.right()) {
      return new Result(Optional.of(stated), false, List.of(), /* proven= */ true);
    }
    Set<HoleId> doubtful = new HashSet<>();
    EachSide<List<Set<HoleLabel>>> allowed =
        new EachSide<>(
            allowed(Side.LEFT, hit.left(), doubtful), allowed(Side.RIGHT, hit.right(), doubtful));
    boolean alike =
        layout.headHoles().same()
            && layout.throatHoles().same()
            && allowed.left().equals(allowed.right())
            && stated.labels().left().equals(stated.labels().right());
    LabelResult result =
        LabelSearch.search(
            new LabelQuestion(
                layout,
                stated.positions(),
                allowed,
                doubtful,
                Optional.of(stated.labels()),
                Optional.empty(),
                LabelWeights.DETOUR,
                alike,
                WINDOW_MM,
                MAX_NODES));
    List<Pattern> patterns = new ArrayList<>();
    List<Labelling> all = new ArrayList<>(result.optima());
    all.addAll(result.near());
    for (Labelling labelling : all.subList(0, Math.min(MOST, all.size()))) {
      pattern(labelling, doubtful).ifPresent(patterns::add);
    }
    return new Result(
        Optional.of(stated),
        /* needed= */ true,
        patterns,
        result.status() != LabelResult.Status.LIMIT_REACHED);
  }

  private boolean hit(Side side) {
    return ring.list(side).stream()
        .anyMatch(h -> ring.isBlocked(h) && !stated.spansAt(h).isEmpty());
  }

  private List<Set<HoleLabel>> allowed(Side side, boolean open, Set<HoleId> doubtful) {
    Set<HoleId> stateBore = new HashSet<>();
    layout.bore().keySet().forEach(ref -> stateBore.addAll(ref.holes()));
    List<Set<HoleLabel>> sets = new ArrayList<>();
    for (HoleId hole : ring.list(side)) {
      HoleLabel now = stated.labels().of(side).get(ring.place(hole));
      if (ring.isBlocked(hole)) {
        sets.add(Set.of(HoleLabel.NONE));
      } else if (!open) {
        sets.add(Set.of(now));
      } else {
        EnumSet<HoleLabel> set = EnumSet.of(HoleLabel.NONE, HoleLabel.MAIN, HoleLabel.CROSS);
        if (ring.bore(hole) >= 2) {
          set.add(HoleLabel.BOTH);
        } else if (!stateBore.contains(hole)) {
          set.add(HoleLabel.BOTH);
          doubtful.add(hole);
        }
        if (ring.bore(hole) < 1) {
          set.retainAll(Set.of(HoleLabel.NONE));
        }
        sets.add(set);
      }
    }
    return sets;
  }

  private Optional<Pattern> pattern(Labelling labelling, Set<HoleId> doubtful) {
    Layout round = CompleteLayout.of(layout, labelling.labels());
    if (layout.mainsOffsets().isPresent() || layout.crossesOffsets().isPresent()) {
      // Offsets were measured for strings that now run elsewhere; the holes are where they were.
      round = round.toBuilder().withoutOffsets().at(coordinates()).build();
    }
    return StatedAssignment.assign(round)
        .bed()
        .filter(bed -> bed.labels().equals(labelling.labels()))
        .map(bed -> new Pattern(labelling, bed, shared(bed, doubtful)));
  }

  private static List<HoleId> shared(Bed bed, Set<HoleId> doubtful) {
    List<HoleId> found = new ArrayList<>();
    for (Side side : Side.values()) {
      for (HoleId hole : bed.ring().list(side)) {
        if (bed.spansAt(hole).size() > 1 && doubtful.contains(hole)) {
          found.add(hole);
        }
      }
    }
    return found;
  }

  /** Every hole's place in the layout's unit, to a thousandth. */
  private Map<HoleRef, Point> coordinates() {
    Map<HoleRef, Point> at = new LinkedHashMap<>();
    double unit = layout.units().millimetres();
    stated
        .positions()
        .forEach(
            (hole, p) ->
                at.put(
                    HoleRef.of(hole),
                    new Point(
                        Math.round(p.x() / unit * ROUND) / ROUND,
                        Math.round(p.y() / unit * ROUND) / ROUND)));
    return at;
  }
}
