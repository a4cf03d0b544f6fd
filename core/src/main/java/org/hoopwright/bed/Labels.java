package org.hoopwright.bed;

import java.util.List;
import org.hoopwright.geometry.Side;

/**
 * A label for each hole of each side, in list order. Any labels with n mains at each end of each
 * side and C crosses a side make a bed.
 *
 * @param left labels of the left side's list
 * @param right labels of the right side's list
 */
public record Labels(List<HoleLabel> left, List<HoleLabel> right) {

  /** Copies the lists. */
  public Labels {
    left = List.copyOf(left);
    right = List.copyOf(right);
  }

  /** The labels of this side. */
  public List<HoleLabel> of(Side side) {
    return side == Side.LEFT ? left : right;
  }

  /** Left and right exchanged. */
  public Labels mirrored() {
    return new Labels(/* left= */ right, /* right= */ left);
  }
}
