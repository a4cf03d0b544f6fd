package org.hoopwright.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Span;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.Pass;
import org.hoopwright.route.RouteRequest;

/**
 * What is settled before a route branches: start end, direction, short side, and with how many
 * mains each end opens. The judges of the search share it; the search has its own.
 */
final class Openings {

  final Bed bed;
  final RouteRequest request;
  final End start;
  final Direction direction;
  final Side shortSide;
  final int shortOpening;
  final int longOpening;

  /** Passes of the short end's opening mains. */
  final List<Pass> shortOpens;

  /** Passes of the long end's opening mains. */
  final List<Pass> longOpens;

  private Openings(
      Bed bed,
      RouteRequest request,
      End start,
      Direction direction,
      Side shortSide,
      int shortOpening,
      int longOpening) {
    this.bed = bed;
    this.request = request;
    this.start = start;
    this.direction = direction;
    this.shortSide = shortSide;
    this.shortOpening = shortOpening;
    this.longOpening = longOpening;
    shortOpens = opening(shortSide, shortOpening);
    longOpens = opening(shortSide.other(), longOpening);
  }

  /** All whose mains can be strung, plain ones first. */
  static List<Openings> all(Bed bed, RouteRequest request) {
    List<Openings> all = new ArrayList<>();
    int n = bed.mainsPerSide();
    if (n < 2 || bed.crossCount() < 2) {
      return all;
    }
    int least = n >= 4 && bed.crossCount() >= 5 ? n - 1 : n;
    for (int out = 0; out <= 2 * (n - least); out++) {
      for (Direction direction : Direction.values()) {
        for (End start : End.values()) {
          for (Side side : Side.values()) {
            for (int s = n; s >= least; s--) {
              int l = 2 * n - out - s;
              if (l >= least
                  && l <= n
                  && request.mainsStart().orElse(start) == start
                  && bed.layout().mainsStart().orElse(start) == start
                  && request.direction().orElse(direction) == direction) {
                all.add(new Openings(bed, request, start, direction, side, s, l));
              }
            }
          }
        }
      }
    }
    all.removeIf(r -> !r.trail(r.shortOpens) || !r.trail(r.longOpens) || r.goesRoundForbidden());
    return all;
  }

  private List<Pass> opening(Side side, int count) {
    List<Pass> passes = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      Span main = bed.mains(side).get(k);
      boolean down = (k % 2 == 0) == (start == End.HEAD);
      passes.add(
          down
              ? new Pass(main.id(), main.from(), main.to())
              : new Pass(main.id(), main.to(), main.from()));
    }
    return passes;
  }

  private boolean trail(List<Pass> passes) {
    return IntStream.range(1, passes.size())
        .allMatch(i -> run(passes.get(i - 1).to(), passes.get(i).from()));
  }

  private boolean goesRoundForbidden() {
    End mainsEnd = bed.mainsPerSide() % 2 == 0 ? start : start.other();
    return lateMains() > 0 && direction.from() != mainsEnd && !bed.layout().aroundTheWorld();
  }

  boolean run(HoleId a, HoleId b) {
    return bed.ring().runAllowed(a, b) && apart(a, b) <= request.runLimit();
  }

  int apart(HoleId a, HoleId b) {
    return Math.abs(bed.ring().place(a) - bed.ring().place(b));
  }

  int lateMains() {
    return 2 * bed.mainsPerSide() - shortOpening - longOpening;
  }

  /** Whether of mirror images the one counts whose crosses start on the side that is asked for. */
  static boolean startSideDecides(Layout layout) {
    return layout.startSide().isPresent() && layout.shortSide().isEmpty();
  }

  /**
   * Whether routes with these openings count. Of mirror images on a symmetric bed only the one does
   * that the maker asks for, else the one with the short side the maker's, or left.
   */
  boolean represents() {
    Layout layout = bed.layout();
    return !bed.symmetric()
        || startSideDecides(layout)
        || shortSide == layout.shortSide().orElse(Side.LEFT);
  }
}
