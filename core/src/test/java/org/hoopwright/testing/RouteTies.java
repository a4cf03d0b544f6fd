package org.hoopwright.testing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.Bed;
import org.hoopwright.frame.End;
import org.hoopwright.frame.HoleId;
import org.hoopwright.geometry.Side;
import org.hoopwright.route.Knot;
import org.hoopwright.route.Pass;
import org.hoopwright.testing.BruteForceRoutes.Found;

/**
 * What decides between routes that are as good in every preference: start at the head, short side
 * the maker's or left, passes of the short end, of the long end and of the second piece (the
 * shorter list first), knots. Written from its description alone. Seen from the short side, so that
 * a route whose short side is right is turned round first.
 */
public final class RouteTies {

  private final Bed bed;

  /** For the routes of this bed. */
  public RouteTies(Bed bed) {
    this.bed = bed;
  }

  /** First the one that stands first. */
  public Comparator<Found> comparator() {
    Side usual = bed.layout().shortSide().orElse(Side.LEFT);
    return Comparator.<Found, Boolean>comparing(f -> f.start() != End.HEAD)
        .thenComparing(f -> f.shortSide() != usual)
        .thenComparing((a, b) -> passes(a.shortPasses(), a, b.shortPasses(), b))
        .thenComparing((a, b) -> passes(a.longPasses(), a, b.longPasses(), b))
        .thenComparing((a, b) -> passes(a.crossPasses(), a, b.crossPasses(), b))
        .thenComparing(this::knots);
  }

  private static boolean turned(Found f) {
    return f.shortSide() == Side.RIGHT;
  }

  private int passes(List<Pass> a, Found of, List<Pass> b, Found other) {
    int c = Integer.compare(a.size(), b.size());
    for (int i = 0; c == 0 && i < a.size(); i++) {
      Pass p = turned(of) ? mirrored(a.get(i)) : a.get(i);
      Pass q = turned(other) ? mirrored(b.get(i)) : b.get(i);
      c = p.span().compareTo(q.span());
      c = c != 0 ? c : Boolean.compare(against(p), against(q));
    }
    return c;
  }

  private static Pass mirrored(Pass p) {
    return new Pass(p.span().mirrored(), p.from().mirrored(), p.to().mirrored());
  }

  /** A main from the throat, a cross from the right. */
  private static boolean against(Pass p) {
    return p.span().isMain() ? p.from().end() == End.THROAT : p.from().side() == Side.RIGHT;
  }

  private int knots(Found a, Found b) {
    int c = 0;
    for (int i = 0; c == 0 && i < a.knots().size(); i++) {
      c = knot(a.knots().get(i), a, i, b.knots().get(i), b);
    }
    return c;
  }

  private int knot(Knot p, Found a, int which, Knot q, Found b) {
    int c = Boolean.compare(clamped(a, which), clamped(b, which));
    c = c != 0 ? c : Boolean.compare(across(p.hole(), a), across(q.hole(), b));
    c = c != 0 ? c : Integer.compare(bed.ring().place(p.hole()), bed.ring().place(q.hole()));
    return c != 0
        ? c
        : (turned(a) ? p.anchor().mirrored() : p.anchor())
            .compareTo(turned(b) ? q.anchor().mirrored() : q.anchor());
  }

  private static boolean clamped(Found f, int which) {
    Optional<HoleId> clamp = f.startingClamp();
    return which == 2 && clamp.isPresent();
  }

  private static boolean across(HoleId hole, Found f) {
    return hole.side() != f.shortSide();
  }
}
