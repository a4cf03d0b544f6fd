package org.hoopwright.route;

import org.jspecify.annotations.Nullable;

/**
 * The knots of a variant.
 *
 * @param shortKnot of the short end
 * @param longKnot of the long end
 * @param start of the start of a second piece; null for one piece
 * @param finish of the finish of a second piece; null for one piece
 */
record Knots(
    KnotChoice shortKnot,
    KnotChoice longKnot,
    @Nullable KnotChoice start,
    @Nullable KnotChoice finish) {

  /** These knots, in the order of {@link VariantSearch}. */
  static Knots of(KnotChoice[] k) {
    boolean two = k.length > 2;
    return new Knots(
        k[VariantSearch.SHORT],
        k[VariantSearch.LONG],
        two ? k[VariantSearch.START] : null,
        two ? k[VariantSearch.FINISH] : null);
  }

  /**
   * Which knots come first, seen from the short side: no starting clamp, the short side, the place
   * nearer the head, the anchor; the short end's knot counts most.
   */
  int compare(RouteModel m, int shortSide, Knots other, int othersShortSide) {
    int c = compare(m, shortKnot, shortSide, other.shortKnot, othersShortSide);
    c = c != 0 ? c : compare(m, longKnot, shortSide, other.longKnot, othersShortSide);
    c = c != 0 ? c : compare(m, start, shortSide, other.start, othersShortSide);
    return c != 0 ? c : compare(m, finish, shortSide, other.finish, othersShortSide);
  }

  private static int compare(
      RouteModel m, @Nullable KnotChoice a, int sideA, @Nullable KnotChoice b, int sideB) {
    if (a == null || b == null) {
      return Boolean.compare(a != null, b != null);
    }
    int c = Boolean.compare(a.clamped(), b.clamped());
    c = c != 0 ? c : Boolean.compare(m.side(a.hole()) != sideA, m.side(b.hole()) != sideB);
    c = c != 0 ? c : Integer.compare(m.place(a.hole()), m.place(b.hole()));
    return c != 0 ? c : Integer.compare(anchor(m, a, sideA), anchor(m, b, sideB));
  }

  private static int anchor(RouteModel m, KnotChoice k, int shortSide) {
    int pass = k.anchor() * 2;
    return shortSide == RouteModel.LEFT ? pass : m.mirror(pass);
  }
}
