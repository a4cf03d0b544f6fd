package org.hoopwright.patterns;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.hoopwright.bench.StringNeed;
import org.hoopwright.replay.Interval;
import org.hoopwright.units.Force;
import org.hoopwright.units.ForceUnit;

/** Lengths and forces as they are read at the bench, each in the units that machines show. */
final class Measures {

  private static final BigDecimal MM_PER_FOOT =
      new BigDecimal("304.8"); // exact, NIST SP 811, appendix B.8

  private Measures() {}

  /** For example {@code 244.7 N (55.0 lbf, 24.9 kgf)}. */
  static String force(Force force) {
    return Decimals.near(force.newtons(), 1)
        + " N ("
        + Decimals.near(force.in(ForceUnit.POUND_FORCE), 1)
        + " lbf, "
        + Decimals.near(force.in(ForceUnit.KILOGRAM_FORCE), 1)
        + " kgf)";
  }

  /** For example {@code 205 to 225 N (46 to 51 lbf, 21 to 23 kgf)}; newtons, estimated. */
  static String range(Interval newtons) {
    return span(newtons, 1)
        + " N ("
        + span(newtons, ForceUnit.POUND_FORCE.newtons())
        + " lbf, "
        + span(newtons, ForceUnit.KILOGRAM_FORCE.newtons())
        + " kgf)";
  }

  private static String span(Interval i, double unit) {
    String low = Decimals.near(i.low() / unit, 0);
    String high = Decimals.near(i.high() / unit, 0);
    return low.equals(high) ? low : low + " to " + high;
  }

  /** A length of string, rounded up in each unit: {@code 5900 mm (5.90 m, 19.4 ft)}. */
  static String string(double mm) {
    BigDecimal whole = new BigDecimal(Decimals.up(mm, 0));
    return whole
        + " mm ("
        + whole.movePointLeft(3).setScale(2, RoundingMode.UP)
        + " m, "
        + whole.divide(MM_PER_FOOT, 1, RoundingMode.UP)
        + " ft)";
  }

  /** What there is of a string and what that means, such as {@code 12192 mm: enough, 742 over}. */
  static String atHand(StringNeed need) {
    String have = Decimals.near(Math.floor(need.atHandMm()), 0) + " mm: ";
    return switch (need.verdict()) {
      case ENOUGH ->
          have
              + (need.jobs() > 1 ? "enough for " + need.jobs() + " such jobs, " : "enough, ")
              + Decimals.near(Math.floor(need.atHandMm() - need.jobs() * need.mostMm()), 0)
              + " mm over";
      case TIGHT -> have + "may just be enough; see the findings";
      case SHORT -> have + "too short; see the findings";
    };
  }
}
