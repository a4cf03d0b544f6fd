package org.hoopwright.patterns.cli;

/** How findings are written. The names are the words of the command line. */
enum FindingsFormat {
  /** For people, one a line, as compilers print. */
  text,
  /** For programs. */
  json,
  /** For code-scanning pages and editors: SARIF 2.1.0. */
  sarif,
  /** For build pages: workflow commands, one a line. */
  github,
  /** For a browser: marked on a drawing of each frame. */
  html
}
