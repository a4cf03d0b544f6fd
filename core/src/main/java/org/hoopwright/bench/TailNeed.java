package org.hoopwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;
import org.hoopwright.material.Material;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Route;
import org.hoopwright.route.StringEnd;

/**
 * Whether what is left of an end is enough for what it still has to do.
 *
 * @param enough whether it can be strung and knotted at all
 * @param bridged spans whose pull needs a scrap of string to reach the tensioner
 * @param knotMm what is left for the knot, in mm; empty when the tail is not known
 */
record TailNeed(boolean enough, List<SpanId> bridged, OptionalDouble knotMm) {

  /** The shortest tail that a starting clamp can take for bridging, in mm: our choice. */
  static final double BRIDGE_LEAST_MM = 100.0;

  /** The shortest tail in which two half hitches can be tied, in mm: our choice. */
  static final double KNOT_LEAST_MM = 150.0;

  /** What an end needs from its kept passes on. */
  static TailNeed of(Bed bed, Route route, Job job, EndName name, int kept, OptionalDouble tail) {
    if (tail.isEmpty()) {
      return new TailNeed(true, List.of(), tail);
    }
    StringEnd end = route.end(name).orElseThrow();
    double left = tail.getAsDouble();
    List<SpanId> bridged = new ArrayList<>();
    boolean enough = true;
    Material material = material(bed, job, name);
    for (int i = kept; i < end.passes().size(); i++) {
      left -= mm(bed, end.passes(), i) * (1 - material.minStretch());
      if (left < job.bench().reachMm()) {
        bridged.add(end.passes().get(i).span());
        enough &= left >= BRIDGE_LEAST_MM && job.bench().startingClamps() > 0;
      }
    }
    HoleId exit = end.passes().get(end.passes().size() - 1).to();
    left -= Lengths.runMm(bed, exit, end.finish().hole()) + Lengths.PASSAGE_MM;
    return new TailNeed(
        enough && left >= KNOT_LEAST_MM, List.copyOf(bridged), OptionalDouble.of(left));
  }

  /** What comes free when passes from this one on come out, in mm, at the least. */
  static double freed(Bed bed, Job job, StrungEnd end, int from) {
    double mm = 0;
    for (int i = from; i < end.passes().size(); i++) {
      mm += mm(bed, end.passes(), i) * (1 - material(bed, job, end.name()).maxStretch());
    }
    return mm;
  }

  /** String that the first passes of an end take up, unstretched, in mm, at the most. */
  static double used(Bed bed, Job job, EndName name, List<Pass> passes) {
    double mm = 0;
    for (int i = 0; i < passes.size(); i++) {
      mm += mm(bed, passes, i) * (1 - material(bed, job, name).minStretch());
    }
    return mm;
  }

  private static Material material(Bed bed, Job job, EndName name) {
    boolean mains = name == EndName.SHORT || name == EndName.LONG;
    return (mains ? job.mainsString(bed.layout()) : job.crossesString(bed.layout())).material();
  }

  /** A pass with the run that leads to it. */
  private static double mm(Bed bed, List<Pass> passes, int i) {
    Pass pass = passes.get(i);
    double run = i == 0 ? 0 : Lengths.runMm(bed, passes.get(i - 1).to(), pass.from());
    double span = bed.position(pass.from()).distanceTo(bed.position(pass.to()));
    return run + span * (1 + Lengths.TAKE_UP) + 2 * Lengths.PASSAGE_MM;
  }
}
