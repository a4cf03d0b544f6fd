package org.hoopwright.judgement;

import java.util.function.Function;
import org.hoopwright.replay.ForceHistory;
import org.hoopwright.replay.Interval;
import org.hoopwright.replay.StepForces;

/** Finds when the hoop is squeezed most. */
final class HoopJudge {

  private HoopJudge() {}

  static Peak peak(ForceHistory history, Function<StepForces, Interval> what) {
    Peak most = null;
    for (StepForces s : history.steps()) {
      Interval i = what.apply(s);
      if (most == null || i.high() > most.newtons().high()) {
        most = new Peak(s.step(), i);
      }
    }
    if (most == null) {
      throw new IllegalArgumentException("The history (of 0 steps) must hold a pull.");
    }
    return most;
  }

  /** The step with the greatest difference, whichever side pulls more. */
  static Peak imbalance(ForceHistory history) {
    Peak right = peak(history, StepForces::rightMinusLeft);
    Peak left = peak(history, s -> minus(s.rightMinusLeft()));
    return left.newtons().high() > right.newtons().high()
        ? new Peak(left.step(), minus(left.newtons()))
        : right;
  }

  private static Interval minus(Interval i) {
    return new Interval(0.0 - i.high(), 0.0 - i.low());
  }
}
