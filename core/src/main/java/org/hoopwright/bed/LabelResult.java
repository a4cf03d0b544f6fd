package org.hoopwright.bed;

import java.util.List;
import java.util.Optional;

/**
 * What a {@link LabelSearch} came to.
 *
 * @param status how it ended
 * @param optima all labellings of least cost, in the order of their labels, left side first; when
 *     the search gave up, the best that it had found
 * @param near all other labellings within the window that was asked for, cheapest first
 * @param runnerUp the cheapest labelling that costs more than the optima; empty when there is none
 * @param nodes how many nodes were searched
 */
public record LabelResult(
    Status status,
    List<Labelling> optima,
    List<Labelling> near,
    Optional<Labelling> runnerUp,
    long nodes) {

  /** How a search ended. */
  public enum Status {
    /** The optima, the near ones and the runner-up are proven. */
    PROVEN,
    /** No labelling fits. */
    PROVEN_ABSENT,
    /** The limit ended the search; cheaper labellings may exist. */
    LIMIT_REACHED
  }

  /** Copies the lists. */
  public LabelResult {
    optima = List.copyOf(optima);
    near = List.copyOf(near);
  }

  /** By how many mm the runner-up is dearer than the optima; empty when there is none. */
  public Optional<Double> gainMm() {
    return optima.isEmpty()
        ? Optional.empty()
        : runnerUp.map(r -> (r.cost().totalUm() - optima.get(0).cost().totalUm()) / 1000.0);
  }
}
