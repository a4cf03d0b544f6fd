/**
 * The command line for pattern authors. {@link org.hoopwright.patterns.cli.Main} wires streams and
 * the exit code to {@link org.hoopwright.patterns.cli.CommandRunner}, which runs within a process.
 */
@NullMarked
package org.hoopwright.patterns.cli;

import org.jspecify.annotations.NullMarked;
