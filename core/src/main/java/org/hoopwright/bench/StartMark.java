package org.hoopwright.bench;

import java.util.List;
import org.hoopwright.frame.HoleId;

/**
 * Where the mark of the starting clamp may end when the anchor main has had its full pull.
 *
 * @param at what it may lie on, in the order in which the string passes it
 * @param from the hole where the anchor main leaves
 * @param to the hole that the string enters next
 * @param lowMm least distance along the string from the outer mouth of {@code from}, in mm
 * @param highMm greatest distance, in mm
 */
public record StartMark(List<Spot> at, HoleId from, HoleId to, double lowMm, double highMm) {

  /** What a mark may lie on. */
  public enum Spot {
    /** The run along the frame's outside. */
    RUN("run"),
    /** The bend at a hole's outer mouth. */
    BEND("bend"),
    /** The passage through the next hole. */
    HOLE("hole");

    private final String word;

    Spot(String word) {
      this.word = word;
    }

    /** {@code run}, {@code bend} or {@code hole}, as in plans. */
    public String word() {
      return word;
    }
  }

  /** Copies the list. */
  public StartMark {
    at = List.copyOf(at);
  }
}
