package org.hoopwright.replay;

import org.hoopwright.bench.Step;

/** The part of a replay that watches over some of the invariants. Confined to one replay. */
interface StepCheck {

  /** Looks at a step before it is done. */
  default void before(BenchState state, Step step, Breaches breaches) {}

  /** Looks at what a step has made. */
  default void after(BenchState state, Step step, Breaches breaches) {}

  /** Looks at what the last step has left. */
  default void end(BenchState state, Breaches breaches) {}
}
