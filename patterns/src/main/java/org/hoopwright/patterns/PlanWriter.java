package org.hoopwright.patterns;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hoopwright.Plan;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Crossing;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.StringNeed;
import org.hoopwright.replay.Estimates;
import org.hoopwright.replay.Interval;
import org.hoopwright.route.LaidRuns;

/**
 * Writes plans as {@code hoopwright/plan-1}, the JSON that other programs read. Plan and layout
 * together are enough to replay the job.
 *
 * <p>Lengths and coordinates are in mm, forces in N, both with one decimal, rounded to the nearest
 * tenth, a half away from zero; so a written total may differ by a few tenths from the sum of its
 * written parts. Parameters of estimates have up to six decimals. An estimate is {@code [low,
 * high]}. Members stand in a fixed order, two-space indent, {@code \n} at line ends; every hole,
 * span, pass, step and cross of the weave has a line of its own. The same plan gives the same bytes
 * in every locale and on every machine. Characters that do not show are escaped.
 *
 * <p>What a caller left open is left out: {@code sha256} without a layout file, {@code direction},
 * {@code mainsStart}, {@code start} and {@code anchorSide} of the options, the {@code maker} rank
 * of a layout that asks for nothing, a start's {@code clampOutside} and {@code mark} when it has
 * none, {@code stringAtHand} and {@code string} when nothing is said of what is at hand. A bench
 * that is not the usual one has its sizes in the options too.
 */
public final class PlanWriter {

  /** The format of a plan. */
  public static final String FORMAT = "hoopwright/plan-1";

  private PlanWriter() {}

  /**
   * A plan with all its steps.
   *
   * @param plan the plan
   * @param layoutSha256 the SHA-256 of the layout file's bytes in hex digits; empty for a layout
   *     built in code
   */
  public static String write(Plan plan, Optional<String> layoutSha256) {
    return write(plan, layoutSha256, false);
  }

  /**
   * A plan with all its steps.
   *
   * @param plan the plan
   * @param layoutSha256 the SHA-256 of the layout file's bytes in hex digits; empty for a layout
   *     built in code
   * @param forces whether the plan has its {@code forces} after each step
   */
  public static String write(Plan plan, Optional<String> layoutSha256, boolean forces) {
    return json(plan, layoutSha256, true, forces).document();
  }

  /**
   * Several plans as {@code {"plans": [ … ]}}, in the order given.
   *
   * @param plans the plans
   * @param layoutSha256 the SHA-256 of the layout file's bytes in hex digits; empty for a layout
   *     built in code
   * @param steps whether each plan has its {@code steps}
   */
  public static String writeAll(List<Plan> plans, Optional<String> layoutSha256, boolean steps) {
    return JsonLines.object()
        .put("plans", JsonLines.lines(plans, p -> json(p, layoutSha256, steps, false)))
        .end()
        .document();
  }

  private static JsonLines json(
      Plan plan, Optional<String> layoutSha256, boolean steps, boolean forces) {
    BenchPlan bench = plan.bench();
    Bed bed = bench.bed();
    LaidRuns laid = LaidRuns.of(bed, bench.route());
    JsonLines.Members layout = JsonLines.lineObject().put("name", bed.layout().name());
    layoutSha256.ifPresent(sha -> layout.put("sha256", sha));
    JsonLines.Members all =
        JsonLines.object()
            .put("format", FORMAT)
            .put("layout", layout.end())
            .put("options", OptionsJson.of(bench.job(), bed.layout()))
            .put("holes", holes(bed))
            .put("spans", JsonLines.lines(bed.spans(), PlanWriter::span))
            .put("route", RouteJson.route(plan, laid))
            .put("pieces", RouteJson.pieces(bench));
    List<StringNeed> needs = StringNeed.of(bench);
    if (!needs.isEmpty()) {
      all.put("string", JsonLines.lines(needs, PlanWriter::need));
    }
    bench.start().ifPresent(start -> all.put("start", RouteJson.start(start)));
    all.put("weave", weave(bed));
    if (steps) {
      all.put("steps", JsonLines.lines(StepJson.of(1, bench.steps(), laid)));
    }
    all.put("estimates", estimates(plan.estimates()));
    if (forces) {
      all.put("forces", ForcesJson.of(bench));
    }
    return all.put("cautions", JsonLines.lines(plan.cautions(), JsonLines::text))
        .put("findings", JsonLines.lines(plan.findings(), FindingJson::of))
        .end();
  }

  private static JsonLines need(StringNeed need) {
    return JsonLines.lineObject()
        .put("pieces", JsonLines.line(need.pieces().stream().map(JsonLines::number).toList()))
        .put(
            "need",
            JsonLines.line(
                List.of(JsonLines.tenths(need.leastMm()), JsonLines.tenths(need.mostMm()))))
        .put("atHand", JsonLines.tenths(need.atHandMm()))
        .put("verdict", need.verdict().word())
        .put("jobs", need.jobs())
        .end();
  }

  private static JsonLines holes(Bed bed) {
    JsonLines.Members holes = JsonLines.object();
    bed.positions()
        .forEach(
            (hole, p) ->
                holes.put(
                    hole.toString(),
                    JsonLines.line(List.of(JsonLines.tenths(p.x()), JsonLines.tenths(p.y())))));
    return holes.end();
  }

  private static JsonLines span(Span span) {
    return JsonLines.lineObject()
        .put("id", span.id())
        .put("from", span.from())
        .put("to", span.to())
        .put("length", JsonLines.tenths(span.lengthMm()))
        .end();
  }

  /** For each cross the mains that it meets from left to right: whether it goes over or under. */
  private static JsonLines weave(Bed bed) {
    JsonLines.Members weave = JsonLines.object();
    for (Span cross : bed.crosses()) {
      JsonLines.Members mains = JsonLines.lineObject();
      for (Crossing c : bed.crossings(cross.id())) {
        mains.put(c.main().toString(), c.crossOver() ? "over" : "under");
      }
      weave.put(cross.id().toString(), mains.end());
    }
    return weave.end();
  }

  private static JsonLines estimates(Estimates e) {
    JsonLines.Members parameters = JsonLines.object();
    e.parameters()
        .forEach(
            (name, i) ->
                parameters.put(
                    name,
                    JsonLines.line(
                        List.of(JsonLines.precise(i.low()), JsonLines.precise(i.high())))));
    JsonLines.Members spans = JsonLines.object();
    for (Map.Entry<SpanId, Interval> entry : e.spanTension().entrySet()) {
      spans.put(entry.getKey().toString(), RouteJson.interval(entry.getValue()));
    }
    return JsonLines.object()
        .put("parameters", parameters.end())
        .put("spanTension", spans.end())
        .put("clampPeak", peaks(e.clampPeak()))
        .put("hoopPeak", peaks(e.hoopPeak()))
        .end();
  }

  private static JsonLines peaks(Map<String, Interval> peaks) {
    JsonLines.Members members = JsonLines.object();
    peaks.forEach((name, i) -> members.put(name, RouteJson.interval(i)));
    return members.end();
  }
}
