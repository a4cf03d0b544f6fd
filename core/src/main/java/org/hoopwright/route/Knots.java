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
    @Nullable KnotChoice finish) {}
