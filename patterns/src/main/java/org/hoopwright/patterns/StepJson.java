package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hoopwright.bench.Step;
import org.hoopwright.route.LaidRuns;

/** One of the {@code steps} of a plan. */
final class StepJson {

  private StepJson() {}

  /** The steps of a plan with their numbers, the first as given. */
  static List<JsonLines> of(int first, List<Step> steps, LaidRuns laid) {
    Set<String> meeting =
        laid.meeting().stream().map(l -> l.run().name()).collect(Collectors.toSet());
    List<JsonLines> lines = new ArrayList<>();
    for (Step step : steps) {
      Optional<String> run = run(step, laid).map(l -> l.run().name()).filter(meeting::contains);
      lines.add(of(first + lines.size(), step, run));
    }
    return lines;
  }

  /** The run that is laid in a step. */
  private static Optional<LaidRuns.Laid> run(Step step, LaidRuns laid) {
    if (step instanceof Step.Lace s) {
      return laid.to(s.span());
    }
    if (step instanceof Step.Weave s) {
      return laid.to(s.span());
    }
    return step instanceof Step.TieKnot s ? Optional.of(laid.toKnot(s.end())) : Optional.empty();
  }

  /** The step with its number, and the run that is laid in it where that one meets another. */
  static JsonLines of(int number, Step step, Optional<String> run) {
    JsonLines.Members m = JsonLines.lineObject().put("n", number).put("do", step.word());
    if (step instanceof Step.Cut s) {
      m.put("piece", s.piece()).put("length", JsonLines.tenths(s.lengthMm()));
    } else if (step instanceof Step.Lace s) {
      m.put("span", s.span()).put("from", s.from()).put("to", s.to());
      m.put("piece", s.piece()).put("end", s.end().word());
    } else if (step instanceof Step.Weave s) {
      m.put("span", s.span()).put("from", s.from()).put("to", s.to());
      m.put("piece", s.piece()).put("end", s.end().word());
    } else if (step instanceof Step.Unlace s) {
      m.put("span", s.span()).put("piece", s.piece()).put("end", s.end().word());
    } else if (step instanceof Step.CutOut s) {
      m.put("piece", s.piece());
    } else if (step instanceof Step.Pull s) {
      m.put("tails", JsonLines.names(s.tails())).put("at", JsonLines.names(s.at()));
      m.put("tension", JsonLines.tenths(s.tension().newtons()));
    } else if (step instanceof Step.Hold s) {
      m.put("span", s.span()).put("at", s.at());
    } else if (step instanceof Step.SetClamp s) {
      m.put("clamp", s.clamp()).put("span", s.span()).put("near", s.near());
      m.put("distance", JsonLines.tenths(s.distanceMm())).put("side", s.side().word());
    } else if (step instanceof Step.FreeClamp s) {
      m.put("clamp", s.clamp());
    } else if (step instanceof Step.TieKnot s) {
      m.put("hole", s.hole()).put("anchor", s.anchor()).put("kind", s.kind().word());
      m.put("piece", s.piece()).put("end", s.end().word());
    } else if (step instanceof Step.Trim s) {
      m.put("piece", s.piece()).put("end", s.end().word());
    }
    run.ifPresent(name -> m.put("run", name));
    return m.put("say", step.say()).end();
  }
}
