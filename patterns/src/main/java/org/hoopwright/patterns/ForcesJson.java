package org.hoopwright.patterns;

import java.util.Map;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.replay.ForceHistory;
import org.hoopwright.replay.Interval;
import org.hoopwright.replay.StepForces;

/** The {@code forces} of a plan: what is borne after each step that changes it. */
final class ForcesJson {

  private ForcesJson() {}

  static JsonLines of(BenchPlan plan) {
    return JsonLines.lines(ForceHistory.of(plan).steps(), ForcesJson::step);
  }

  private static JsonLines step(StepForces s) {
    JsonLines.Members spans = JsonLines.lineObject();
    s.spans().forEach((span, i) -> spans.put(span.toString(), RouteJson.interval(i)));
    JsonLines.Members knots = JsonLines.lineObject();
    s.knots().forEach((end, i) -> knots.put(end.word(), RouteJson.interval(i)));
    JsonLines.Members clamps = JsonLines.lineObject();
    for (Map.Entry<String, Interval> e : s.clamps().entrySet()) {
      clamps.put(e.getKey(), RouteJson.interval(e.getValue()));
    }
    JsonLines.Members forces =
        JsonLines.lineObject()
            .put("n", s.step())
            .put("spans", spans.end())
            .put("clamps", clamps.end());
    if (!s.together().isEmpty()) {
      JsonLines.Members together = JsonLines.lineObject();
      s.together().forEach((clamp, i) -> together.put(clamp, RouteJson.interval(i)));
      forces.put("together", together.end());
    }
    return forces
        .put("knots", knots.end())
        .put("along", RouteJson.interval(s.along()))
        .put("across", RouteJson.interval(s.across()))
        .put("rightMinusLeft", RouteJson.interval(s.rightMinusLeft()))
        .end();
  }
}
