package org.hoopwright.bench;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.bed.Bed;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;
import org.hoopwright.material.StringSpec;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Piece;
import org.hoopwright.route.Route;
import org.hoopwright.route.StringEnd;

/**
 * How much string each end of each piece needs: spans with what the weave takes up, runs, passages
 * through the frame, the knot's tail, the reach to the tensioner, less the stretch. All in mm.
 */
public final class Lengths {

  /**
   * What the weave adds to a span, as a fraction: our choice, on the safe side of a sine of one
   * string's thickness.
   */
  public static final double TAKE_UP = 0.01;

  /**
   * String left for a tie-off knot, in mm: 12 in (Tennis Industry, "Stringing 101 - Knots",
   * 2016/02).
   */
  public static final double KNOT_TAIL_MM = 304.8;

  /**
   * String used up by each passage through the frame, in mm: our choice, a usual beam in the
   * string's plane.
   */
  public static final double PASSAGE_MM = 12.0;

  /** Cut lengths are rounded up to a multiple of this, in mm: our choice. */
  public static final double CUT_STEP_MM = 50.0;

  private final Bed bed;
  private final Route route;
  private final Job job;

  private Lengths(Bed bed, Route route, Job job) {
    this.bed = bed;
    this.route = route;
    this.job = job;
  }

  /** The lengths of every end, in the order of pieces and ends. */
  public static List<EndLength> of(Bed bed, Route route, Job job) {
    Lengths lengths = new Lengths(bed, route, job);
    List<EndLength> list = new ArrayList<>();
    for (int i = 0; i < route.pieces().size(); i++) {
      for (StringEnd end : route.pieces().get(i).ends()) {
        list.add(lengths.end(i, end));
      }
    }
    return List.copyOf(list);
  }

  /** What to cut for each piece, in mm: the sum of its ends rounded up to {@link #CUT_STEP_MM}. */
  public static List<Double> cut(Route route, List<EndLength> lengths) {
    List<Double> cut = new ArrayList<>();
    for (int i = 0; i < route.pieces().size(); i++) {
      int piece = i;
      double sum =
          lengths.stream().filter(l -> l.piece() == piece).mapToDouble(EndLength::totalMm).sum();
      cut.add(Math.ceil(sum / CUT_STEP_MM) * CUT_STEP_MM);
    }
    return cut;
  }

  private EndLength end(int piece, StringEnd end) {
    double spans = 0;
    double runs = 0;
    HoleId at = null;
    for (Pass pass : end.passes()) {
      spans +=
          bed.span(pass.span()).lengthMm()
              * (bed.crossings(pass.span()).isEmpty() ? 1 : 1 + TAKE_UP);
      runs += at == null ? 0 : runMm(bed, at, pass.from());
      at = pass.to();
    }
    if (end.name() == EndName.SHORT) {
      runs += centreLoopMm();
    }
    HoleId exit = at == null ? firstEntry(piece) : at;
    runs += runMm(bed, exit, end.finish().hole());
    double frame = PASSAGE_MM * (2 * end.passes().size() + 1);
    boolean pulled = !end.passes().isEmpty() || end.startingClamp().isPresent();
    double reach = pulled ? job.bench().reachMm() : 0;
    return new EndLength(
        piece,
        end.name(),
        spans,
        runs,
        frame,
        KNOT_TAIL_MM,
        reach,
        -stretch(piece) * (spans + runs + frame));
  }

  /** The fraction by which the string stretches at least, so that nothing is cut too short. */
  private double stretch(int piece) {
    boolean crosses = route.pieces().get(piece).role() == Piece.Role.CROSSES;
    StringSpec string = crosses ? job.crossesString(bed.layout()) : job.mainsString(bed.layout());
    double newtons =
        (crosses ? job.crossesTension(bed.layout()) : job.mainsTension(bed.layout())).newtons();
    return string.material().minStretch()
        * Math.min(1.0, newtons / org.hoopwright.material.Material.STRETCH_AT_NEWTONS);
  }

  private HoleId firstEntry(int piece) {
    return route.pieces().get(piece).end(EndName.FINISH).orElseThrow().passes().get(0).from();
  }

  private double centreLoopMm() {
    boolean head = route.mainsStart() == End.HEAD;
    HoleId left = head ? bed.mains(Side.LEFT).get(0).from() : bed.mains(Side.LEFT).get(0).to();
    HoleId right = head ? bed.mains(Side.RIGHT).get(0).from() : bed.mains(Side.RIGHT).get(0).to();
    return bed.position(left).distanceTo(bed.position(right));
  }

  /** Along the frame from hole to hole. */
  static double runMm(Bed bed, HoleId a, HoleId b) {
    int low = Math.min(bed.ring().place(a), bed.ring().place(b));
    int high = Math.max(bed.ring().place(a), bed.ring().place(b));
    double mm = 0;
    for (int i = low; i < high; i++) {
      mm +=
          bed.position(bed.ring().at(a.side(), i))
              .distanceTo(bed.position(bed.ring().at(a.side(), i + 1)));
    }
    return mm;
  }
}
