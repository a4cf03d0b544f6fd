/**
 * Drawings of a frame, its bed, a route and a plan's step as SVG, and bench sheets as HTML.
 *
 * <p>The same input gives the same bytes on every machine. Nothing here needs a window system, and
 * no text of a layout can become markup.
 */
@NullMarked
package org.hoopwright.patterns.draw;

import org.jspecify.annotations.NullMarked;
