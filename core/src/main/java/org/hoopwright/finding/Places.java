package org.hoopwright.finding;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Where each value of a layout stands in the file it was read from, by JSON pointer (RFC 6901).
 *
 * <p>A layout built in code has {@link #none()}. Immutable.
 */
public final class Places {

  private static final Places NONE = new Places(pointer -> Optional.empty());

  private final Function<String, Optional<Place>> byPointer;

  private Places(Function<String, Optional<Place>> byPointer) {
    this.byPointer = byPointer;
  }

  /** No places: the layout did not come from a file. */
  public static Places none() {
    return NONE;
  }

  /** Places by JSON pointer; the root is the empty pointer. The map is copied. */
  public static Places of(Map<String, Place> byPointer) {
    Map<String, Place> copy = Map.copyOf(byPointer);
    return new Places(pointer -> Optional.ofNullable(copy.get(pointer)));
  }

  /**
   * Places that are looked up when they are asked for.
   *
   * @param byPointer gives the place of the value at a JSON pointer, or nothing when there is none;
   *     always the same for one pointer, and from any thread
   */
  public static Places of(Function<String, Optional<Place>> byPointer) {
    return new Places(byPointer);
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
      Optional<Place> place = byPointer.apply(p);
      if (place.isPresent() || p.isEmpty()) {
        return place;
      }
      p = p.substring(0, Math.max(0, p.lastIndexOf('/')));
    }
  }

  /** Whether exactly this pointer has a place. */
  public boolean knows(String pointer) {
    return byPointer.apply(pointer).isPresent();
  }
}
