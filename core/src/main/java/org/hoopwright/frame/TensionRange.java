package org.hoopwright.frame;

import org.hoopwright.units.Force;
import org.hoopwright.units.ForceUnit;

/**
 * The reference tension that the frame's maker allows.
 *
 * @param unit the unit in which it is stated
 * @param min least
 * @param max most
 */
public record TensionRange(ForceUnit unit, double min, double max) {

  /** The least as a force. */
  public Force least() {
    return Force.of(min, unit);
  }

  /** The most as a force. */
  public Force most() {
    return Force.of(max, unit);
  }
}
