package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.Plan;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.EndLength;
import org.hoopwright.bench.Start;
import org.hoopwright.frame.Layout;
import org.hoopwright.replay.Interval;
import org.hoopwright.route.CoveredHole;
import org.hoopwright.route.Knot;
import org.hoopwright.route.LaidRuns;
import org.hoopwright.route.Pass;
import org.hoopwright.route.Piece;
import org.hoopwright.route.Route;
import org.hoopwright.route.RouteNotation;
import org.hoopwright.route.RoutePreference;
import org.hoopwright.route.RoutePreferences;
import org.hoopwright.route.StringEnd;

/** The {@code route}, {@code pieces} and {@code start} of a plan. */
final class RouteJson {

  private RouteJson() {}

  static JsonLines route(Plan plan, LaidRuns laid) {
    Route route = plan.bench().route();
    JsonLines.Members members =
        form(route).put("rank", rank(plan.bench())).put("why", plan.ranked().why());
    return outside(members, route, laid);
  }

  /** A route that stands in no ranking, with its line of notation. */
  static JsonLines route(Route route, LaidRuns laid) {
    return outside(form(route).put("line", RouteNotation.of(route)), route, laid);
  }

  private static JsonLines.Members form(Route route) {
    return JsonLines.object()
        .put("family", JsonLines.names(route.families().stream().map(f -> f.word()).toList()))
        .put("mainsStart", route.mainsStart().word())
        .put("direction", route.direction().word())
        .put("shortSide", OptionsJson.word(route.shortSide()));
  }

  /** What lies on the frame's outside and in holes. */
  private static JsonLines outside(JsonLines.Members members, Route route, LaidRuns laid) {
    return members
        .put("covered", JsonLines.lines(route.measures().coveredHoles(), RouteJson::covered))
        .put("runs", runs(laid))
        .put("sharedHoles", sharedHoles(laid))
        .end();
  }

  /** The runs that share a stretch with another. */
  private static JsonLines runs(LaidRuns laid) {
    return JsonLines.lines(
        laid.meeting(),
        l ->
            JsonLines.lineObject()
                .put("run", l.run())
                .put("from", l.run().from())
                .put("to", l.run().to())
                .put("half", l.half().word())
                .put("beside", JsonLines.names(l.beside()))
                .put("upon", JsonLines.names(l.upon()))
                .end());
  }

  private static JsonLines sharedHoles(LaidRuns laid) {
    return JsonLines.lines(
        laid.holes().entrySet(),
        hole ->
            JsonLines.lineObject()
                .put("hole", hole.getKey())
                .put(
                    "faceToBack",
                    JsonLines.names(hole.getValue().stream().map(LaidRuns.InHole::name).toList()))
                .end());
  }

  /** What each preference says of the route; numbers where it is one. */
  private static JsonLines rank(BenchPlan bench) {
    JsonLines.Members rank = JsonLines.lineObject();
    for (RoutePreference p : bench.job().routes().preferences()) {
      if (p.name().equals(RoutePreferences.MAKER.name())
          && !asksForSomething(bench.bed().layout())) {
        continue;
      }
      String value = p.show(bench.route(), bench.bed());
      rank.put(
          p.name(),
          value.matches("-?[0-9]{1,18}")
              ? JsonLines.number(Long.parseLong(value))
              : JsonLines.text(value));
    }
    return rank.end();
  }

  /** Whether the frame's maker asks for anything that a route may depart from. */
  static boolean asksForSomething(Layout layout) {
    return layout.direction().isPresent()
        || layout.pieces().isPresent()
        || layout.shortSide().isPresent()
        || layout.startSide().isPresent();
  }

  private static JsonLines covered(CoveredHole c) {
    return JsonLines.lineObject()
        .put("hole", c.hole())
        .put("for", c.span())
        .put("keepOpen", c.keepOpen().word())
        .end();
  }

  static JsonLines pieces(BenchPlan bench) {
    List<JsonLines> pieces = new ArrayList<>();
    for (int i = 0; i < bench.route().pieces().size(); i++) {
      Piece piece = bench.route().pieces().get(i);
      int index = i;
      pieces.add(
          JsonLines.object()
              .put("role", piece.role().word())
              .put("cutLength", JsonLines.tenths(bench.cutLengthsMm().get(i)))
              .put("ends", JsonLines.lines(piece.ends(), e -> end(bench, index, e)))
              .end());
    }
    return JsonLines.lines(pieces);
  }

  private static JsonLines end(BenchPlan bench, int piece, StringEnd end) {
    JsonLines.Members members =
        JsonLines.object()
            .put("name", end.name().word())
            .put("passes", JsonLines.lines(end.passes(), RouteJson::pass));
    bench.lengths().stream()
        .filter(l -> l.piece() == piece && l.end() == end.name())
        .findFirst()
        .ifPresent(l -> members.put("length", length(l)));
    end.startingClamp()
        .ifPresent(
            hole ->
                members.put(
                    "begin",
                    JsonLines.lineObject().put("kind", "starting-clamp").put("hole", hole).end()));
    return members.put("finish", knot(end.finish())).end();
  }

  private static JsonLines pass(Pass pass) {
    return JsonLines.lineObject()
        .put("span", pass.span())
        .put("from", pass.from())
        .put("to", pass.to())
        .end();
  }

  private static JsonLines length(EndLength l) {
    return JsonLines.lineObject()
        .put("total", JsonLines.tenths(l.totalMm()))
        .put("spans", JsonLines.tenths(l.spansMm()))
        .put("runs", JsonLines.tenths(l.runsMm()))
        .put("frame", JsonLines.tenths(l.frameMm()))
        .put("knot", JsonLines.tenths(l.knotMm()))
        .put("reach", JsonLines.tenths(l.reachMm()))
        .put("stretch", JsonLines.tenths(l.stretchMm()))
        .end();
  }

  private static JsonLines knot(Knot knot) {
    return JsonLines.lineObject()
        .put("kind", knot.kind().word())
        .put("hole", knot.hole())
        .put("anchor", knot.anchor())
        .end();
  }

  static JsonLines start(Start start) {
    JsonLines.Members members =
        JsonLines.object().put("method", start.method().word()).put("anchor", start.anchor());
    start
        .clampOutside()
        .ifPresent(
            hole ->
                members.put(
                    "clampOutside",
                    JsonLines.lineObject().put("end", hole.end().word()).put("hole", hole).end()));
    start
        .mark()
        .ifPresent(
            mark ->
                members.put(
                    "mark",
                    JsonLines.lineObject()
                        .put("at", JsonLines.names(mark.at().stream().map(s -> s.word()).toList()))
                        .put("between", JsonLines.names(List.of(mark.from(), mark.to())))
                        .put("distance", interval(new Interval(mark.lowMm(), mark.highMm())))
                        .end()));
    return members.end();
  }

  static JsonLines interval(Interval i) {
    return JsonLines.line(List.of(JsonLines.tenths(i.low()), JsonLines.tenths(i.high())));
  }
}
