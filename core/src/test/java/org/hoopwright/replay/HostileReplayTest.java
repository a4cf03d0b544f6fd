package org.hoopwright.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hoopwright.bed.SpanId;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.ClampSide;
import org.hoopwright.bench.Step;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.EndName;
import org.hoopwright.route.Knot;
import org.hoopwright.testing.Draw;
import org.hoopwright.units.Force;

/** Nonsense is a breach and never an exception. */
class HostileReplayTest {

  private static HoleId hole(Draw draw) {
    return new HoleId(
        draw.chance(50) ? Side.LEFT : Side.RIGHT,
        draw.chance(50) ? End.HEAD : End.THROAT,
        draw.chance(90) ? draw.between(1, 6) : draw.between(1, HoleId.MAX_NUMBER));
  }

  private static SpanId span(Draw draw) {
    List<SpanId.Kind> kinds = List.of(SpanId.Kind.values());
    return new SpanId(
        kinds.get(draw.between(0, kinds.size() - 1)),
        draw.chance(90) ? draw.between(1, 5) : draw.between(1, 9999));
  }

  private static EndName end(Draw draw) {
    return List.of(EndName.values()).get(draw.between(0, 3));
  }

  private static String clamp(Draw draw) {
    return List.of("machine-1", "machine-2", "machine-999", "starting-1", "starting-0", "", "x-1")
        .get(draw.between(0, 6));
  }

  private static double number(Draw draw) {
    return List.of(0.0, 15.0, 15.5, -3.0, 1e300, Double.NaN, Double.NEGATIVE_INFINITY)
        .get(draw.between(0, 6));
  }

  private static Step step(Draw draw) {
    int piece = draw.between(-1, 3);
    return switch (draw.between(0, 11)) {
      case 0 -> new Step.Cut(piece, number(draw), "");
      case 1 -> new Step.Lace(span(draw), hole(draw), hole(draw), piece, end(draw), "");
      case 2 -> new Step.Weave(span(draw), hole(draw), hole(draw), piece, end(draw), "");
      case 3 -> new Step.Unlace(span(draw), piece, end(draw), "");
      case 4 -> {
        List<SpanId> tails = new ArrayList<>();
        List<HoleId> at = new ArrayList<>();
        for (int i = draw.between(0, 3); i > 0; i--) {
          tails.add(span(draw));
        }
        for (int i = draw.chance(80) ? tails.size() : draw.between(0, 3); i > 0; i--) {
          at.add(hole(draw));
        }
        yield new Step.Pull(tails, at, Force.ofNewtons(draw.between(0, 10_000)), "");
      }
      case 5 -> new Step.Release("");
      case 6 -> new Step.Hold(span(draw), hole(draw), "");
      case 7, 8 ->
          new Step.SetClamp(
              clamp(draw),
              span(draw),
              hole(draw),
              number(draw),
              draw.chance(50) ? ClampSide.INSIDE : ClampSide.OUTSIDE,
              "");
      case 9 -> new Step.FreeClamp(clamp(draw), "");
      case 10 ->
          new Step.TieKnot(
              hole(draw),
              span(draw),
              draw.chance(50) ? Knot.Kind.STARTING : Knot.Kind.TIE_OFF,
              piece,
              end(draw),
              "");
      default -> new Step.Trim(piece, end(draw), "");
    };
  }

  private static void survives(BenchPlan plan, List<Step> steps) {
    BenchPlan hostile = PlannedReplayTest.with(plan, steps);
    List<Breach> breaches = Replay.check(hostile);
    assertThat(breaches).allMatch(b -> b.step() >= 1 && b.step() <= steps.size() + 1);
    assertThat(breaches).allMatch(b -> b.message().endsWith(".") && !b.message().contains("null"));
    Estimates e = ForceEstimate.of(hostile);
    assertThat(e.spanTension()).hasSize(plan.bed().spans().size());
    assertThat(e.spanTension().values()).allMatch(i -> i.low() >= 0);
  }

  @Property
  void nothingButNonsense(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    List<Step> steps = new ArrayList<>();
    for (int i = draw.between(1, 60); i > 0; i--) {
      steps.add(step(draw));
    }
    BenchPlan plan = SmallPlans.startingClamp().plan();
    survives(plan, steps);
    assertThat(Replay.check(PlannedReplayTest.with(plan, steps))).isNotEmpty();
  }

  @Property
  void nonsenseInAPlan(@ForAll long seed) {
    Draw draw = Draw.from(seed);
    BenchPlan plan =
        List.of(
                SmallPlans.startingClamp(),
                SmallPlans.startingKnot(),
                SmallPlans.headStart(),
                SmallPlans.throatStart())
            .get(draw.between(0, 3))
            .plan();
    List<Step> steps = new ArrayList<>(plan.steps());
    for (int i = draw.between(1, 6); i > 0; i--) {
      steps.set(draw.between(0, steps.size() - 1), step(draw));
    }
    survives(plan, steps);
  }
}
