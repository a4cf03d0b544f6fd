package org.hoopwright.patterns.draw;

import org.hoopwright.geometry.Point;

/** An upright rectangle on the page, in page units, y downwards. */
record Box(double minX, double minY, double maxX, double maxY) {

  /** The box of this size round a centre. */
  static Box around(Point centre, double width, double height) {
    return new Box(
        centre.x() - width / 2,
        centre.y() - height / 2,
        centre.x() + width / 2,
        centre.y() + height / 2);
  }

  double width() {
    return maxX - minX;
  }

  double height() {
    return maxY - minY;
  }

  Point centre() {
    return new Point((minX + maxX) / 2, (minY + maxY) / 2);
  }

  /** Whether the two share more than an edge. */
  boolean overlaps(Box other) {
    return minX < other.maxX && other.minX < maxX && minY < other.maxY && other.minY < maxY;
  }

  /** The smallest box that holds both. */
  Box union(Box other) {
    return new Box(
        Math.min(minX, other.minX),
        Math.min(minY, other.minY),
        Math.max(maxX, other.maxX),
        Math.max(maxY, other.maxY));
  }

  Box grown(double by) {
    return new Box(minX - by, minY - by, maxX + by, maxY + by);
  }
}
