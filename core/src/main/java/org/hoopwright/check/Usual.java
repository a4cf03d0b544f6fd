package org.hoopwright.check;

import java.util.Optional;
import org.hoopwright.frame.Game;

/**
 * What is usual in a game; beyond it a number is more likely mistaken than meant. The ranges are
 * our choice, wide round what is published: patterns and tensions of {@code docs/sources.md}, sizes
 * up to the governing bodies' limits.
 *
 * @param mains mains, both sides together
 * @param crosses crosses
 * @param hoopLength inside length of the hoop, in mm
 * @param hoopWidth inside width of the hoop, in mm
 * @param tension reference tension, in N
 */
public record Usual(Range mains, Range crosses, Range hoopLength, Range hoopWidth, Range tension) {

  /**
   * From least to most, both included.
   *
   * @param least the least
   * @param most the most
   */
  public record Range(double least, double most) {
    /** Whether a value lies in it. */
    public boolean holds(double value) {
      return value >= least && value <= most;
    }
  }

  private static final Usual TENNIS =
      new Usual(
          new Range(12, 22),
          new Range(14, 24),
          new Range(280, 400),
          new Range(200, 300),
          new Range(130, 330));

  private static final Usual BADMINTON =
      new Usual(
          new Range(18, 26),
          new Range(18, 26),
          new Range(200, 340),
          new Range(150, 230),
          new Range(60, 170));

  private static final Usual SQUASH =
      new Usual(
          new Range(10, 18),
          new Range(14, 22),
          new Range(220, 400),
          new Range(150, 220),
          new Range(70, 180));

  private static final Usual RACQUETBALL =
      new Usual(
          new Range(10, 20),
          new Range(12, 22),
          new Range(240, 400),
          new Range(180, 300),
          new Range(90, 280));

  /** What is usual in a game; empty when none is stated. */
  public static Optional<Usual> of(Game game) {
    return switch (game) {
      case TENNIS -> Optional.of(TENNIS);
      case BADMINTON -> Optional.of(BADMINTON);
      case SQUASH -> Optional.of(SQUASH);
      case RACQUETBALL -> Optional.of(RACQUETBALL);
      case OTHER -> Optional.empty();
    };
  }
}
