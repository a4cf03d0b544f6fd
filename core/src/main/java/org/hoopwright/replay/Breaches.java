package org.hoopwright.replay;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Gathers breaches, each under the step at hand. Confined to one replay. */
final class Breaches {

  private final Set<Breach> found = new LinkedHashSet<>();
  private int step;

  /** Turns to this step, counted from 1. */
  void turnTo(int number) {
    step = number;
  }

  void add(Invariant invariant, String message) {
    found.add(new Breach(invariant, step, message));
  }

  void addIf(boolean wrong, Invariant invariant, String message) {
    if (wrong) {
      add(invariant, message);
    }
  }

  List<Breach> all() {
    return List.copyOf(found);
  }
}
