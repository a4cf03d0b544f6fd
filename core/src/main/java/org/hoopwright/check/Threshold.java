package org.hoopwright.check;

/**
 * What the rules count as too much or too little. Each has a name, a unit and a reason; {@code
 * docs/findings.md} lists them.
 */
public enum Threshold {
  /** Least distance of neighbouring holes. */
  HOLES_APART(
      3.0, "mm", "our choice: sleeve and string take about 3 mm, so nearer holes would be one"),
  /** Widest gap between neighbouring holes, as a multiple of their side's usual gap. */
  HOLES_GAP(3.0, "times", "our choice: one hole that was not counted makes a gap of 2"),
  /** How far from the inside of the hoop a hole's stated coordinates may be. */
  OFF_HOOP(
      12.0,
      "mm",
      "our choice: about the depth of a frame's wall, so that holes measured on the outside pass"),
  /** How far a hole or main may be from the mirror image of its twin. */
  MIRROR(6.0, "mm", "our choice: about half a mesh, more than anyone mismeasures"),
  /** How far the middle of the hoop's inside length may be from the origin. */
  HOOP_CENTRE(1.0, "mm", "our choice: about what a careful person measures with a rule"),
  /** How far the halves of an outline may be from mirror images. */
  HOOP_MIRROR(3.0, "mm", "our choice: twice what a careful person measures with a rule"),
  /** Longest hoop as a multiple of its width. */
  HOOP_RATIO(2.0, "times", "our choice: hoops of the four games have 1.2 to 1.5 (common practice)"),
  /** Least exponent of a superellipse. */
  EXPONENT_LEAST(1.6, "", "our choice: below it the hoop has a point at the head"),
  /** Greatest exponent of a superellipse. */
  EXPONENT_MOST(4.0, "", "our choice: above it the hoop has corners"),
  /** How far a main may lean out of line with its neighbours. */
  MAINS_SKEW(
      8.0,
      "mm",
      "our choice: most of a mesh; a main that took a neighbour's hole at one end leans so"),
  /** How far the ends of a cross may differ in height. */
  CROSS_SKEW(12.0, "mm", "our choice: one mesh; a cross that took a neighbour's hole leans so"),
  /**
   * Greatest gap between strings as a multiple of the gaps beside it, and the least as its inverse.
   */
  GAP_RATIO(1.9, "times", "our choice: a string that is missing makes a gap of 2"),
  /** Places for knots that two pieces take. */
  KNOT_PLACES(
      2,
      "places",
      "one piece has two knots and two pieces four (Stringer blog \"know where your tie off holes are before you start stringing\", 2012/08)"),
  /** Share of passes through covered holes above which a frame is hard to thread. */
  COVERED_SHARE(0.4, "of all passes", "our choice: the bundled layouts have less than 0.3"),
  /** Share of runs over others above which a frame has many doubled runs. */
  DOUBLED_SHARE(0.35, "of all runs", "our choice: the bundled layouts have less than 0.25"),
  /** Most tension as a multiple of the least. */
  TENSION_RATIO(2.0, "times", "our choice: makers' ranges span a third at most (common practice)"),
  /**
   * How much wider the mesh may be in the centre than elsewhere: the mean gap of the middle third
   * against that of the two outer thirds.
   */
  CENTRE_RATIO(
      1.05,
      "times",
      "our reading of \"not less dense in the centre than in any other area\"; 5 % for measuring"),
  /** How much the gaps in the middle half of the bed may differ: the greatest against the least. */
  UNIFORM_RATIO(
      1.75,
      "times",
      "our reading of \"generally uniform\"; beds of the bundled layouts keep below 1.5");

  private final double value;
  private final String unit;
  private final String why;

  Threshold(double value, String unit, String why) {
    this.value = value;
    this.unit = unit;
    this.why = why;
  }

  /** The value. */
  public double value() {
    return value;
  }

  /** Its unit; empty for a bare number. */
  public String unit() {
    return unit;
  }

  /** Where it comes from. */
  public String why() {
    return why;
  }
}
