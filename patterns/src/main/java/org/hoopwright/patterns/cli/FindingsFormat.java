package org.hoopwright.patterns.cli;

/** How findings are written. The names are the words of the command line. */
enum FindingsFormat {
  /** For people, one a line, as compilers print. */
  text,
  /** For programs. */
  json,
  /** For a browser: marked on a drawing of each frame. */
  html
}
