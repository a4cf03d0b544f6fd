package org.hoopwright.testing;

import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.Pass;

/** The maker's wishes that a half-strung or finished route is sure to miss. */
final class PlainWishes {

  private PlainWishes() {}

  static long missed(Openings o, List<Pass> s, List<Pass> l, List<Pass> x, int knots) {
    Layout layout = o.bed.layout();
    long missed = 0;
    missed += layout.direction().orElse(o.direction) == o.direction ? 0 : 1;
    missed += layout.shortSide().orElse(o.shortSide) == o.shortSide ? 0 : 1;
    int strung = s.size() + l.size() + x.size();
    boolean onePiece = x.isEmpty() && knots == 2 && strung == o.bed.spans().size();
    if (layout.pieces().isPresent()) {
      int wanted = layout.pieces().getAsInt();
      missed += (wanted == 1 && !x.isEmpty()) || (wanted == 2 && onePiece) ? 1 : 0;
    }
    Optional<Side> start = startSide(o, s, l, x);
    missed += start.isPresent() && layout.startSide().orElse(start.get()) != start.get() ? 1 : 0;
    return missed;
  }

  static boolean startSideMet(Openings o, List<Pass> s, List<Pass> l, List<Pass> x) {
    return startSide(o, s, l, x).equals(o.bed.layout().startSide());
  }

  private static Optional<Side> startSide(Openings o, List<Pass> s, List<Pass> l, List<Pass> x) {
    SpanId first = SpanId.cross(o.direction == Direction.HEAD_TO_THROAT ? 1 : o.bed.crossCount());
    for (List<Pass> end : List.of(s, l, x)) {
      for (Pass pass : end) {
        if (pass.span().equals(first)) {
          return Optional.of(pass.from().side());
        }
      }
    }
    return Optional.empty();
  }
}
