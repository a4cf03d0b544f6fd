package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.Cautions;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.WayOn;
import org.hoopwright.route.LaidRuns;

/**
 * Writes the ways on from a half-done job as {@code hoopwright/ways-1}, the JSON that other
 * programs read: everything that {@link WaysSheet} says, and the steps of every way.
 *
 * <p>Lengths in mm and forces in N, both with one decimal. Members stand in a fixed order,
 * two-space indent, {@code \n} at line ends. The same ways give the same bytes on every machine.
 */
public final class WaysWriter {

  /** The format of ways on. */
  public static final String FORMAT = "hoopwright/ways-1";

  private WaysWriter() {}

  /**
   * The ways on.
   *
   * @param layout the layout on which it was strung, as it was read
   * @param on the layout to go on with; empty when it is the same
   * @param ways the ways, best first
   */
  public static String write(ReadResult layout, Optional<ReadResult> on, List<WayOn> ways) {
    JsonLines.Members all = JsonLines.object().put("format", FORMAT).put("layout", file(layout));
    on.ifPresent(next -> all.put("on", file(next)));
    return all.put("cautions", JsonLines.lines(Cautions.USUAL, JsonLines::text))
        .put("ways", JsonLines.lines(ways, WaysWriter::way))
        .end()
        .document();
  }

  private static JsonLines file(ReadResult read) {
    return JsonLines.lineObject()
        .put("name", read.layout().map(l -> l.name()).orElse(""))
        .put("sha256", read.sha256())
        .end();
  }

  private static JsonLines way(WayOn way) {
    BenchPlan plan = way.goOn();
    LaidRuns laid = LaidRuns.of(plan.bed(), plan.route());
    int undoing = way.undo().size();
    List<JsonLines> undo = new ArrayList<>();
    for (int i = 0; i < undoing; i++) {
      undo.add(StepJson.of(i + 1, way.undo().get(i), Optional.empty()));
    }
    return JsonLines.object()
        .put("say", WaysSheet.say(way))
        .put("spansUndone", way.spansUndone())
        .put("undone", JsonLines.names(way.undone()))
        .put("cutOut", JsonLines.line(way.piecesCutOut().stream().map(JsonLines::number).toList()))
        .put("newString", JsonLines.tenths(way.newStringMm()))
        .put("bridged", JsonLines.names(way.bridged()))
        .put("unmeasured", JsonLines.names(way.unmeasured().stream().map(e -> e.word()).toList()))
        .put("wishesMissed", way.wishesMissed())
        .put("route", RouteJson.route(plan.route(), laid))
        .put("pieces", RouteJson.pieces(plan))
        .put("undo", JsonLines.lines(undo))
        .put("steps", JsonLines.lines(StepJson.of(1 + undoing, plan.steps(), laid)))
        .put("findings", JsonLines.lines(way.findings(), FindingJson::of))
        .end();
  }
}
