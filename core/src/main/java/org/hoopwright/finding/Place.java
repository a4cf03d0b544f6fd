package org.hoopwright.finding;

/**
 * A stretch of a text file.
 *
 * @param line first line, from 1
 * @param column first column, from 1, counted in UTF-16 units; a tab counts as one
 * @param endLine line of the end
 * @param endColumn column just past the last character
 */
public record Place(int line, int column, int endLine, int endColumn) implements Comparable<Place> {

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException when a number is below 1 or the end lies before the start
   */
  public Place {
    if (line < 1 || column < 1 || endLine < line || (endLine == line && endColumn < column)) {
      throw new IllegalArgumentException(
          "The place (%s:%s to %s:%s) must start at 1:1 or later and not end before it starts."
              .formatted(line, column, endLine, endColumn));
    }
  }

  @Override
  public int compareTo(Place other) {
    int byLine = Integer.compare(line, other.line);
    return byLine != 0 ? byLine : Integer.compare(column, other.column);
  }
}
