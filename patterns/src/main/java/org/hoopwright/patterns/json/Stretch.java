package org.hoopwright.patterns.json;

import org.hoopwright.finding.Place;

/**
 * A stretch of a text. Its line and column are worked out when they are asked for, because most
 * never are.
 *
 * @param lines the text's lines
 * @param from offset of its first character
 * @param to offset just past its last character
 */
public record Stretch(TextLines lines, int from, int to) {

  /** Where it is. */
  public Place place() {
    return lines.place(from, to);
  }

  /** Its first character alone. */
  Stretch first() {
    return new Stretch(lines, from, from + 1);
  }

  /** From the start of this one to the end of another one of the same text. */
  Stretch through(Stretch last) {
    return new Stretch(lines, from, last.to);
  }
}
