/**
 * Units of force and length, with their exact factors.
 *
 * <p>Inside the library forces are newtons and lengths are millimetres; every name of a number says
 * so. Other units appear only where a person states them: in a layout file, in a job and in printed
 * sheets.
 */
@NullMarked
package org.hoopwright.units;

import org.jspecify.annotations.NullMarked;
