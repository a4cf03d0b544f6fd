/** The command line for pattern authors. */
@NullMarked
package org.hoopwright.patterns.cli;

import org.jspecify.annotations.NullMarked;
