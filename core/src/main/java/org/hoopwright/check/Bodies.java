package org.hoopwright.check;

import java.util.Optional;
import org.hoopwright.frame.Game;

/** The rules of governing bodies: where they are published, and who asks what of the pattern. */
final class Bodies {

  static final String TENNIS = "ITF Rules of Tennis, Appendix II \"The Racket\"";

  static final String BADMINTON = "BWF Laws of Badminton, Law 4";

  static final String SQUASH = "WSF Rules of Squash, Appendix 9 \"Dimensions of a squash racket\"";

  static final String RACQUETBALL = "USA Racquetball Official Rules, Rule 2.4";

  private Bodies() {}

  /** Where a body asks for a pattern that is not less dense in the centre than elsewhere. */
  static Optional<String> denseCentre(Game game) {
    return switch (game) {
      case TENNIS -> Optional.of(TENNIS);
      // In one copy of the laws; a national course's copy lacks the sentence.
      case BADMINTON -> Optional.of(BADMINTON);
      case SQUASH, RACQUETBALL, OTHER -> Optional.empty();
    };
  }

  /** Where a body asks for a pattern that is generally uniform. */
  static Optional<String> uniform(Game game) {
    return switch (game) {
      case TENNIS -> Optional.of(TENNIS);
      case BADMINTON -> Optional.of(BADMINTON);
      case SQUASH -> Optional.of(SQUASH);
      case RACQUETBALL, OTHER -> Optional.empty();
    };
  }
}
