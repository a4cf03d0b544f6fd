package org.hoopwright.frame;

import java.util.List;

/** Measured places of strings, in the layout's unit of length. */
public final class StringOffsets {

  private StringOffsets() {}

  /**
   * Distances of one side's mains from the long axis, main 1 first.
   *
   * @param head at the head
   * @param throat at the throat; the same list for parallel mains
   */
  public record Mains(List<Double> head, List<Double> throat) {
    /** Copies the lists. */
    public Mains {
      head = List.copyOf(head);
      throat = List.copyOf(throat);
    }

    /** Parallel mains. */
    public static Mains parallel(List<Double> distances) {
      return new Mains(distances, distances);
    }

    /** At this end. */
    public List<Double> at(End end) {
      return end == End.HEAD ? head : throat;
    }
  }

  /**
   * Distances of one side's cross ends below the inside of the head, cross 1 first.
   *
   * @param below the distances
   */
  public record Crosses(List<Double> below) {
    /** Copies the list. */
    public Crosses {
      below = List.copyOf(below);
    }
  }
}
