package org.hoopwright.patterns.draw;

import java.util.ArrayList;
import java.util.List;

/** Text on a page: how wide it is, how it breaks into lines, and what of it may be shown. */
final class Words {

  // Advance widths of the printable ASCII characters in thousandths of the font size, of a wide
  // sans-serif face: a page whose text fits with it fits with narrower faces too.
  private static final int[] ADVANCE = {
    318, 401, 460, 838, 637, 951, 780, 275, 391, 391, 500, 838, 318, 361, 318, 337, // space to /
    637, 637, 637, 637, 637, 637, 637, 637, 637, 637, 337, 337, 838, 838, 838, 531, // 0 to ?
    1000, 685, 686, 699, 770, 632, 576, 775, 752, 295, 295, 656, 558, 863, 749, 788, // @ to O
    604, 788, 695, 635, 611, 732, 685, 989, 686, 611, 686, 391, 337, 391, 838, 500, // P to _
    500, 613, 635, 550, 635, 616, 353, 635, 634, 278, 278, 580, 278, 975, 634, 612, // ` to o
    635, 635, 412, 521, 393, 634, 592, 818, 592, 592, 525, 637, 337, 637, 838 // p to ~
  };
  private static final double OTHER = 1.0;

  /** How much wider bold text is, at most. */
  static final double BOLD = 1.2;

  private Words() {}

  /** The width of a text at a font size; bold text is up to {@link #BOLD} times as wide. */
  static double width(String text, double size) {
    double sum = 0;
    for (int i = 0; i < text.length(); i++) {
      int c = text.charAt(i) - ' ';
      sum += c >= 0 && c < ADVANCE.length ? ADVANCE[c] / 1000.0 : OTHER;
    }
    return sum * size;
  }

  /**
   * The text as it may stand on a page: characters that XML does not allow are left out, and so are
   * those that are invisible or turn the direction of writing; white space becomes one space.
   */
  static String clean(String text) {
    StringBuilder out = new StringBuilder();
    boolean gap = false;
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
        gap = out.length() > 0;
      } else if (visible(c)) {
        if (gap) {
          out.append(' ');
          gap = false;
        }
        out.appendCodePoint(c);
      }
    }
    return out.toString();
  }

  private static boolean visible(int c) {
    int type = Character.getType(c);
    return type != Character.CONTROL
        && type != Character.FORMAT
        && type != Character.SURROGATE
        && type != Character.UNASSIGNED
        && c != 0xFFFE
        && c != 0xFFFF;
  }

  /**
   * The text in lines no wider than asked for, words kept together where they fit; the last line
   * ends with dots when there would be more lines than wanted.
   */
  static List<String> wrap(String text, double size, double width, int mostLines) {
    List<String> lines = new ArrayList<>();
    String rest = clean(text);
    while (!rest.isEmpty()) {
      int fit = fitting(rest, size, width);
      if (lines.size() == mostLines - 1 && fit < rest.length()) {
        lines.add(rest.substring(0, fitting(rest, size, width - size)).stripTrailing() + "…");
        return lines;
      }
      int cut = fit;
      if (fit < rest.length()) {
        int space = rest.lastIndexOf(' ', fit);
        cut = space > 0 ? space : fit;
      }
      lines.add(rest.substring(0, cut).stripTrailing());
      rest = rest.substring(cut).stripLeading();
    }
    return lines;
  }

  /** How many characters fit, at least one; never half of a pair. */
  private static int fitting(String text, double size, double width) {
    double sum = 0;
    int i = 0;
    while (i < text.length()) {
      int next = i + Character.charCount(text.codePointAt(i));
      sum += width(text.substring(i, next), size);
      if (sum > width && i > 0) {
        return i;
      }
      i = next;
    }
    return i;
  }
}
