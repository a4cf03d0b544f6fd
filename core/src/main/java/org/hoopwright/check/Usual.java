package org.hoopwright.check;

import java.util.Optional;
import org.hoopwright.frame.Game;

/**
 * What is usual in a game; beyond it a number is more likely mistaken than meant. The ranges are
 * our choice, wide round what is published: patterns and tensions of {@code docs/sources.md}, sizes
 * up to the governing bodies' limits.
 */
public enum Usual {
  /** Tennis. */
  TENNIS(
      new Range(12, 22),
      new Range(14, 24),
      new Range(280, 400),
      new Range(200, 300),
      new Range(130, 330)),
  /** Badminton. */
  BADMINTON(
      new Range(18, 26),
      new Range(18, 26),
      new Range(200, 340),
      new Range(150, 230),
      new Range(60, 170)),
  /** Squash. */
  SQUASH(
      new Range(10, 18),
      new Range(14, 22),
      new Range(220, 400),
      new Range(150, 220),
      new Range(70, 180)),
  /** Racquetball. */
  RACQUETBALL(
      new Range(10, 20),
      new Range(12, 22),
      new Range(240, 400),
      new Range(180, 300),
      new Range(90, 280));

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

  private final Range mains;
  private final Range crosses;
  private final Range hoopLength;
  private final Range hoopWidth;
  private final Range tension;

  Usual(Range mains, Range crosses, Range hoopLength, Range hoopWidth, Range tension) {
    this.mains = mains;
    this.crosses = crosses;
    this.hoopLength = hoopLength;
    this.hoopWidth = hoopWidth;
    this.tension = tension;
  }

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

  /** Mains, both sides together. */
  public Range mains() {
    return mains;
  }

  /** Crosses. */
  public Range crosses() {
    return crosses;
  }

  /** Inside length of the hoop, in mm. */
  public Range hoopLength() {
    return hoopLength;
  }

  /** Inside width of the hoop, in mm. */
  public Range hoopWidth() {
    return hoopWidth;
  }

  /** Reference tension, in N. */
  public Range tension() {
    return tension;
  }
}
