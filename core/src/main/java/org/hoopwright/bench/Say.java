package org.hoopwright.bench;

import java.util.List;
import java.util.Locale;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Crossing;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.TensionRange;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Pass;
import org.hoopwright.units.Force;
import org.hoopwright.units.ForceUnit;

/** The sentences of a plan, for the person at the bench. */
final class Say {

  private Say() {}

  static String mm(double mm) {
    return String.format(Locale.ROOT, "%.0f mm", mm);
  }

  /** {@code L1}, {@code L1 and L2}, {@code L1, L2 and L3}. */
  static String list(List<String> names) {
    int last = names.size() - 1;
    return last < 1
        ? String.join("", names)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }

  /** A force in the unit of the layout's tension range, else in newtons. */
  static String force(Force force, Layout layout) {
    ForceUnit unit = layout.tension().map(TensionRange::unit).orElse(ForceUnit.NEWTON);
    return String.format(Locale.ROOT, "%.0f %s", force.in(unit), unit.symbol());
  }

  static String clamp(String name) {
    int dash = name.lastIndexOf('-');
    return name.substring(0, dash) + " clamp " + name.substring(dash + 1);
  }

  static String end(EndName end) {
    return switch (end) {
      case SHORT -> "short end";
      case LONG -> "long end";
      case START -> "start of the crosses";
      case FINISH -> "end of the crosses";
    };
  }

  /**
   * How a tail that is too short is pulled (Racquet Sports Industry, "Starting clamp", 2004/03).
   */
  static String bridge(SpanId span, HoleId at) {
    return "The tail of "
        + span
        + " at "
        + at
        + " does not reach the tensioner: join a scrap of string to it with a starting clamp, close to the tail's end, and pull the scrap. Keep your face away from it.";
  }

  static String lace(Pass pass) {
    return "Lace " + pass.span() + ": in at " + pass.from() + ", out at " + pass.to() + ".";
  }

  /** How a pass is woven through the spans that are already there. */
  static String weave(Bed bed, Pass pass, List<SpanId> laced) {
    List<Crossing> met =
        bed.crossings(pass.span()).stream()
            .filter(c -> laced.contains(c.main().equals(pass.span()) ? c.cross() : c.main()))
            .toList();
    boolean forward = pass.from().equals(bed.span(pass.span()).from());
    Crossing first = met.get(forward ? 0 : met.size() - 1);
    boolean cross = pass.span().isCross();
    SpanId other = cross ? first.main() : first.cross();
    boolean over = cross == first.crossOver();
    String way =
        cross
            ? (pass.from().side() == Side.LEFT ? "from left to right" : "from right to left")
            : (pass.from().end() == End.HEAD ? "from the head down" : "from the throat up");
    return "Weave "
        + pass.span()
        + " "
        + way
        + ", in at "
        + pass.from()
        + ", out at "
        + pass.to()
        + ": "
        + (over ? "over " : "under ")
        + other
        + " first, then in turn.";
  }

  static String pull(SpanId span, HoleId at) {
    return "Pull " + span + " by its tail at " + at + ".";
  }

  static String set(String clamp, SpanId span, HoleId near, double distance) {
    return "Clamp "
        + span
        + " inside near "
        + near
        + ", "
        + mm(distance)
        + " from the hole, with "
        + clamp(clamp)
        + ".";
  }

  /** A starting clamp behind a machine clamp; it stays while the string is led on. */
  static String behind(String starting, SpanId span, HoleId at, String machine) {
    return "Set "
        + clamp(starting)
        + " on the tail of "
        + span
        + " outside the frame at "
        + at
        + ", close to it: it backs "
        + clamp(machine)
        + " up. Leave the string loose round it until the next pull.";
  }

  /** A starting clamp that alone holds an end until its knot. */
  static String third(String starting, SpanId span, HoleId at) {
    return "Set "
        + clamp(starting)
        + " on the tail of "
        + span
        + " outside the frame at "
        + at
        + ", close to it: it holds "
        + span
        + " until its knot, and the machine clamps are free.";
  }

  static String free(String clamp, SpanId span) {
    return "Take " + clamp(clamp) + " off " + span + ".";
  }

  static String knot(EndName end, Knot knot) {
    return knot.kind() == Knot.Kind.STARTING
        ? "Tie a starting knot outside the frame at "
            + knot.hole()
            + ", round "
            + knot.anchor()
            + ", and lead the string along the frame."
        : "Lead the "
            + end(end)
            + " along the frame to "
            + knot.hole()
            + " and tie it off round "
            + knot.anchor()
            + ".";
  }

  static String trim(EndName end) {
    return "Trim the tail of the " + end(end) + " near its knot, with your eyes out of its way.";
  }
}
