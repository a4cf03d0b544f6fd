package org.hoopwright.route;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Ring;
import org.hoopwright.geometry.Point;
import org.hoopwright.geometry.Side;

/**
 * A bed compiled to whole numbers for the search, under the rules in force.
 *
 * <p>Holes are numbered left side first, each in list order; spans left mains, right mains,
 * crosses. A pass is twice its span's number, plus one when it runs against the span's own sense (a
 * main from the throat, a cross from the right).
 */
final class RouteModel {

  /** Sides as numbers: 0 left, 1 right. */
  static final int LEFT = 0;

  static final int RIGHT = 1;

  private static final int[] NONE = {};

  final Bed bed;
  final RouteRules rules;
  final int n;
  final int crosses;
  final int spans;
  final int leftHoles;
  final int holes;

  /** The short side where nothing else decides: the maker's, or left. */
  final int usualShortSide;

  private final int[] spanFrom;
  private final int[] spanTo;
  private final int[] forbiddenBefore; // forbidden stretches before this hole on its side
  private final double[] along; // mm along the side's holes from its first, in straight lines
  private final boolean[] knotPlace; // whether a knot can be tied in the hole
  private final boolean[] headZone;
  private final int[][] through; // spans through each hole

  /** Straight length of all spans, in mm. */
  final double spansMm;

  private final double headLoopMm;
  private final double throatLoopMm;

  RouteModel(Bed bed, RouteRules rules) {
    this.bed = bed;
    this.rules = rules;
    this.usualShortSide = bed.layout().shortSide().orElse(Side.LEFT) == Side.LEFT ? LEFT : RIGHT;
    this.n = bed.mainsPerSide();
    this.crosses = bed.crossCount();
    this.spans = 2 * n + crosses;
    Ring ring = bed.ring();
    this.leftHoles = ring.size(Side.LEFT);
    this.holes = leftHoles + ring.size(Side.RIGHT);
    spanFrom = new int[spans];
    spanTo = new int[spans];
    List<Span> all = bed.spans();
    int[] first = new int[holes]; // the spans through each hole, from 1; at most two
    int[] second = new int[holes];
    double sum = 0;
    for (int s = 0; s < spans; s++) {
      Span span = all.get(s);
      spanFrom[s] = number(span.from());
      spanTo[s] = number(span.to());
      sum += span.lengthMm();
      note(first, second, spanFrom[s], s);
      note(first, second, spanTo[s], s);
    }
    spansMm = sum;
    forbiddenBefore = new int[holes];
    along = new double[holes];
    knotPlace = new boolean[holes];
    headZone = new boolean[holes];
    through = new int[holes][];
    Point[] at = new Point[holes];
    bed.positions().forEach((hole, point) -> at[number(hole)] = point);
    for (int h = 0; h < holes; h++) {
      HoleId hole = hole(h);
      if (h != 0 && h != leftHoles) {
        forbiddenBefore[h] =
            forbiddenBefore[h - 1] + (rules.stretchAllowed(ring, hole(h - 1), hole) ? 0 : 1);
        along[h] = along[h - 1] + at[h - 1].distanceTo(at[h]);
      }
      headZone[h] = bed.inHeadZone(hole);
      through[h] =
          first[h] == 0
              ? NONE
              : second[h] == 0 ? new int[] {first[h] - 1} : new int[] {first[h] - 1, second[h] - 1};
      knotPlace[h] = rules.knotPlace(ring, hole, through[h].length);
    }
    headLoopMm = at[spanFrom[main(LEFT, 1)]].distanceTo(at[spanFrom[main(RIGHT, 1)]]);
    throatLoopMm = at[spanTo[main(LEFT, 1)]].distanceTo(at[spanTo[main(RIGHT, 1)]]);
  }

  private static void note(int[] first, int[] second, int hole, int span) {
    if (first[hole] == 0) {
      first[hole] = span + 1;
    } else {
      second[hole] = span + 1;
    }
  }

  int number(HoleId hole) {
    return bed.ring().place(hole) + (hole.side() == Side.LEFT ? 0 : leftHoles);
  }

  HoleId hole(int h) {
    return h < leftHoles ? bed.ring().at(Side.LEFT, h) : bed.ring().at(Side.RIGHT, h - leftHoles);
  }

  int number(SpanId id) {
    return switch (id.kind()) {
      case LEFT_MAIN -> id.number() - 1;
      case RIGHT_MAIN -> n + id.number() - 1;
      case CROSS -> 2 * n + id.number() - 1;
    };
  }

  SpanId span(int s) {
    return s < n
        ? SpanId.main(Side.LEFT, s + 1)
        : s < 2 * n ? SpanId.main(Side.RIGHT, s - n + 1) : SpanId.cross(s - 2 * n + 1);
  }

  /** The span number of main k of a side. */
  int main(int side, int k) {
    return side * n + k - 1;
  }

  /** The span number of cross j, from 1 at the head. */
  int cross(int j) {
    return 2 * n + j - 1;
  }

  boolean isCross(int span) {
    return span >= 2 * n;
  }

  int side(int hole) {
    return hole < leftHoles ? LEFT : RIGHT;
  }

  /** The hole where this pass enters. */
  int entry(int pass) {
    return (pass & 1) == 0 ? spanFrom[pass >> 1] : spanTo[pass >> 1];
  }

  /** The hole where this pass comes out. */
  int exit(int pass) {
    return (pass & 1) == 0 ? spanTo[pass >> 1] : spanFrom[pass >> 1];
  }

  /** The pass of main k of a side that enters at this end. */
  int mainPass(int side, int k, End entry) {
    return main(side, k) * 2 + (entry == End.HEAD ? 0 : 1);
  }

  /** The pass of a cross that enters on this side. */
  int crossPass(int j, int side) {
    return cross(j) * 2 + side;
  }

  Pass pass(int pass) {
    return new Pass(span(pass >> 1), hole(entry(pass)), hole(exit(pass)));
  }

  /** Places between two holes of one side. */
  int places(int a, int b) {
    return Math.abs(a - b);
  }

  /** Whether a run may join two holes. */
  boolean runOk(int a, int b) {
    return stretchOk(a, b) && places(a, b) <= rules.runLimit();
  }

  /**
   * Whether string may lie along the frame between two different holes of one side, whatever its
   * length.
   */
  boolean stretchOk(int a, int b) {
    return a != b && side(a) == side(b) && forbiddenBefore[a] == forbiddenBefore[b];
  }

  /** Length along the frame between two holes of one side, in mm. */
  double runMm(int a, int b) {
    return Math.abs(along[a] - along[b]);
  }

  double centreLoopMm(End end) {
    return end == End.HEAD ? headLoopMm : throatLoopMm;
  }

  boolean inHeadZone(int hole) {
    return headZone[hole];
  }

  /** Spans through a hole. */
  int[] through(int hole) {
    return through[hole];
  }

  /** Whether a knot can be tied in the hole. */
  boolean knotPlace(int hole) {
    return knotPlace[hole];
  }

  /** A hole's place in its side's list. */
  int place(int hole) {
    return hole < leftHoles ? hole : hole - leftHoles;
  }

  /** A pass seen in a mirror. */
  int mirror(int pass) {
    int span = pass >> 1;
    if (isCross(span)) {
      return pass ^ 1;
    }
    return (span < n ? span + n : span - n) * 2 + (pass & 1);
  }

  /** These passes as values. */
  List<Pass> passes(int[] passes) {
    List<Pass> list = new ArrayList<>(passes.length);
    for (int pass : passes) {
      list.add(pass(pass));
    }
    return list;
  }
}
