/**
 * Layout files: reading and writing them, telling what is wrong with them, and the layouts that
 * come with the library.
 *
 * <p>{@link org.hoopwright.patterns.LayoutReader} makes a {@link
 * org.hoopwright.patterns.ReadResult} of a file: the layout and what is wrong with the file's
 * structure, each finding with its line and column. What a layout means is checked by {@code
 * org.hoopwright}; its findings point into the file too, because the layout knows where each of its
 * values stands. {@link org.hoopwright.patterns.Samples} holds the bundled layouts.
 */
@NullMarked
package org.hoopwright.patterns;

import org.jspecify.annotations.NullMarked;
