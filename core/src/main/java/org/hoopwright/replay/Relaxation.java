package org.hoopwright.replay;

import java.util.Map;
import java.util.TreeMap;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.frame.Layout;
import org.hoopwright.material.Material;

/**
 * What string loses by itself after the job: a term of its own, which no other estimate holds.
 * Published numbers are few and disagree, so it is a wide range.
 */
public final class Relaxation {

  private Relaxation() {}

  /**
   * The share of its tension that a string loses in its first day, off the machine and not played.
   *
   * <p>Sources: 8 to 12 % (stringer blog "True confessions of a tension loss snob", 2009/01), 8.95
   * % on average (stringer blog, about 90 measured jobs, 2011/08), 10 % or more (racket-service
   * page "Tension / Gauge"); polyester 13 to 20 % (stringer blog "Should poly-based strings be
   * prestretched", 2009/11). That the first range is taken for every other material is our choice.
   */
  public static Interval firstDay(Material material) {
    return material == Material.POLYESTER ? new Interval(0.13, 0.20) : new Interval(0.08, 0.12);
  }

  /**
   * What each span carries a day after the job.
   *
   * @param plan the plan
   * @param spans what each span carries when the job is done, in newtons
   */
  public static Map<SpanId, Interval> afterFirstDay(BenchPlan plan, Map<SpanId, Interval> spans) {
    Layout layout = plan.bed().layout();
    Interval mains = firstDay(plan.job().mainsString(layout).material());
    Interval crosses = firstDay(plan.job().crossesString(layout).material());
    Map<SpanId, Interval> later = new TreeMap<>();
    spans.forEach(
        (span, now) -> {
          Interval loss = span.isMain() ? mains : crosses;
          later.put(
              span, new Interval(now.low() * (1 - loss.high()), now.high() * (1 - loss.low())));
        });
    return later;
  }
}
