/**
 * Plain Java fixtures for tests: they need no test framework, but for the generators of jqwik,
 * whose names end in {@code Arbitraries}. The routes by a constraint solver, whose names begin with
 * {@code Choco}, and what compares with them need Choco.
 */
@NullMarked
package org.hoopwright.testing;

import org.jspecify.annotations.NullMarked;
