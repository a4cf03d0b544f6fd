package org.hoopwright.patterns;

import org.hoopwright.bench.Step;

/** One of the {@code steps} of a plan. */
final class StepJson {

  private StepJson() {}

  /** The step with its number, from 1. */
  static JsonLines of(int number, Step step) {
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
    return m.put("say", step.say()).end();
  }
}
