/**
 * The bed: which string span runs between which two holes, and where that is in millimetres.
 *
 * <p>The second value of the pipeline layout → bed → route → bench plan. {@link
 * org.hoopwright.bed.StatedAssignment} makes one from a layout's skip rules; a {@link
 * org.hoopwright.bed.Bed} knows its spans, hole positions, crossings and weave.
 */
@NullMarked
package org.hoopwright.bed;

import org.jspecify.annotations.NullMarked;
