/**
 * The bed: which string span runs between which two holes, and where that is in millimetres.
 *
 * <p>{@link org.hoopwright.bed.StatedAssignment} reads a layout's skip rules and makes an {@link
 * org.hoopwright.bed.Assignment}: a {@link org.hoopwright.bed.Bed}, or the findings that stand in
 * its way. {@link org.hoopwright.bed.HolePositions} puts every hole in its place. A bed is fixed by
 * its {@link org.hoopwright.bed.Labels}: what each hole carries, in list order.
 */
@NullMarked
package org.hoopwright.bed;

import org.jspecify.annotations.NullMarked;
