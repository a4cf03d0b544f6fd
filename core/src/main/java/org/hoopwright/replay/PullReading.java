package org.hoopwright.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.bench.Step;

/**
 * What a pull grips.
 *
 * @param grips the tails, one or two; empty when the pull cannot be made
 * @param faults why it cannot be made; empty when it can
 */
record PullReading(List<Grip> grips, List<String> faults) {

  static PullReading of(BenchState state, Step.Pull pull) {
    int tails = pull.tails().size();
    if (tails < 1 || tails > 2 || pull.at().size() != tails) {
      return fault(
          "A pull must grip one tail or two, each at one hole, but it names %s tails at %s holes."
              .formatted(tails, pull.at().size()));
    }
    List<Grip> grips = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < tails; i++) {
      Optional<Grip> tail = state.tail(pull.tails().get(i), pull.at().get(i));
      if (tail.isPresent()) {
        grips.add(tail.get());
      } else {
        faults.add(
            "No free tail comes out of %s at %s.".formatted(pull.tails().get(i), pull.at().get(i)));
      }
    }
    if (faults.isEmpty() && tails == 2) {
      if (grips.get(0).equals(grips.get(1))) {
        faults.add("The tail of %s is gripped twice.".formatted(grips.get(0).span()));
      } else if (grips.get(0).piece() != grips.get(1).piece()) {
        faults.add(
            "The tails of %s and %s are of two pieces."
                .formatted(grips.get(0).span(), grips.get(1).span()));
      }
    }
    return faults.isEmpty()
        ? new PullReading(List.copyOf(grips), List.of())
        : new PullReading(List.of(), List.copyOf(faults));
  }

  private static PullReading fault(String text) {
    return new PullReading(List.of(), List.of(text));
  }
}
