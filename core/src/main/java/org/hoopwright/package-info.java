/**
 * Works out how to string a racket frame.
 *
 * <p>Start at {@link org.hoopwright.Hoopwright}: from a layout and a job to a plan that has been
 * replayed and found valid. Bigger callers use the stages by themselves: {@code frame} → {@code
 * bed} → {@code route} → {@code bench}, and {@code replay} for the proof.
 *
 * <p>Everything is immutable, every function pure: no files, clocks, locale or global state.
 * Findings about data are values; an exception means a caller's mistake, and {@link
 * org.hoopwright.finding.HoopwrightFault} a fault of this library.
 */
@NullMarked
package org.hoopwright;

import org.jspecify.annotations.NullMarked;
