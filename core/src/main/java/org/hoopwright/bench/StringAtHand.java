package org.hoopwright.bench;

import java.util.OptionalDouble;

/**
 * The string that there is for a job: one length, such as a set or what is left on a reel, or two,
 * such as a pack of one piece for the mains and another for the crosses.
 *
 * <p>Usual lengths: a tennis set is sold as 12 m or 40 ft, a packaged hybrid as 22 ft for the mains
 * and 18 ft for the crosses, a set for badminton or squash as 30 ft, a reel as 200 m
 * (racket-service page "Stringing tips / facts and figures"; racket club page "Stringing, the basic
 * steps"; common practice). A foot is 304.8 mm exactly (NIST SP 811, appendix B.8).
 *
 * @param mainsMm the one length, or that for the mains; in mm, more than 0
 * @param crossesMm the length for the crosses, in mm; empty when there is one length. When mains
 *     and crosses are of different string, one length means so much of each
 */
public record StringAtHand(double mainsMm, OptionalDouble crossesMm) {

  /** The most string that anybody has, in mm: 100 km, our choice. */
  public static final double MOST_MM = 1e8;

  /**
   * Checks the lengths.
   *
   * @throws IllegalArgumentException when a length is not more than 0 mm and at most {@value
   *     #MOST_MM} mm
   */
  public StringAtHand {
    check(mainsMm);
    crossesMm.ifPresent(StringAtHand::check);
  }

  private static void check(double mm) {
    if (!(mm > 0 && mm <= MOST_MM)) {
      throw new IllegalArgumentException(
          "The string at hand (" + mm + " mm) must be more than 0 mm and at most 100 km.");
    }
  }

  /** One length, in mm. */
  public static StringAtHand one(double mm) {
    return new StringAtHand(mm, OptionalDouble.empty());
  }

  /** A length for the mains and one for the crosses, in mm; the job is then of two pieces. */
  public static StringAtHand pack(double mainsMm, double crossesMm) {
    return new StringAtHand(mainsMm, OptionalDouble.of(crossesMm));
  }

  /** Whether there are two lengths, which make a job of two pieces. */
  public boolean isPack() {
    return crossesMm.isPresent();
  }
}
