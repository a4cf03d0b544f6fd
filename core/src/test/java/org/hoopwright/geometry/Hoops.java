package org.hoopwright.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;

/** Makes outlines for tests. */
final class Hoops {

  private Hoops() {}

  /**
   * A closed line round the origin with radii from 60 to 200: simple, seldom convex, with uneven
   * halves, starting anywhere and running either way.
   */
  static List<Point> star(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int count = random.nextInt(8, 60);
    double wildness = random.nextDouble();
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / count;
      double radius = 130 + 70 * wildness * (2 * random.nextDouble() - 1);
      points.add(new Point(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    Collections.rotate(points, random.nextInt(count));
    if (random.nextBoolean()) {
      Collections.reverse(points);
    }
    return points;
  }

  /** A superellipse of any allowed exponent, the size of a racket. */
  static Superellipse superellipse(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double n = random.nextInt(4) == 0 ? random.nextDouble(0.5, 20) : random.nextDouble(1.5, 3);
    return Superellipse.of(random.nextDouble(100, 400), random.nextDouble(100, 400), n);
  }

  /** One of both kinds. */
  static Outline any(long seed) {
    return seed % 2 == 0 ? superellipse(seed) : PolygonOutline.of(star(seed));
  }

  /** A regular polygon with a corner at the head, if {@code count} is even also at the throat. */
  static List<Point> regular(int count, double radius) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * i / count;
      boolean throat = 2 * i == count;
      points.add(new Point(throat ? 0 : radius * Math.sin(angle), radius * Math.cos(angle)));
    }
    return points;
  }
}
