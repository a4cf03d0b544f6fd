package org.hoopwright.patterns.cli;

/** How results are written. The names are the words of the command line. */
enum Format {
  /** For people. */
  text,
  /** For programs. */
  json
}
