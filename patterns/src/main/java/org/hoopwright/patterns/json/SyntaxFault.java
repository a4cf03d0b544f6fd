package org.hoopwright.patterns.json;

import java.util.Optional;

/**
 * The first place where a text stops being JSON with comments, in words for the person who wrote
 * it.
 *
 * @param from offset of the fault
 * @param to offset just past it
 * @param message what is wrong, one sentence
 * @param fix what to do
 * @param opener offset of the bracket that is still open where the text ends, else -1
 * @param empty whether the text holds no value at all
 */
record SyntaxFault(int from, int to, String message, String fix, int opener, boolean empty) {

  SyntaxFault(int from, int to, String message, String fix) {
    this(from, to, message, fix, -1, false);
  }

  /** The first fault, or empty when the text is JSON. Takes time linear in the text. */
  static Optional<SyntaxFault> find(String text) {
    return new SyntaxScan(text).run();
  }
}
