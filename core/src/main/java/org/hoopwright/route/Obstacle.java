package org.hoopwright.route;

import java.util.List;

/**
 * A fact that helps to forbid every route.
 *
 * @param what the fact in words, with its values
 * @param pointer JSON pointer to what states it in the layout; empty when it is the caller's limit
 *     or option
 * @param about names of the holes and spans it is about
 * @param lift what would lift it
 */
public record Obstacle(String what, String pointer, List<String> about, String lift) {

  /** Copies the list. */
  public Obstacle {
    about = List.copyOf(about);
  }
}
