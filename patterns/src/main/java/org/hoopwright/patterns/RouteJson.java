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
import org.hoopwright.route.Pass;
import org.hoopwright.route.Piece;
import org.hoopwright.route.Route;
import org.hoopwright.route.RoutePreference;
import org.hoopwright.route.RoutePreferences;
import org.hoopwright.route.StringEnd;

/** The {@code route}, {@code pieces} and {@code start} of a plan. */
final class RouteJson {

  private RouteJson() {}

  static JsonText route(Plan plan) {
    Route route = plan.bench().route();
    return JsonText.object()
        .put("family", JsonText.names(route.families().stream().map(f -> f.word()).toList()))
        .put("mainsStart", route.mainsStart().word())
        .put("direction", route.direction().word())
        .put("shortSide", OptionsJson.word(route.shortSide()))
        .put("rank", rank(plan.bench()))
        .put("why", plan.ranked().why())
        .put("covered", JsonText.lines(route.measures().coveredHoles(), RouteJson::covered))
        .end();
  }

  /** What each preference says of the route; numbers where it is one. */
  private static JsonText rank(BenchPlan bench) {
    JsonText.Members rank = JsonText.lineObject();
    for (RoutePreference p : bench.job().routes().preferences()) {
      if (p.name().equals(RoutePreferences.MAKER.name())
          && !asksForSomething(bench.bed().layout())) {
        continue;
      }
      String value = p.show(bench.route(), bench.bed());
      rank.put(
          p.name(),
          value.matches("-?[0-9]{1,18}")
              ? JsonText.number(Long.parseLong(value))
              : JsonText.text(value));
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

  private static JsonText covered(CoveredHole c) {
    return JsonText.lineObject()
        .put("hole", c.hole())
        .put("for", c.span())
        .put("keepOpen", c.keepOpen().word())
        .end();
  }

  static JsonText pieces(BenchPlan bench) {
    List<JsonText> pieces = new ArrayList<>();
    for (int i = 0; i < bench.route().pieces().size(); i++) {
      Piece piece = bench.route().pieces().get(i);
      int index = i;
      pieces.add(
          JsonText.object()
              .put("role", piece.role().word())
              .put("cutLength", JsonText.tenths(bench.cutLengthsMm().get(i)))
              .put("ends", JsonText.lines(piece.ends(), e -> end(bench, index, e)))
              .end());
    }
    return JsonText.lines(pieces);
  }

  private static JsonText end(BenchPlan bench, int piece, StringEnd end) {
    JsonText.Members members =
        JsonText.object()
            .put("name", end.name().word())
            .put("passes", JsonText.lines(end.passes(), RouteJson::pass));
    bench.lengths().stream()
        .filter(l -> l.piece() == piece && l.end() == end.name())
        .findFirst()
        .ifPresent(l -> members.put("length", length(l)));
    end.startingClamp()
        .ifPresent(
            hole ->
                members.put(
                    "begin",
                    JsonText.lineObject().put("kind", "starting-clamp").put("hole", hole).end()));
    return members.put("finish", knot(end.finish())).end();
  }

  private static JsonText pass(Pass pass) {
    return JsonText.lineObject()
        .put("span", pass.span())
        .put("from", pass.from())
        .put("to", pass.to())
        .end();
  }

  private static JsonText length(EndLength l) {
    return JsonText.lineObject()
        .put("total", JsonText.tenths(l.totalMm()))
        .put("spans", JsonText.tenths(l.spansMm()))
        .put("runs", JsonText.tenths(l.runsMm()))
        .put("frame", JsonText.tenths(l.frameMm()))
        .put("knot", JsonText.tenths(l.knotMm()))
        .put("reach", JsonText.tenths(l.reachMm()))
        .put("stretch", JsonText.tenths(l.stretchMm()))
        .end();
  }

  private static JsonText knot(Knot knot) {
    return JsonText.lineObject()
        .put("kind", knot.kind().word())
        .put("hole", knot.hole())
        .put("anchor", knot.anchor())
        .end();
  }

  static JsonText start(Start start) {
    JsonText.Members members =
        JsonText.object().put("method", start.method().word()).put("anchor", start.anchor());
    start
        .clampOutside()
        .ifPresent(
            hole ->
                members.put(
                    "clampOutside",
                    JsonText.lineObject().put("end", hole.end().word()).put("hole", hole).end()));
    start
        .mark()
        .ifPresent(
            mark ->
                members.put(
                    "mark",
                    JsonText.lineObject()
                        .put("at", JsonText.names(mark.at().stream().map(s -> s.word()).toList()))
                        .put("between", JsonText.names(List.of(mark.from(), mark.to())))
                        .put("distance", interval(new Interval(mark.lowMm(), mark.highMm())))
                        .end()));
    return members.end();
  }

  static JsonText interval(Interval i) {
    return JsonText.line(List.of(JsonText.tenths(i.low()), JsonText.tenths(i.high())));
  }
}
