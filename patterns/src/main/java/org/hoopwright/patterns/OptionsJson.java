package org.hoopwright.patterns;

import org.hoopwright.bench.Bench;
import org.hoopwright.bench.ClampUse;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.StringAtHand;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.hoopwright.material.StringSpec;
import org.hoopwright.route.RouteRequest;

/** The {@code options} of a plan: what was asked, with what was left open filled in. */
final class OptionsJson {

  private OptionsJson() {}

  static JsonLines of(Job job, Layout layout) {
    RouteRequest routes = job.routes();
    Bench bench = job.bench();
    JsonLines.Members options = JsonLines.object();
    routes
        .pieces()
        .ifPresentOrElse(n -> options.put("pieces", n), () -> options.put("pieces", "either"));
    options
        .put("mainsTension", JsonLines.tenths(job.mainsTension(layout).newtons()))
        .put("crossesTension", JsonLines.tenths(job.crossesTension(layout).newtons()))
        .put("lastPullExtra", JsonLines.tenths(job.lastPullExtra().newtons()))
        .put("runLimit", routes.runLimit())
        .put("knotLimit", routes.knotLimit())
        .put("leadLimit", job.leadLimit())
        .put("machineClamps", bench.machineClamps())
        .put("startingClamps", bench.startingClamps());
    string(options, job.mainsString(layout), job.crossesString(layout));
    routes.direction().ifPresent(d -> options.put("direction", d.word()));
    routes.mainsStart().ifPresent(e -> options.put("mainsStart", e.word()));
    job.startMethod().ifPresent(m -> options.put("start", m.word()));
    job.anchorMain().ifPresent(k -> options.put("anchorMain", k.intValue()));
    job.anchorSide().ifPresent(s -> options.put("anchorSide", word(s)));
    if (job.backUp() != ClampUse.AS_NEEDED) {
      options.put("backUp", job.backUp().word());
    }
    if (job.thirdClamp() != ClampUse.AS_NEEDED) {
      options.put("thirdClamp", job.thirdClamp().word());
    }
    if (job.clampInHeadZoneAllowed()) {
      options.put("clampInHeadZone", JsonLines.truth(true));
    }
    job.stringAtHand().ifPresent(s -> options.put("stringAtHand", atHand(s)));
    unusualSizes(options, bench);
    return options.end();
  }

  private static void string(JsonLines.Members options, StringSpec mains, StringSpec crosses) {
    if (mains.equals(crosses)) {
      options.put("gauge", mains.gauge().word()).put("material", mains.material().word());
    } else {
      options
          .put("gauge", each(mains.gauge().word(), crosses.gauge().word()))
          .put("material", each(mains.material().word(), crosses.material().word()));
    }
  }

  private static JsonLines atHand(StringAtHand string) {
    JsonLines mains = JsonLines.tenths(string.mainsMm());
    return string.crossesMm().isEmpty()
        ? mains
        : JsonLines.lineObject()
            .put("mains", mains)
            .put("crosses", JsonLines.tenths(string.crossesMm().getAsDouble()))
            .end();
  }

  private static JsonLines each(String mains, String crosses) {
    return JsonLines.lineObject().put("mains", mains).put("crosses", crosses).end();
  }

  /** Sizes that a replay needs to know when they are not the usual ones. */
  private static void unusualSizes(JsonLines.Members options, Bench bench) {
    Bench usual = Bench.standard();
    if (differs(bench.clampLengthMm(), usual.clampLengthMm())) {
      options.put("clampLength", JsonLines.tenths(bench.clampLengthMm()));
    }
    if (differs(bench.clampDistanceMm(), usual.clampDistanceMm())) {
      options.put("clampDistance", JsonLines.tenths(bench.clampDistanceMm()));
    }
    if (differs(bench.reachMm(), usual.reachMm())) {
      options.put("reach", JsonLines.tenths(bench.reachMm()));
    }
    if (bench.machineClampKind() != usual.machineClampKind()) {
      options.put("clamps", bench.machineClampKind().word());
    }
    if (bench.tensioner() != usual.tensioner()) {
      options.put("tensioner", bench.tensioner().word());
    }
  }

  private static boolean differs(double a, double b) {
    return Double.compare(a, b) != 0;
  }

  static String word(Side side) {
    return side == Side.LEFT ? "left" : "right";
  }
}
