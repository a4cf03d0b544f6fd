/**
 * The inside line of the hoop: points, segments, and outlines with their two halves.
 *
 * <p>All lengths are millimetres. The origin is the middle of the hoop's inside length on the long
 * axis, x runs to the right and y to the head, as seen by someone who looks at the face with the
 * head at the top. Every value is immutable, every function is pure, and the same input gives the
 * same bits on every Java runtime. No parameter or result is ever null.
 */
@NullMarked
package org.hoopwright.geometry;

import org.jspecify.annotations.NullMarked;
