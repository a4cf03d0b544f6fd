package org.hoopwright.patterns.json;

import java.util.Arrays;
import org.hoopwright.finding.Place;
import org.jspecify.annotations.Nullable;

/**
 * The lines of a text. A line ends at LF, CR LF or CR alone; columns count UTF-16 units from 1, a
 * tab as one.
 */
public final class TextLines {

  private final String text;
  private volatile int @Nullable [] starts; // found when first asked for; any thread finds the same

  /** The lines of this text; there is always one. */
  public TextLines(String text) {
    this.text = text;
  }

  private int[] starts() {
    int[] known = starts;
    if (known == null) {
      known = find(text);
      starts = known;
    }
    return known;
  }

  private static int[] find(String text) {
    int[] found = new int[16];
    int lines = 1; // the first starts at 0
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean ends = c == '\n' || (c == '\r' && !text.startsWith("\n", i + 1));
      if (ends) {
        if (lines == found.length) {
          found = Arrays.copyOf(found, 2 * lines);
        }
        found[lines++] = i + 1;
      }
    }
    return Arrays.copyOf(found, lines);
  }

  /** How many lines there are, at least 1. */
  public int count() {
    return starts().length;
  }

  /** The line of this offset, from 1; offsets up to the text's length are allowed. */
  public int lineAt(int offset) {
    int found = Arrays.binarySearch(starts(), offset);
    return found >= 0 ? found + 1 : -found - 1;
  }

  /** The column of this offset, from 1. */
  public int columnAt(int offset) {
    return offset - start(lineAt(offset)) + 1;
  }

  /** The place from one offset to just before another. */
  public Place place(int from, int to) {
    return new Place(lineAt(from), columnAt(from), lineAt(to), columnAt(to));
  }

  /**
   * The offset at which a line starts.
   *
   * @param line from 1 to {@link #count}
   */
  public int start(int line) {
    return starts()[line - 1];
  }

  /**
   * The offset just past a line's last character, its line end left aside.
   *
   * @param line from 1 to {@link #count}
   */
  public int end(int line) {
    int end = line == count() ? text.length() : start(line + 1);
    while (end > start(line) && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
      end--;
    }
    return end;
  }

  /** A line without its end, or nothing when there is no such line. */
  public String line(int line) {
    return line < 1 || line > count() ? "" : text.substring(start(line), end(line));
  }
}
