/** Plain Java fixtures for tests: they need no test framework. */
@NullMarked
package org.hoopwright.testing;

import org.jspecify.annotations.NullMarked;
