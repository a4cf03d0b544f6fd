package org.hoopwright.bed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hoopwright.finding.Findings;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoopOutline;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.Limits;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Outline;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;

/**
 * Reads the pattern of a frame off its holes, for layouts that do not state {@code mains.skip}.
 *
 * <p>What the layout does state is kept to: first and last cross, holes that crosses leave out,
 * shared and blocked holes. Sides that nothing stated tells apart have the same labels.
 *
 * <p>The best reading is taken only when it is ahead of every other one by more than a margin. The
 * margin is small where first and last cross are stated and the holes were measured well; it grows
 * with the unevenness of the measured positions, and is large where holes were only counted, or
 * where nothing says how many holes the mains leave out. Margins are our choice; {@code
 * docs/bed.md} shows what they were measured against.
 */
public final class PatternInference {

  /** Readings that are listed at most. */
  public static final int MOST_READINGS = 4;

  /** Margin where positions were measured to within a millimetre, in mm of cost. */
  static final double LEAST_MARGIN = 2.0;

  /** Margin where less than half of the holes have coordinates. */
  static final double COUNTED_MARGIN = 8.0;

  /** Margin where the first or the last cross is not stated. */
  static final double OPEN_ENDS_MARGIN = 20.0;

  // Positions that are off by up to a millimetre scatter by less than this about the outline.
  private static final double SOUND_SCATTER = 0.55;
  private static final double MARGIN_FOR_SCATTER = 14.0;

  private PatternInference() {}

  /**
   * Reads the pattern. Never throws; whatever {@code mains.skip} may state is left aside.
   *
   * @return the readings; none, without a finding, when the layout's counts or its hoop leave
   *     nothing to read, which the rules on layouts report
   */
  public static Inference infer(Layout layout) {
    return infer(layout, LabelQuestion.DEFAULT_MAX_NODES);
  }

  /**
   * Reads the pattern with a limit of its own.
   *
   * @param maxNodes after how many nodes the search gives up; 1 or more
   */
  public static Inference infer(Layout layout, long maxNodes) {
    Layout open = layout.toBuilder().mainsSkip(Optional.empty()).withoutOffsets().build();
    Optional<Outline> outline = HoopOutline.of(open).outline();
    if (!Limits.countsSound(open) || outline.isEmpty()) {
      return Inference.nothing();
    }
    HolePositions positions = HolePositions.of(open);
    if (Findings.hasErrors(positions.findings())) {
      return Inference.none(positions.findings());
    }
    OpenLabels labels = new OpenLabels(open);
    double margin = margin(open, positions.points(), outline.get());
    LabelResult result =
        LabelSearch.search(
            new LabelQuestion(
                open,
                positions.points(),
                labels.allowed(),
                labels.doubtful(),
                Optional.empty(),
                Optional.empty(),
                LabelWeights.INFER,
                labels.alike(),
                margin,
                maxNodes));
    return report(layout, open, result, margin, labels.doubtful());
  }

  /** By how much the best reading must be ahead. */
  static double margin(Layout layout, Map<HoleId, Point> points, Outline outline) {
    Set<HoleId> measured = new HashSet<>();
    layout.at().keySet().forEach(ref -> measured.addAll(ref.holes()));
    double margin =
        LEAST_MARGIN + MARGIN_FOR_SCATTER * Math.max(0, scatter(points, outline) - SOUND_SCATTER);
    if (2L * points.keySet().stream().filter(measured::contains).count() < points.size()) {
      margin = Math.max(margin, COUNTED_MARGIN);
    }
    if (layout.crossesFirst().isEmpty() || layout.crossesLast().isEmpty()) {
      margin = Math.max(margin, OPEN_ENDS_MARGIN);
    }
    return Math.min(margin, 1000);
  }

  /**
   * How unevenly the holes lie about the outline: the mean distance from their middle distance, in
   * mm. Holes that were all measured outside the frame lie evenly.
   */
  private static double scatter(Map<HoleId, Point> points, Outline outline) {
    double[] away = points.values().stream().mapToDouble(outline::distanceTo).toArray();
    Arrays.sort(away);
    double middle = away[away.length / 2];
    double sum = 0;
    for (double d : away) {
      sum += Math.abs(d - middle);
    }
    return sum / away.length;
  }

  private static Inference report(
      Layout layout, Layout open, LabelResult result, double margin, Set<HoleId> doubtful) {
    List<Labelling> all = new ArrayList<>(result.optima());
    all.addAll(result.near());
    List<Reading> readings = new ArrayList<>();
    for (Labelling one : all.subList(0, Math.min(MOST_READINGS, all.size()))) {
      readings.add(reading(open, one, doubtful));
    }
    Inference.Status status =
        all.isEmpty() && result.status() != LabelResult.Status.LIMIT_REACHED
            ? Inference.Status.NONE
            : all.size() == 1 && result.status() == LabelResult.Status.PROVEN
                ? Inference.Status.SURE
                : Inference.Status.UNSURE;
    return new Inference(
        status,
        readings,
        margin,
        result,
        new InferenceReport(layout, result, readings, all.size()).findings(status));
  }

  private static Reading reading(Layout open, Labelling labelling, Set<HoleId> doubtful) {
    Layout complete = CompleteLayout.of(open, labelling.labels());
    Ring ring = Ring.of(open);
    List<HoleId> shared = new ArrayList<>();
    for (Side side : Side.values()) {
      for (HoleId hole : ring.list(side)) {
        if (labelling.labels().of(side).get(ring.place(hole)) == HoleLabel.BOTH
            && doubtful.contains(hole)) {
          shared.add(hole);
        }
      }
    }
    List<HoleId> tieOff = open.tieOff().isEmpty() ? tieOffs(ring, labelling.labels()) : List.of();
    if (!tieOff.isEmpty()) {
      complete = complete.toBuilder().tieOff(CompleteLayout.refs(tieOff)).build();
    }
    return new Reading(labelling, complete, shared, tieOff);
  }

  /**
   * Where tie-off holes are likely: at each end the holes of the three mains within the outermost
   * one, so that a knot there is within reach of the last exit and has a main for its anchor. Our
   * choice.
   */
  private static List<HoleId> tieOffs(Ring ring, Labels labels) {
    List<HoleId> found = new ArrayList<>();
    for (Side side : Side.values()) {
      for (End end : End.values()) {
        List<HoleId> mains =
            ring.list(side).stream()
                .filter(h -> h.end() == end && labels.of(side).get(ring.place(h)).main())
                .sorted()
                .toList();
        mains.subList(Math.max(0, mains.size() - 4), mains.size() - 1).stream()
            .filter(h -> labels.of(side).get(ring.place(h)) == HoleLabel.MAIN)
            .forEach(found::add);
      }
    }
    return found;
  }
}
