/**
 * Layout files and plans: reading and writing them, telling what is wrong with them, and the
 * layouts that come with the library.
 *
 * <p>{@link org.hoopwright.patterns.LayoutReader} makes a {@link
 * org.hoopwright.patterns.ReadResult} of a file: the layout and what is wrong with the file's
 * structure, each finding with its line and column. What a layout means is checked by {@code
 * org.hoopwright}; its findings point into the file too, because the layout knows where each of its
 * values stands. {@link org.hoopwright.patterns.LayoutWriter} writes a layout as a file in one
 * canonical form. {@link org.hoopwright.patterns.Samples} holds the bundled layouts.
 *
 * <p>A plan is written for programs by {@link org.hoopwright.patterns.PlanWriter}, for the person
 * at the bench by {@link org.hoopwright.patterns.PlanSheet}; {@link
 * org.hoopwright.patterns.RouteTable} lists all routes. Same input, same text: no locale, clock or
 * order of hashing has a say in it.
 */
@NullMarked
package org.hoopwright.patterns;

import org.jspecify.annotations.NullMarked;
