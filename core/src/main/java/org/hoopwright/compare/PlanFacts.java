package org.hoopwright.compare;

import java.util.List;
import java.util.stream.Collectors;
import org.hoopwright.bed.Bed;
import org.hoopwright.bench.Bench;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.EndLength;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.Start;
import org.hoopwright.bench.Step;
import org.hoopwright.frame.Layout;
import org.hoopwright.material.StringSpec;
import org.hoopwright.replay.Estimates;
import org.hoopwright.replay.ForceEstimate;
import org.hoopwright.route.CoveredHole;
import org.hoopwright.route.LaidRuns;
import org.hoopwright.route.Piece;
import org.hoopwright.route.Route;
import org.hoopwright.route.RouteMeasures;
import org.hoopwright.route.RoutePreferences;
import org.hoopwright.route.StringEnd;
import org.hoopwright.units.Force;

/** What a route, and the bench plan of a route, says. */
final class PlanFacts {

  private final Bed bed;
  private final Route route;
  private final Facts facts = new Facts();

  private PlanFacts(Bed bed, Route route) {
    this.bed = bed;
    this.route = route;
  }

  /** What there is to say of a route alone. */
  static Facts of(Bed bed, Route route) {
    PlanFacts own = new PlanFacts(bed, route);
    own.route();
    return own.facts;
  }

  /** What there is to say of a whole plan. */
  static Facts of(BenchPlan plan) {
    PlanFacts own = new PlanFacts(plan.bed(), plan.route());
    own.route();
    own.options(plan.job(), plan.bed().layout());
    plan.start().ifPresent(own::start);
    own.lengths(plan);
    long pulls = plan.steps().stream().filter(s -> s instanceof Step.Pull).count();
    own.facts.add(Topic.PULLS, "pulls", pulls, "the pulls of the tensioner number", pulls);
    own.peaks(ForceEstimate.of(plan));
    return own.facts;
  }

  private void route() {
    String pieces = route.pieces().size() == 1 ? "one piece" : "two pieces";
    facts.add(
        Topic.ROUTE_PIECES, "pieces", route.pieces().size(), "the frame is strung", "in " + pieces);
    String family =
        route.families().isEmpty()
            ? "plain"
            : route.families().stream().map(f -> f.word()).collect(Collectors.joining(" and "));
    facts.add(Topic.ROUTE_FAMILY, "route", family, "the route is", family);
    facts.add(
        Topic.ROUTE_MAINS_START,
        "mains",
        route.mainsStart().word(),
        "the mains start",
        "at the " + route.mainsStart().word());
    facts.add(
        Topic.ROUTE_DIRECTION,
        "crosses",
        route.direction().word(),
        "the crosses go in",
        Show.direction(route.direction()));
    facts.add(
        Topic.ROUTE_SHORT_SIDE,
        "short side",
        Show.side(route.shortSide()),
        "the short side is",
        Show.side(route.shortSide()));
    for (Piece piece : route.pieces()) {
      piece.ends().forEach(this::end);
    }
    rank(route.measures());
    covered();
  }

  private void end(StringEnd end) {
    String name = Show.end(end.name());
    if (!end.passes().isEmpty()) {
      String passes = Show.passes(end.passes());
      facts.add(
          Topic.ROUTE_PASSES, name, passes, name + " strings", passes, "there is no such end");
    }
    String kind = end.finish().kind().word().replaceFirst("-knot$", " knot");
    String where = "in " + end.finish().hole() + " round " + end.finish().anchor();
    facts.add(
        Topic.ROUTE_KNOT,
        name,
        kind + " " + where,
        name + " has its " + kind,
        where,
        "there is no such end");
    end.startingClamp()
        .ifPresent(
            hole ->
                facts.add(
                    Topic.ROUTE_BEGIN,
                    name,
                    "starting clamp at " + hole,
                    name + " is held first",
                    "by a starting clamp at " + hole,
                    "it is not"));
  }

  private void rank(RouteMeasures m) {
    LaidRuns laid = LaidRuns.of(bed, route);
    counted(
        RoutePreferences.DEPARTURES.name(),
        m.departures(),
        "the departures from the plain order number");
    counted(
        RoutePreferences.COVERED.name(), m.covered(), "the passes that meet a covered hole number");
    counted(RoutePreferences.LONGEST_RUN.name(), m.longestRun() + " places", "the longest run is");
    counted(
        RoutePreferences.STRING.name(),
        m.stringMm() + " mm",
        "the string in the finished frame is");
    facts.add(
        Topic.ROUTE_RUNS,
        RoutePreferences.DOUBLED.name(),
        m.doubled(),
        "the runs that share a stretch with an earlier one number",
        m.doubled());
    facts.add(
        Topic.ROUTE_RUNS,
        RoutePreferences.STACKED.name(),
        laid.stacked(),
        "the pairs of runs one upon the other number",
        laid.stacked());
  }

  private void counted(String preference, Object value, String lead) {
    facts.add(Topic.ROUTE_RANK, preference, value, lead, value);
  }

  private void covered() {
    for (CoveredHole c : route.measures().coveredHoles()) {
      String how =
          switch (c.keepOpen()) {
            case SCRAP_STRING -> "with a scrap of string";
            case AWL -> "with an awl";
            case THREAD_FIRST -> "by threading that pass first";
          };
      facts.add(
          Topic.ROUTE_COVERED,
          c.hole() + " for " + c.span(),
          c.keepOpen().word(),
          c.hole() + ", covered when " + c.span() + " needs it, is kept open",
          how,
          "it is open");
    }
  }

  private void options(Job job, Layout layout) {
    tension("mains", job.mainsTension(layout), "the mains are pulled at");
    tension("crosses", job.crossesTension(layout), "the crosses are pulled at");
    tension("last pull", job.lastPullExtra(), "the last pull before a knot gets more by");
    string("string of the mains", job.mainsString(layout));
    string("string of the crosses", job.crossesString(layout));
    Bench bench = job.bench();
    option("machine clamps", bench.machineClamps());
    option("starting clamps", bench.startingClamps());
    option("kind of machine clamps", bench.machineClampKind().word());
    option("tensioner", bench.tensioner().word());
    option("use of a clamp behind another", job.backUp().word().replace('-', ' '));
    option("use of a third clamp", job.thirdClamp().word().replace('-', ' '));
    option("run limit", job.routes().runLimit());
    option("knot limit", job.routes().knotLimit());
    option("lead limit", job.leadLimit());
  }

  private void tension(String about, Force force, String lead) {
    String newtons = Show.rounded(force.newtons(), 1) + " N";
    facts.add(Topic.OPTIONS, about, newtons, lead, newtons);
  }

  private void string(String about, StringSpec string) {
    String is = string.material().word().replace('-', ' ') + ", gauge " + string.gauge().word();
    option(about, is);
  }

  private void option(String about, Object value) {
    facts.add(
        Topic.OPTIONS, about, value, "the " + about + (plural(about) ? " are" : " is"), value);
  }

  private static boolean plural(String about) {
    return about.endsWith("clamps") && !about.startsWith("kind");
  }

  private void start(Start start) {
    facts.add(
        Topic.START,
        "method",
        start.method().word(),
        "the method of the start is",
        start.method().word());
    facts.add(Topic.START, "anchor", start.anchor(), "the anchor main is", start.anchor());
    start
        .clampOutside()
        .ifPresent(
            hole ->
                facts.add(
                    Topic.START,
                    "starting clamp",
                    hole,
                    "the starting clamp sits outside",
                    "at " + hole,
                    "there is none"));
    start
        .mark()
        .ifPresent(
            mark -> {
              String where =
                  Show.rounded(mark.lowMm(), 0)
                      + " to "
                      + Show.rounded(mark.highMm(), 0)
                      + " mm from "
                      + mark.from()
                      + " towards "
                      + mark.to();
              facts.add(
                  Topic.START,
                  "mark",
                  where,
                  "the mark of the starting clamp ends",
                  where,
                  "there is none");
            });
  }

  private void lengths(BenchPlan plan) {
    for (int i = 0; i < route.pieces().size(); i++) {
      String piece =
          switch (route.pieces().get(i).role()) {
            case WHOLE -> "mains and crosses";
            case MAINS -> "mains";
            case CROSSES -> "crosses";
          };
      String mm = Show.rounded(plan.cutLengthsMm().get(i), 0) + " mm";
      facts.add(
          Topic.CUT_LENGTH,
          piece,
          mm,
          "the piece for the " + piece + " is cut at",
          mm,
          "there is no such piece");
    }
    for (EndLength l : plan.lengths()) {
      String mm = Show.rounded(l.totalMm(), 0) + " mm";
      facts.add(
          Topic.END_LENGTH,
          Show.end(l.end()),
          mm,
          Show.end(l.end()) + " needs",
          mm,
          "there is no such end");
    }
  }

  private void peaks(Estimates estimates) {
    estimates
        .clampPeak()
        .forEach(
            (clamp, load) ->
                facts.add(
                    Topic.CLAMP_PEAK,
                    clamp,
                    Show.newtons(load),
                    "the most that " + clamp + " bears is",
                    Show.newtons(load),
                    "it is not used"));
    for (String way : List.of("along", "across")) {
      var load = estimates.hoopPeak().get(way);
      if (load != null) {
        facts.add(
            Topic.HOOP_PEAK,
            way,
            Show.newtons(load),
            "the most that squeezes the hoop " + way + " is",
            Show.newtons(load));
      }
    }
  }
}
