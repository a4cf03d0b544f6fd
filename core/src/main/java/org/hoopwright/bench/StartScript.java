package org.hoopwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.Span;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.hoopwright.material.StringSpec;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Pass;
import org.hoopwright.units.Force;

/**
 * Writes the start of the mains: a shared pull, then one main at a time.
 *
 * <p>The anchor main is a1 or a2 of the anchor side, chosen so that its tail leaves at the throat
 * and a starting clamp never sits outside at the head. After the shared pull a machine clamp holds
 * it inside where the load will arrive and the starting clamp outside where its tail leaves; the
 * other side's mains are slipped out again; then a(k−1) … a1 are pulled over the centre loop, then
 * b1 and b2, then the anchor main itself.
 */
final class StartScript {

  /** Usual distance of a starting clamp from the hole's outer mouth, in mm: our choice. */
  private static final double OUTSIDE_MM = 12;

  /**
   * By how much the mark moves outwards when a 330 mm main gets its full pull, in mm: our choice of
   * range.
   */
  private static final double LEAST_SHIFT = 5.0 / 330.0;

  private static final double MOST_SHIFT = 15.0 / 330.0;

  /** How much of the string at a hole's outer mouth is a bend, in mm: our choice. */
  private static final double BEND_MM = 3;

  private static final String FIRST = "machine-1";
  private static final String SECOND = "machine-2";

  private final Script script;
  private final StartMethod method;
  private final EndName a;
  private final EndName b;
  private final Side sideA;
  private final int k;

  StartScript(Script script) {
    this.script = script;
    this.method = script.job.startMethod().orElseGet(() -> chosen(script));
    this.sideA = script.job.anchorSide().orElse(script.route.shortSide());
    this.a = sideA == script.route.shortSide() ? EndName.SHORT : EndName.LONG;
    this.b = a == EndName.SHORT ? EndName.LONG : EndName.SHORT;
    // The tail of a2 leaves where the mains start, that of a1 at the other end.
    int kAtThroat = script.route.mainsStart() == End.THROAT ? 2 : 1;
    this.k = method == StartMethod.ANCHOR_MAIN ? script.job.anchorMain().orElse(kAtThroat) : 1;
  }

  /** The start that the bench allows: a starting clamp that holds half a pull of this string. */
  private static StartMethod chosen(Script script) {
    Bench bench = script.job.bench();
    if (bench.startingClamps() == 0) {
      return StartMethod.DOUBLED_CLAMP;
    }
    Layout layout = script.bed.layout();
    StringSpec string = script.job.mainsString(layout);
    double half = script.job.mainsTension(layout).newtons() / 2;
    ClampRating.Verdict verdict = bench.startingClampRating(string).verdict(half, half);
    if (verdict == ClampRating.Verdict.SLIPS || verdict == ClampRating.Verdict.MAY_SLIP) {
      Force slipped = bench.startingClampRating(string).slippedFrom().orElseThrow();
      script.findings.add(
          Finding.of(FindingCode.START_CLAMP_SLIPS)
              .message(
                  "The starting clamp has let this string go at "
                      + Say.force(slipped, layout)
                      + " and would have to hold "
                      + Say.force(Force.ofNewtons(half), layout)
                      + ", so the mains start with both machine clamps.")
              .fact("slipped", slipped.newtons(), "N")
              .fact("load", half, "N")
              .fix("Clean its jaws, with what its maker allows, and test it again.")
              .build());
      return StartMethod.DOUBLED_CLAMP;
    }
    return StartMethod.ANCHOR_MAIN;
  }

  EndName anchorEnd() {
    return a;
  }

  private void warnInHeadZone(Pass anchor) {
    if (script.bed.inHeadZone(anchor.to())) {
      script.findings.add(
          Finding.of(FindingCode.START_CLAMP_HEAD_ZONE)
              .about(anchor.to())
              .message(
                  "The starting clamp sits outside at "
                      + anchor.to()
                      + ", in the head zone, where strings shear most: its mark may end there.")
              .fix("Take the other main of the same side as the anchor main.")
              .build());
    }
  }

  /** Writes the start; what it is, and how many mains of each end are then pulled. */
  Started write() throws Script.NoPlaceForClamp {
    Pass anchor = script.pass(a, k - 1);
    for (int i = 0; i < k; i++) {
      script.thread(a, i);
    }
    for (int i = 0; i < k; i++) {
      script.thread(b, i);
    }
    Pass other = script.pass(b, k - 1);
    script.add(
        new Step.Pull(
            List.of(anchor.span(), other.span()),
            List.of(anchor.to(), other.to()),
            script.job.mainsTension(script.bed.layout()),
            "Grip both tails, at "
                + anchor.to()
                + " and "
                + other.to()
                + ", and pull them together once: each carries half the reference tension."));
    script.setInside(FIRST, anchor.span(), anchor.from(), List.of(), false);
    script.hold(a, FIRST, anchor.span(), anchor.from(), Optional.empty());
    Optional<String> starting = Optional.empty();
    Optional<HoleId> outside = Optional.empty();
    Optional<StartMark> mark = Optional.empty();
    switch (method) {
      case ANCHOR_MAIN -> {
        double distance = outsideDistance();
        String name = script.startingClamps.take();
        starting = Optional.of(name);
        script.add(
            new Step.SetClamp(
                name,
                anchor.span(),
                anchor.to(),
                distance,
                ClampSide.OUTSIDE,
                "Set "
                    + Say.clamp(name)
                    + " on the tail of "
                    + anchor.span()
                    + " outside the frame at "
                    + anchor.to()
                    + "."));
        outside = Optional.of(anchor.to());
        warnInHeadZone(anchor);
        mark = Optional.of(mark(distance));
      }
      case HAND_HELD ->
          script.add(
              new Step.Hold(
                  anchor.span(),
                  anchor.to(),
                  "Hold the tail of "
                      + anchor.span()
                      + " at "
                      + anchor.to()
                      + " by hand, only to keep it straight in the clamp: a hand bears no tension."));
      case DOUBLED_CLAMP -> {
        double beside = besideFirst();
        script.add(
            new Step.SetClamp(
                SECOND,
                anchor.span(),
                anchor.from(),
                beside,
                ClampSide.INSIDE,
                "Set "
                    + Say.clamp(SECOND)
                    + " on "
                    + anchor.span()
                    + " too, right beside "
                    + Say.clamp(FIRST)
                    + "."));
        script.hold(b, SECOND, anchor.span(), anchor.from(), Optional.empty());
      }
    }
    script.release();
    for (int i = k - 1; i >= 0; i--) {
      Pass pass = script.pass(b, i);
      script.add(
          new Step.Unlace(
              pass.span(), 0, b, "Slip " + pass.span() + " out again and lay the tail aside."));
      script.laced.remove(pass.span());
    }
    for (int i = k - 2; i >= 0; i--) {
      pullOverTheLoop(i);
    }
    int leadOfA = k - 1;
    int pulledB = 0;
    do {
      script.thread(b, pulledB);
      script.pullAndClamp(b, pulledB, SECOND);
      pulledB++;
    } while (pulledB < 2 && pulledB + 1 - leadOfA <= script.job.leadLimit());
    script.pull(anchor.span(), anchor.to(), script.tension(a, k - 1));
    if (starting.isPresent()) {
      script.add(new Step.FreeClamp(starting.get(), Say.free(starting.get(), anchor.span())));
      script.startingClamps.giveBack(starting.get());
    }
    script.moveClamp(a, k - 1, FIRST);
    script.release();
    return new Started(new Start(method, anchor.span(), outside, mark), k, pulledB);
  }

  /**
   * What the start has done.
   *
   * @param start how it starts
   * @param pulledA mains of the anchor end that have had their own pull
   * @param pulledB mains of the other end that have
   */
  record Started(Start start, int pulledA, int pulledB) {}

  /**
   * Pulls a main of the anchor side by the string that leaves over the centre loop, or towards it.
   */
  private void pullOverTheLoop(int index) throws Script.NoPlaceForClamp {
    Pass pass = script.pass(a, index);
    script.add(
        new Step.Pull(
            List.of(pass.span()),
            List.of(pass.from()),
            script.job.mainsTension(script.bed.layout()),
            "Pull " + pass.span() + " by the string that leaves at " + pass.from() + "."));
    script.startingClamps.pulled(pass.span());
    script.setInside(SECOND, pass.span(), pass.from(), List.of(), false);
    Force reference = script.reference(pass.span());
    Optional<String> behind =
        script.backUp(SECOND, new StartingClamps.Place(pass.span(), pass.from(), reference, false));
    script.hold(b, SECOND, pass.span(), pass.from(), behind);
    script.release();
  }

  private double besideFirst() {
    Step.SetClamp first = (Step.SetClamp) script.steps.get(script.steps.size() - 1);
    return first.distanceMm() + script.job.bench().clampLengthMm() + 2;
  }

  /** The usual distance, or less when the mark would end beyond the next hole. */
  private double outsideDistance() {
    double room = runMm() + Lengths.PASSAGE_MM - MOST_SHIFT * anchorSpan().lengthMm();
    return Math.max(0, Math.min(OUTSIDE_MM, Math.floor(room)));
  }

  private StartMark mark(double distance) {
    double length = anchorSpan().lengthMm();
    double low = distance + LEAST_SHIFT * length;
    double high = distance + MOST_SHIFT * length;
    double run = runMm();
    List<StartMark.Spot> at = new ArrayList<>();
    if (low < run - BEND_MM && high > BEND_MM) {
      at.add(StartMark.Spot.RUN);
    }
    if (low <= BEND_MM || (low <= run && high >= run - BEND_MM)) {
      at.add(StartMark.Spot.BEND);
    }
    if (high > run) {
      at.add(StartMark.Spot.HOLE);
    }
    return new StartMark(at, script.pass(a, k - 1).to(), nextHole(), low, high);
  }

  private Span anchorSpan() {
    return script.bed.span(script.pass(a, k - 1).span());
  }

  /** The hole that the string enters after the anchor main: the next pass, or the knot's. */
  private HoleId nextHole() {
    return script.end(a).passes().size() > k
        ? script.pass(a, k).from()
        : script.end(a).finish().hole();
  }

  private double runMm() {
    HoleId from = script.pass(a, k - 1).to();
    return script.bed.position(from).distanceTo(script.bed.position(nextHole()));
  }
}
