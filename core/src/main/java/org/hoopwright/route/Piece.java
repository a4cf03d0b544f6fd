package org.hoopwright.route;

import java.util.List;
import java.util.Optional;

/**
 * A piece of string with its two ends.
 *
 * @param role what it strings
 * @param ends short and long, or start and finish, in this order
 */
public record Piece(Role role, List<StringEnd> ends) {

  /** What a piece strings. */
  public enum Role {
    /** The mains and the crosses: the only piece. */
    WHOLE("mains-and-crosses"),
    /** The mains, and perhaps some crosses with its long end. */
    MAINS("mains"),
    /** The crosses that the piece with the mains leaves. */
    CROSSES("crosses");

    private final String word;

    Role(String word) {
      this.word = word;
    }

    /** The word used in plans. */
    public String word() {
      return word;
    }
  }

  /** Copies the list. */
  public Piece {
    ends = List.copyOf(ends);
  }

  /** The end of this name, or empty. */
  public Optional<StringEnd> end(EndName name) {
    return ends.stream().filter(e -> e.name() == name).findFirst();
  }
}
