package org.hoopwright.geometry;

import java.util.List;

/** The checks of arguments that both kinds of outline share. */
final class Arguments {

  private Arguments() {}

  static void requireDistance(double x) {
    if (!(x >= 0 && x <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException(
          "x is "
              + x
              + " mm, but it is a distance from the long axis, so it is finite and not negative;"
              + " pass the distance and say the side");
    }
  }

  static void requireHeight(double y) {
    if (!Double.isFinite(y)) {
      throw new IllegalArgumentException(
          "y is " + y + " mm, but a height is a finite number; pass millimetres from the origin");
    }
  }

  /** Returns the arc length if it is on the half, with negative zero as zero. */
  static double requireArc(Side side, double arc, double halfLength) {
    if (!(arc >= 0 && arc <= halfLength)) {
      throw new IllegalArgumentException(
          "arc length "
              + arc
              + " mm is not on the "
              + (side == Side.LEFT ? "left" : "right")
              + " half of the outline, which runs from 0 to "
              + halfLength
              + " mm; pass a length within it");
    }
    return arc + 0.0;
  }

  static void requireFactor(double factor) {
    if (!(factor > 0 && factor <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException(
          "factor is " + factor + ", but a scale is a finite number above 0; pass 1 for no change");
    }
  }

  /** Throws for the first flaw, which a caller who asked for the flaws first would have seen. */
  static void requireNone(List<Flaw> flaws) {
    if (!flaws.isEmpty()) {
      String more = flaws.size() == 1 ? "" : " (and " + (flaws.size() - 1) + " more)";
      throw new IllegalArgumentException(flaws.get(0).message() + more);
    }
  }
}
