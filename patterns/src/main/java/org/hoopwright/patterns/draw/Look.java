package org.hoopwright.patterns.draw;

import java.util.Map;

/**
 * How an element looks at a stage.
 *
 * @param classes its further classes, each with a space before it
 * @param data further attributes
 */
record Look(String classes, Map<String, String> data) {

  static final Look PLAIN = new Look("", Map.of());

  static Look of(String classes) {
    return new Look(classes, Map.of());
  }
}
