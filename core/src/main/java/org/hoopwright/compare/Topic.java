package org.hoopwright.compare;

/**
 * What a difference is about. The word is the member of the layout or plan file that says it;
 * {@code bed} and {@code routes} are what follows from a layout.
 */
public enum Topic {
  /** The layout's name. */
  NAME("name", Part.LAYOUT),
  /** The game. */
  GAME("game", Part.LAYOUT),
  /** The unit of lengths in the file. */
  UNITS("units", Part.LAYOUT),
  /** The frame's size in all. */
  FRAME("frame", Part.LAYOUT),
  /** The inside of the hoop. */
  HOOP("hoop", Part.LAYOUT),
  /** Holes counted from the head. */
  HOLES_HEAD("holes.head", Part.LAYOUT),
  /** Holes counted from the throat. */
  HOLES_THROAT("holes.throat", Part.LAYOUT),
  /** A tie-off hole. */
  TIE_OFF("holes.tieOff", Part.LAYOUT),
  /** A shared hole. */
  SHARED("holes.shared", Part.LAYOUT),
  /** A blocked hole. */
  BLOCKED("holes.blocked", Part.LAYOUT),
  /** How many strings a hole takes. */
  BORE("holes.bore", Part.LAYOUT),
  /** The stated place of a hole. */
  AT("holes.at", Part.LAYOUT),
  /** A stretch that no run may pass. */
  NO_RUN("holes.noRun", Part.LAYOUT),
  /** How many mains. */
  MAINS_COUNT("mains.count", Part.LAYOUT),
  /** A hole that the mains leave out, or whether these are stated. */
  MAINS_SKIP("mains.skip", Part.LAYOUT),
  /** A measured distance of a main. */
  MAINS_OFFSETS("mains.offsets", Part.LAYOUT),
  /** The end where the mains start. */
  MAINS_START("mains.start", Part.LAYOUT),
  /** The short side that is asked for. */
  SHORT_SIDE("mains.shortSide", Part.LAYOUT),
  /** How many crosses. */
  CROSSES_COUNT("crosses.count", Part.LAYOUT),
  /** A hole that the crosses leave out. */
  CROSSES_SKIP("crosses.skip", Part.LAYOUT),
  /** A measured distance of a cross. */
  CROSSES_OFFSETS("crosses.offsets", Part.LAYOUT),
  /** The holes of the first cross. */
  CROSSES_FIRST("crosses.first", Part.LAYOUT),
  /** The holes of the last cross. */
  CROSSES_LAST("crosses.last", Part.LAYOUT),
  /** The direction of the crosses that is asked for. */
  DIRECTION("crosses.direction", Part.LAYOUT),
  /** The side where the crosses are to start. */
  START_SIDE("crosses.startSide", Part.LAYOUT),
  /** The number of pieces that is asked for. */
  PIECES("pieces", Part.LAYOUT),
  /** Whether around-the-world is allowed. */
  AROUND_THE_WORLD("aroundTheWorld", Part.LAYOUT),
  /** The end of the head zone. */
  HEAD_ZONE("headZone", Part.LAYOUT),
  /** The reference tension that is allowed. */
  TENSION("tension", Part.LAYOUT),
  /** Whether there is a bed at all. */
  BED("bed", Part.BED),
  /** Which holes a span runs between. */
  BED_SPAN("bed.span", Part.BED),
  /** Where holes lie, once all that is stated has been worked out. */
  BED_HOLES("bed.holes", Part.BED),
  /** How many orders of passes the rules allow. */
  ROUTES("routes", Part.ROUTES),
  /** One order of passes. */
  ROUTES_ORDER("routes.order", Part.ROUTES),
  /** How many pieces of string a route has. */
  ROUTE_PIECES("route.pieces", Part.ROUTE),
  /** The families of a route. */
  ROUTE_FAMILY("route.family", Part.ROUTE),
  /** The end where its mains start. */
  ROUTE_MAINS_START("route.mainsStart", Part.ROUTE),
  /** The direction of its crosses. */
  ROUTE_DIRECTION("route.direction", Part.ROUTE),
  /** Its short side. */
  ROUTE_SHORT_SIDE("route.shortSide", Part.ROUTE),
  /** The passes of one of its ends. */
  ROUTE_PASSES("route.passes", Part.ROUTE),
  /** The knot of one of its ends. */
  ROUTE_KNOT("route.finish", Part.ROUTE),
  /** A starting clamp that holds its crosses first. */
  ROUTE_BEGIN("route.begin", Part.ROUTE),
  /** What its ranking looks at. */
  ROUTE_RANK("route.rank", Part.ROUTE),
  /** A covered hole. */
  ROUTE_COVERED("route.covered", Part.ROUTE),
  /** Its doubled runs. */
  ROUTE_RUNS("route.runs", Part.ROUTE),
  /** What was asked: tensions, string, bench and limits. */
  OPTIONS("options", Part.PLAN),
  /** How the mains start. */
  START("start", Part.PLAN),
  /** What is cut for a piece. */
  CUT_LENGTH("pieces.cutLength", Part.PLAN),
  /** What an end of string needs. */
  END_LENGTH("pieces.length", Part.PLAN),
  /** How often the tensioner pulls. */
  PULLS("steps.pull", Part.PLAN),
  /** The most that a clamp bears. */
  CLAMP_PEAK("estimates.clampPeak", Part.PLAN),
  /** The most that squeezes the hoop. */
  HOOP_PEAK("estimates.hoopPeak", Part.PLAN);

  /** What part of the job a topic belongs to. */
  public enum Part {
    /** What a layout states. */
    LAYOUT,
    /** What follows for the bed. */
    BED,
    /** Which orders of passes the rules allow. */
    ROUTES,
    /** One route: of a plan, or the best of a layout. */
    ROUTE,
    /** What a plan has beyond its route. */
    PLAN
  }

  private final String word;
  private final Part part;

  Topic(String word, Part part) {
    this.word = word;
    this.part = part;
  }

  /** The part of the job that it belongs to. */
  public Part part() {
    return part;
  }

  /** The word, such as {@code holes.tieOff}. */
  public String word() {
    return word;
  }
}
