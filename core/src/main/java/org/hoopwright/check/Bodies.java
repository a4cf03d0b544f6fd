package org.hoopwright.check;

import java.util.Optional;
import org.hoopwright.frame.Game;

/** What governing bodies ask of the pattern itself. */
final class Bodies {

  private Bodies() {}

  /**
   * Where a body asks for a pattern that is generally uniform and not less dense in the centre;
   * empty for games whose rules, as far as seen, do not. (Squash asks for "generally uniform" only,
   * and one copy of badminton's laws lacks the sentence.)
   */
  static Optional<String> pattern(Game game) {
    return switch (game) {
      case TENNIS -> Optional.of("ITF Rules of Tennis, Appendix II \"The Racket\"");
      case BADMINTON -> Optional.of("BWF Laws of Badminton, Law 4");
      case SQUASH ->
          Optional.of("WSF Rules of Squash, Appendix 9 \"Dimensions of a squash racket\"");
      case RACQUETBALL, OTHER -> Optional.empty();
    };
  }
}
