package org.hoopwright.replay;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hoopwright.bench.Bench;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.frame.Layout;
import org.hoopwright.material.Material;

/**
 * What a {@link ForceEstimate} rests on, each with its range. Little of it is published, so each
 * default says where it comes from or that it is our choice.
 *
 * @param friction friction of string on the frame's grommets, 0 to 1. Default 0.10 to 0.25, our
 *     choice: nothing is published for string on grommets, and nylon on nylon is given as 0.04 to
 *     0.13 (Materials Science and Engineering Handbook, CRC 2001, Table 399) and as much as 0.50
 *     (an engineering blog, 2008)
 * @param wrapFactor by what the angle that the geometry gives for a bend is multiplied, 0 to 2.
 *     Default 0.9 to 1.1, our choice: holes are wider than the string, and it leaves them askew
 * @param weaveFriction friction of string on string where they cross, 0 to 1. Default 0.05 to 0.25,
 *     our choice: nylon on nylon is given as 0.04 to 0.13 (Materials Science and Engineering
 *     Handbook, CRC 2001, Table 399), and straightening a cross undoes some of it. It agrees with a
 *     measured ratio of crosses to mains of 0.74 when both are pulled alike (string-tester blog
 *     "Cross String Tension", 2025/12)
 * @param tensionerShare what share of the reference still acts when the clamp goes on, 0 to 1.
 *     Default by {@link org.hoopwright.bench.Tensioner}
 * @param drawbackMm how far the string slips back when the tensioner lets go and a clamp takes the
 *     load, or when a clamp comes off and a knot takes it, 0 to 10 mm. Default by {@link
 *     org.hoopwright.bench.MachineClampKind}, our choice: no published number was found
 * @param knotShare how tight the stretch from a clamp to the knot is when the clamp comes off, as a
 *     share of what the span carries, 0 to 1. Default 0 to 0.5, our choice: a tail is tied by hand,
 *     and no published number was found
 * @param backUpShare what share of the load a starting clamp bears that backs up a machine clamp
 *     from behind, outside the frame, 0 to 1; the machine clamp bears the rest, and whichever gives
 *     hands over to the other. Default 0 to 1, our choice: it hangs on how close to the frame it is
 *     set, and nothing is published
 * @param mainsStiffness force in newtons for a stretch by the whole length (Young's modulus times
 *     cross-section) of the mains near their tension, more than 0 and at most 10⁶. Default by
 *     material, see {@link #stiffness}
 * @param crossesStiffness the same for the crosses
 */
public record ForceParameters(
    Interval friction,
    Interval wrapFactor,
    Interval weaveFriction,
    Interval tensionerShare,
    Interval drawbackMm,
    Interval knotShare,
    Interval backUpShare,
    Interval mainsStiffness,
    Interval crossesStiffness) {

  private static final double TEN_LBF = 10 * 4.4482216152605;

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException when a range is not within the limits stated above
   */
  public ForceParameters {
    within("friction", friction, 0, 1);
    within("wrap factor", wrapFactor, 0, 2);
    within("friction of the weave", weaveFriction, 0, 1);
    within("tensioner share", tensionerShare, 0, 1);
    within("drawback", drawbackMm, 0, 10);
    within("knot share", knotShare, 0, 1);
    within("back-up share", backUpShare, 0, 1);
    within("stiffness of the mains", mainsStiffness, 1, 1e6);
    within("stiffness of the crosses", crossesStiffness, 1, 1e6);
  }

  private static void within(String what, Interval range, double least, double most) {
    if (range.low() < least || range.high() > most) {
      throw new IllegalArgumentException(
          "The %s (%s to %s) must be from %s to %s."
              .formatted(what, range.low(), range.high(), least, most));
    }
  }

  /** The defaults for the strings of a plan. */
  public static ForceParameters of(BenchPlan plan) {
    Layout layout = plan.bed().layout();
    Bench bench = plan.job().bench();
    return new ForceParameters(
        new Interval(0.10, 0.25),
        new Interval(0.9, 1.1),
        new Interval(0.05, 0.25),
        new Interval(bench.tensioner().leastShare(), 1.0),
        new Interval(bench.leastDrawbackMm(), bench.mostDrawbackMm()),
        new Interval(0.0, 0.5),
        new Interval(0.0, 1.0),
        stiffness(plan.job().mainsString(layout).material()),
        stiffness(plan.job().crossesString(layout).material()));
  }

  /**
   * Stiffness of a string near its tension, in newtons for a stretch by the whole length: 10 lbf
   * over the share by which it stretches from 55 to 65 lbf.
   *
   * <p>Source of the stretch: stringer blog "Difficulties of Hybriding Strings", 2014/11; one
   * person's measurements on the first pull, creep included. Aramid is reported not to stretch at
   * all there, so its range is our choice: from its own stiffness up to 55 lbf to that of the
   * stiffest polyester.
   */
  public static Interval stiffness(Material material) {
    return switch (material) {
      case NATURAL_GUT -> ofStretch(0.007, 0.004);
      case NYLON -> ofStretch(0.011, 0.008);
      case MULTIFILAMENT -> ofStretch(0.012, 0.005);
      case POLYESTER -> ofStretch(0.003, 0.001);
      case ARAMID ->
          new Interval(Material.STRETCH_AT_NEWTONS / Material.ARAMID.minStretch(), TEN_LBF / 0.001);
    };
  }

  private static Interval ofStretch(double most, double least) {
    return new Interval(TEN_LBF / most, TEN_LBF / least);
  }

  /**
   * What a bend leaves of a pull: e^(−friction × wrap).
   *
   * <p>Source: capstan equation, in any textbook of mechanics; tight side over slack side is
   * e^(friction × wrap) at the point of slip, whatever the radius.
   *
   * @param friction coefficient of friction
   * @param wrapRadians angle of the bend
   * @return a share from 0 to 1
   */
  public static double kept(double friction, double wrapRadians) {
    return StrictMath.exp(-friction * wrapRadians);
  }

  /** The ranges by name, in the order of the components. */
  public Map<String, Interval> byName() {
    Map<String, Interval> map = new LinkedHashMap<>();
    map.put("friction", friction);
    map.put("wrapFactor", wrapFactor);
    map.put("weaveFriction", weaveFriction);
    map.put("tensionerShare", tensionerShare);
    map.put("drawbackMm", drawbackMm);
    map.put("knotShare", knotShare);
    map.put("backUpShare", backUpShare);
    map.put("mainsStiffness", mainsStiffness);
    map.put("crossesStiffness", crossesStiffness);
    return Collections.unmodifiableMap(map);
  }

  /**
   * Every choice of lowest or highest values: of friction at bends together with their angle, of
   * friction in the weave, of the tensioner, of the drawback, of the knot share, of the stiffness
   * of all strings together, which do not act on each other, and of the back-up share.
   *
   * @param backedUp whether the plan has a clamp that backs up another; else its share says nothing
   */
  List<Corner> corners(boolean backedUp) {
    Set<Corner> all = new LinkedHashSet<>();
    for (int bits = 0; bits < (backedUp ? 128 : 64); bits++) {
      all.add(
          new Corner(
              pick(friction, bits) * pick(wrapFactor, bits),
              pick(weaveFriction, bits >> 1),
              pick(tensionerShare, bits >> 2),
              pick(drawbackMm, bits >> 3),
              pick(knotShare, bits >> 4),
              pick(backUpShare, bits >> 6),
              pick(mainsStiffness, bits >> 5),
              pick(crossesStiffness, bits >> 5)));
    }
    return List.copyOf(all);
  }

  private static double pick(Interval range, int bits) {
    return (bits & 1) == 0 ? range.low() : range.high();
  }

  /**
   * One choice of values.
   *
   * @param bendFriction friction on the frame, times the factor of a bend's angle
   * @param weaveFriction friction of string on string
   * @param tensionerShare what share of the reference acts
   * @param drawbackMm slip when a clamp or knot takes a load, in mm
   * @param knotShare how tight the stretch to a knot is tied, 0 to 1
   * @param backUpShare share of the load that a clamp behind another bears, 0 to 1
   * @param mainsStiffness of the mains, in newtons
   * @param crossesStiffness of the crosses, in newtons
   */
  record Corner(
      double bendFriction,
      double weaveFriction,
      double tensionerShare,
      double drawbackMm,
      double knotShare,
      double backUpShare,
      double mainsStiffness,
      double crossesStiffness) {}
}
