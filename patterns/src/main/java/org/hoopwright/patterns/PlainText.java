package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hoopwright.patterns.json.Shown;

/** Text for screens and paper: nothing that does not show, and lines of a limited width. */
final class PlainText {

  private PlainText() {}

  /**
   * The text, made safe, in lines: broken at spaces, and within a word only when the word alone is
   * too wide.
   *
   * @param text what to write
   * @param width the widest line, in characters; 10 or more
   */
  static List<String> wrap(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : Shown.escaped(text).split(" +", -1)) {
      String rest = word;
      if (!line.isEmpty() && line.length() + 1 + rest.length() <= width) {
        line.append(' ').append(rest);
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (rest.length() > width) {
        int cut = Character.isHighSurrogate(rest.charAt(width - 1)) ? width - 1 : width;
        lines.add(rest.substring(0, cut));
        rest = rest.substring(cut);
      }
      line.append(rest);
    }
    if (!line.isEmpty() || lines.isEmpty()) {
      lines.add(line.toString());
    }
    return lines;
  }

  /** The text with a capital first letter. */
  static String capitalised(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
