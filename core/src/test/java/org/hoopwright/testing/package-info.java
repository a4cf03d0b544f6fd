/**
 * Plain Java fixtures for tests: they need no test framework, but for the generators of jqwik,
 * whose names end in {@code Arbitraries}.
 */
@NullMarked
package org.hoopwright.testing;

import org.jspecify.annotations.NullMarked;
