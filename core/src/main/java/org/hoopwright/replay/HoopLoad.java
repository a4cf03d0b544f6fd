package org.hoopwright.replay;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.bed.SpanId;
import org.hoopwright.geometry.Side;

/**
 * What all spans together do to the hoop. Plain statics: a string pulls at both of its ends with
 * its full tension, so each span squeezes the hoop by its tension along its own direction.
 *
 * @param along the sum along the long axis, in newtons
 * @param across the sum across it
 * @param rightMinusLeft by how much the right mains together pull more than the left ones
 */
record HoopLoad(double along, double across, double rightMinusLeft) {

  /**
   * A span's share in these.
   *
   * @param span the span
   * @param along share of its tension along the long axis
   * @param across share of its tension across it
   * @param side -1 for a left main, 1 for a right main, 0 for a cross
   */
  record Share(SpanId span, double along, double across, int side) {
    private static Share of(Span span) {
      double length = span.lengthMm();
      double dx = Math.abs(span.fromPoint().x() - span.toPoint().x());
      double dy = Math.abs(span.fromPoint().y() - span.toPoint().y());
      return new Share(
          span.id(),
          length > 0 ? dy / length : 0,
          length > 0 ? dx / length : 0,
          span.id().side().map(Side::sign).orElse(0));
    }
  }

  static List<Share> shares(Bed bed) {
    return bed.spans().stream().map(Share::of).toList();
  }

  static HoopLoad of(List<Share> shares, ToDoubleFunction<SpanId> tension) {
    double along = 0;
    double across = 0;
    double rightMinusLeft = 0;
    for (Share s : shares) {
      double t = tension.applyAsDouble(s.span());
      along += t * s.along();
      across += t * s.across();
      rightMinusLeft += t * s.side();
    }
    return new HoopLoad(along, across, rightMinusLeft);
  }
}
