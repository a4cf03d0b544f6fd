/**
 * Files and sheets of Hoopwright: layouts read and written, plans written for programs ({@link
 * org.hoopwright.patterns.PlanWriter}) and for people ({@link org.hoopwright.patterns.PlanSheet},
 * {@link org.hoopwright.patterns.RouteTable}).
 *
 * <p>Same input, same text: no locale, clock or order of hashing has a say in it.
 */
@NullMarked
package org.hoopwright.patterns;

import org.jspecify.annotations.NullMarked;
