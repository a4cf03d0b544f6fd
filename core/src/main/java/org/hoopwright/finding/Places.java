package org.hoopwright.finding;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Where each value of a layout stands in the file it was read from, by JSON pointer (RFC 6901).
 *
 * <p>A layout built in code has {@link #none()}. Immutable.
 */
public final class Places {

  private static final Places NONE = new Places(Map.of());

  private final Map<String, Place> byPointer;

  private Places(Map<String, Place> byPointer) {
    this.byPointer = byPointer;
  }

  /** No places: the layout did not come from a file. */
  public static Places none() {
    return NONE;
  }

  /** Places by JSON pointer; the root is the empty pointer. The map is copied. */
  public static Places of(Map<String, Place> byPointer) {
    return byPointer.isEmpty() ? NONE : new Places(new HashMap<>(byPointer));
  }

  /**
   * The place of the value at this pointer, else of its nearest enclosing value that is known, else
   * empty.
   *
   * @param pointer a JSON pointer such as {@code /mains/skip/0}; the root is the empty text
   */
  public Optional<Place> nearest(String pointer) {
    String p = pointer;
    while (true) {
      Place place = byPointer.get(p);
      if (place != null) {
        return Optional.of(place);
      }
      if (p.isEmpty()) {
        return Optional.empty();
      }
      p = p.substring(0, Math.max(0, p.lastIndexOf('/')));
    }
  }

  /** Whether exactly this pointer has a place. */
  public boolean knows(String pointer) {
    return byPointer.containsKey(pointer);
  }
}
