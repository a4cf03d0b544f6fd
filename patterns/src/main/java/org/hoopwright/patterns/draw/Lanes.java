package org.hoopwright.patterns.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hoopwright.geometry.Point;

/**
 * Lays runs beside each other outside the frame: two runs that share a stretch get lanes of their
 * own, and a run that lies within another keeps nearer to the frame, so that they do not cross.
 */
final class Lanes {

  private static final double FIRST = 11;
  private static final double WIDTH = 8;
  private static final double TOUCH = 0.5;

  private final FrameShape shape;
  private final Map<Run, Integer> lanes = new LinkedHashMap<>();

  Lanes(FrameShape shape, List<Run> runs) {
    this.shape = shape;
    List<Run> shortestFirst = new ArrayList<>(runs);
    shortestFirst.sort(Comparator.comparingDouble(r -> Math.abs(way(r)))); // a stable sort
    for (Run run : shortestFirst) {
      int lane = 0;
      for (Map.Entry<Run, Integer> other : lanes.entrySet()) {
        if (share(run, other.getKey())) {
          lane = Math.max(lane, other.getValue() + 1);
        }
      }
      lanes.put(run, lane);
    }
  }

  private double way(Run run) {
    return shape.way(shape.mouth(run.from()).ring(), shape.mouth(run.to()).ring());
  }

  private double low(Run run) {
    double way = way(run);
    return shape.mouth(run.from()).ring() + Math.min(0, way);
  }

  private boolean share(Run a, Run b) {
    double ab = shape.way(low(a), low(b));
    // Of two stretches that meet one begins within the other; none is longer than half the ring.
    return ab >= 0 ? ab < Math.abs(way(a)) - TOUCH : -ab < Math.abs(way(b)) - TOUCH;
  }

  int lane(Run run) {
    return lanes.getOrDefault(run, 0);
  }

  /** How far outside the frame's inside line the run lies, in page units. */
  double outwards(Run run) {
    return FrameShape.BAND + FIRST + WIDTH * lane(run);
  }

  /** The run's line: out of one hole, along the frame, into the other. */
  List<Point> line(Run run) {
    FrameShape.Mouth a = shape.mouth(run.from());
    FrameShape.Mouth b = shape.mouth(run.to());
    double way = way(run);
    double inset = Math.min(3.0 + 2 * lane(run), Math.abs(way) / 4) * Math.signum(way);
    double out = outwards(run);
    List<Point> points = new ArrayList<>();
    points.add(a.centre());
    points.add(shape.onRing(a.ring() + inset, FrameShape.BAND));
    points.addAll(shape.curve(a.ring() + inset, way - 2 * inset, out));
    points.add(shape.onRing(b.ring() - inset, FrameShape.BAND));
    points.add(b.centre());
    return points;
  }
}
