package org.hoopwright.finding;

/**
 * Every kind of finding, in one table. Codes are stable: one is never renamed and never used for
 * something else.
 *
 * <p>Groups: the file and its format; holes; hoop; mains; crosses; shared, blocked and tie-off
 * holes; route and start; tension; bench.
 */
public enum FindingCode {
  // The file and its format.
  JSON_SYNTAX("json-syntax", Severity.ERROR, "The text is not JSON."),
  JSON_EMPTY("json-empty", Severity.ERROR, "The file holds nothing."),
  JSON_LIMIT("json-limit", Severity.ERROR, "The file is larger or deeper than a layout may be."),
  DUPLICATE_MEMBER("duplicate-member", Severity.ERROR, "A member is stated twice."),
  UNKNOWN_MEMBER("unknown-member", Severity.ERROR, "A member is not one of the format's."),
  MISSING_MEMBER("missing-member", Severity.ERROR, "A needed member is missing."),
  WRONG_TYPE("wrong-type", Severity.ERROR, "A value is of the wrong kind."),
  WRONG_VALUE("wrong-value", Severity.ERROR, "A value is not one of those allowed."),
  NUMBER_RANGE("number-range", Severity.ERROR, "A number is out of its range."),
  FORMAT_VERSION("format-version", Severity.ERROR, "The file is of another format or version."),
  BAD_HOLE_NAME("bad-hole-name", Severity.ERROR, "A text is not a hole name."),
  SUSPECT_TEXT(
      "suspect-text",
      Severity.WARNING,
      "A text holds characters that do not show or that change how it shows."),

  // Holes.
  UNKNOWN_HOLE("unknown-hole", Severity.ERROR, "A hole is named that the counts do not have."),
  HOLE_TWICE("hole-twice", Severity.WARNING, "A hole is named twice in one list."),
  HOLE_ORDER("hole-order", Severity.ERROR, "Positions do not follow the order of the holes."),
  HOLE_OFF_HOOP("hole-off-hoop", Severity.WARNING, "A hole lies away from the hoop."),
  HOLE_WRONG_SIDE(
      "hole-wrong-side",
      Severity.ERROR,
      "A hole's coordinates are not on its own side of the long axis."),
  BORE_TOO_SMALL(
      "bore-too-small", Severity.ERROR, "A hole's bore is smaller than what it must take."),
  NO_RUN_SIDES(
      "no-run-sides",
      Severity.ERROR,
      "A forbidden stretch does not join two different holes of a side."),
  HOLES_CROWDED("holes-crowded", Severity.WARNING, "Neighbouring holes lie too near together."),
  HOLES_GAP(
      "holes-gap", Severity.WARNING, "Neighbouring holes lie much farther apart than others."),
  HOLES_UNEVEN("holes-uneven", Severity.NOTE, "The two sides count different numbers of holes."),
  HOLES_NOT_MIRRORED(
      "holes-not-mirrored",
      Severity.WARNING,
      "The coordinates of two holes of one name are far from mirror images."),
  BORE_NEEDLESS("bore-needless", Severity.NOTE, "A stated bore is what it would be anyway."),
  BORE_IDLE("bore-idle", Severity.WARNING, "A wide bore has nothing to take."),
  BLOCKED_USED(
      "blocked-used", Severity.WARNING, "A blocked hole is named as a tie-off or shared hole."),

  // Hoop.
  HOOP_SHAPE("hoop-shape", Severity.ERROR, "The hoop is no closed outline round the long axis."),
  HOOP_OFF_CENTRE(
      "hoop-off-centre",
      Severity.WARNING,
      "The origin is not at the middle of the hoop's inside length."),
  HOOP_UNUSUAL("hoop-unusual", Severity.WARNING, "The hoop's size is unusual for the game."),
  HOOP_PROPORTION(
      "hoop-proportion", Severity.WARNING, "The hoop's length and width are no racket's."),
  HOOP_EXPONENT("hoop-exponent", Severity.WARNING, "The superellipse is far from a hoop's shape."),
  HOOP_UNEVEN("hoop-uneven", Severity.WARNING, "The hoop's halves are not mirror images."),

  FRAME_BELOW_HOOP(
      "frame-below-hoop", Severity.WARNING, "The frame is smaller than the inside of its hoop."),

  // Mains.
  MAINS_ODD("mains-odd", Severity.ERROR, "An odd number of mains is not supported."),
  MAINS_TOO_FEW("mains-too-few", Severity.ERROR, "There are too few mains."),
  MAINS_SKIP_MISSING(
      "mains-skip-missing",
      Severity.ERROR,
      "The layout does not say which holes the mains leave out."),
  PATTERN_INFERRED(
      "pattern-inferred",
      Severity.NOTE,
      "The skip rules were not stated and have been read off the holes."),
  PATTERN_UNSURE(
      "pattern-unsure",
      Severity.ERROR,
      "The skip rules are not stated, and the holes can be read in more than one way."),
  PATTERN_NONE(
      "pattern-none",
      Severity.ERROR,
      "The skip rules are not stated, and no pattern fits the holes."),
  MAINS_NO_HOLE("mains-no-hole", Severity.ERROR, "There are not enough holes for the mains."),
  MAIN_HOLE_BLOCKED("main-hole-blocked", Severity.ERROR, "A main needs a blocked hole."),
  OFFSETS_COUNT(
      "offsets-count",
      Severity.ERROR,
      "The number of measured offsets is not the number of strings."),
  OFFSETS_ORDER("offsets-order", Severity.ERROR, "Measured offsets do not grow."),
  OFFSET_OUTSIDE("offset-outside", Severity.ERROR, "A measured offset lies outside the hoop."),
  OFFSETS_DIFFER(
      "offsets-differ",
      Severity.WARNING,
      "The offsets of a main and a cross put their shared hole at two heights."),
  OFFSETS_WITHOUT_SKIP(
      "offsets-without-skip", Severity.ERROR, "Measured offsets need stated skip rules."),
  MAINS_UNUSUAL("mains-unusual", Severity.WARNING, "The number of mains is unusual for the game."),
  MAINS_SKEWED("mains-skewed", Severity.WARNING, "A main leans out of line with its neighbours."),
  MAINS_SPACING(
      "mains-spacing", Severity.WARNING, "Two mains are too near together or too far apart."),
  MAINS_CENTRE(
      "mains-centre", Severity.WARNING, "The middle mains are too near together or too far apart."),
  MAINS_NOT_MIRRORED(
      "mains-not-mirrored", Severity.WARNING, "Mains of one number are not mirror images."),
  MAINS_SKIP_IDLE(
      "mains-skip-idle", Severity.WARNING, "A skipped hole lies beyond the outermost main."),

  // Crosses.
  CROSSES_TOO_FEW("crosses-too-few", Severity.ERROR, "There are too few crosses."),
  CROSSES_NO_HOLE("crosses-no-hole", Severity.ERROR, "There are not enough holes for the crosses."),
  CROSSES_HOLES_LEFT("crosses-holes-left", Severity.WARNING, "Free holes are left over."),
  CROSSES_FIRST("crosses-first", Severity.ERROR, "The first cross cannot take the stated hole."),
  CROSSES_LAST("crosses-last", Severity.ERROR, "The last cross does not take the stated hole."),
  CROSS_HOLE_BLOCKED("cross-hole-blocked", Severity.NOTE, "A blocked hole is passed by."),
  SHARED_CHOICE(
      "shared-choice",
      Severity.WARNING,
      "More holes are shared than are needed, and one choice among them was made."),
  SHARED_UNUSED("shared-unused", Severity.NOTE, "A shared hole carries one string only."),

  SHARED_CANDIDATE(
      "shared-candidate",
      Severity.WARNING,
      "A hole must take two strings, and the layout does not say that it can."),
  TIE_OFF_CANDIDATE(
      "tie-off-candidate",
      Severity.WARNING,
      "No tie-off hole is stated, and likely ones are taken for it."),
  CROSSES_UNUSUAL(
      "crosses-unusual", Severity.WARNING, "The number of crosses is unusual for the game."),
  CROSSES_SKEWED("crosses-skewed", Severity.WARNING, "A cross lies askew."),
  CROSSES_SPACING(
      "crosses-spacing", Severity.WARNING, "Two crosses are too near together or too far apart."),
  CROSSES_SKIP_IDLE(
      "crosses-skip-idle", Severity.WARNING, "A skipped hole is one that no cross could take."),

  // Tie-off holes.
  TIE_OFF_FEW("tie-off-few", Severity.WARNING, "There are too few places for knots."),
  TIE_OFF_FULL("tie-off-full", Severity.WARNING, "A tie-off hole has no room for a knot."),
  TIE_OFF_NO_ANCHOR(
      "tie-off-no-anchor", Severity.WARNING, "No string runs through a tie-off hole."),
  TIE_OFF_ONE_SIDE(
      "tie-off-one-side", Severity.WARNING, "All tie-off holes are on one side of the frame."),

  SPAN_ALONE("span-alone", Severity.WARNING, "A main or a cross meets no other string."),

  // Start, direction and route.
  HEAD_ZONE_HOLE("head-zone-hole", Severity.ERROR, "The head zone's last hole is not at the head."),
  HEAD_ZONE_SHORT(
      "head-zone-short", Severity.WARNING, "The head zone ends before the outermost main."),
  MAINS_END_THROAT(
      "mains-end-throat",
      Severity.WARNING,
      "One piece from the head down is asked for, and the mains end at the throat."),
  DIRECTION_UPWARD(
      "direction-upward", Severity.NOTE, "The maker asks for crosses from the throat up."),
  ROUTE_UNKNOWN(
      "route-unknown", Severity.NOTE, "Whether a route exists was not found out within the limit."),
  ROUTE_HARD(
      "route-hard", Severity.NOTE, "Even the best route has many passes through covered holes."),
  ROUTE_LONG_RUN("route-long-run", Severity.NOTE, "The best route has a run as long as the limit."),
  ROUTE_DOUBLED("route-doubled", Severity.NOTE, "Even the best route lays many runs over others."),
  MAINS_START_INFERRED(
      "mains-start-inferred",
      Severity.NOTE,
      "The end at which the mains may start has been worked out."),
  DETOUR(
      "detour",
      Severity.NOTE,
      "A blocked hole can be worked round, and this is the nearest pattern that does."),
  DETOUR_NONE("detour-none", Severity.NOTE, "A blocked hole cannot be worked round."),
  NO_ROUTE("no-route", Severity.ERROR, "No route exists."),
  HALF_DONE("half-done", Severity.NOTE, "Something about a half-done job is worth knowing."),
  ROUTE_OBSTACLE(
      "route-obstacle", Severity.NOTE, "A fact helps, with others, to forbid every route."),
  MAKER_DEPARTURE(
      "maker-departure", Severity.WARNING, "The plan departs from what the frame's maker asks."),
  START_CLAMP_HEAD_ZONE(
      "start-clamp-head-zone",
      Severity.WARNING,
      "A starting clamp is set outside in the head zone."),
  START_CLAMP_SLIPS(
      "start-clamp-slips",
      Severity.NOTE,
      "The starting clamp does not hold the string, so the mains start without it."),
  START_CLAMP_REFUSED(
      "start-clamp-refused",
      Severity.WARNING,
      "A starting clamp is called for and cannot be set there."),
  CLAMP_AWAY(
      "clamp-away", Severity.NOTE, "A clamp is set away from the frame to leave crosses open."),

  CLAMP_MAY_SLIP(
      "clamp-may-slip", Severity.WARNING, "A clamp bears as much as it has let this string go at."),
  CLAMP_UNTESTED("clamp-untested", Severity.NOTE, "A clamp bears more than it was tested to hold."),
  CLAMP_NOT_CLEANED(
      "clamp-not-cleaned",
      Severity.WARNING,
      "A clamp has slipped and was not cleaned and tested again."),
  CLAMP_ALONE(
      "clamp-alone", Severity.WARNING, "A floating clamp finds no tight neighbour to bite."),
  MARK_ON_BEND(
      "mark-on-bend",
      Severity.WARNING,
      "The starting clamp's mark may end on a bend in the head zone."),
  ANCHOR_WEAKER(
      "anchor-weaker", Severity.WARNING, "A knot is tied round the weaker string of a hybrid."),

  // String.
  STRING_SHORT("string-short", Severity.WARNING, "There is too little string at hand."),
  STRING_TIGHT("string-tight", Severity.NOTE, "The string at hand may just be enough."),

  // Tension.
  TENSION_RANGE("tension-range", Severity.ERROR, "The tension range is empty."),
  TENSION_ABOVE_MAX("tension-above-max", Severity.WARNING, "A pull is above the maker's limit."),
  TENSION_BELOW_MIN("tension-below-min", Severity.NOTE, "A pull is below the maker's range."),
  TENSION_UNUSUAL(
      "tension-unusual", Severity.WARNING, "The range of tension is unusual for the game."),
  TENSION_WIDE("tension-wide", Severity.WARNING, "The range of tension is too wide to mean much."),

  // Governing bodies.
  RULE_SIZE("rule-size", Severity.WARNING, "A dimension is beyond the game's rules."),
  PATTERN_THIN_CENTRE(
      "pattern-thin-centre", Severity.WARNING, "The strings are less dense in the centre."),
  PATTERN_NOT_UNIFORM(
      "pattern-not-uniform", Severity.WARNING, "The pattern is not generally uniform."),

  // A fault of ours.
  RULE_CRASHED("rule-crashed", Severity.ERROR, "A rule of Hoopwright's own crashed.");

  private final String code;
  private final Severity severity;
  private final String summary;

  FindingCode(String code, Severity severity, String summary) {
    this.code = code;
    this.severity = severity;
    this.summary = summary;
  }

  /** The stable code in kebab-case. */
  public String code() {
    return code;
  }

  /** How grave a finding of this kind is. */
  public Severity severity() {
    return severity;
  }

  /** What findings of this kind say, without values. */
  public String summary() {
    return summary;
  }
}
