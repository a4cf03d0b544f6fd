package org.hoopwright.patterns;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that somebody may have meant. */
final class Nearest {

  /** Longer words are compared by their start, so that hostile ones cost nothing. */
  private static final int MAX_COMPARED = 24;

  private Nearest() {}

  /**
   * The word with the fewest letters added, dropped, replaced or exchanged with their neighbour,
   * capitals not counting; the first of several.
   *
   * @param words at least one
   */
  static String of(String given, List<String> words) {
    String best = words.get(0);
    int least = Integer.MAX_VALUE;
    String from = comparable(given);
    for (String word : words) {
      String to = comparable(word);
      if (Math.abs(from.length() - to.length()) < least) {
        int distance = distance(from, to);
        if (distance < least) {
          least = distance;
          best = word;
        }
      }
    }
    return best;
  }

  /**
   * The nearest of the words, if it is so near that it was likely meant: at most one letter in
   * three is another. Our choice.
   *
   * @param words may be empty
   */
  static Optional<String> plausible(String given, List<String> words) {
    if (words.isEmpty() || given.length() > MAX_COMPARED) {
      return Optional.empty();
    }
    String word = of(given, words);
    int shorter = Math.min(given.length(), word.length());
    boolean near = distance(comparable(given), comparable(word)) <= Math.max(1, shorter / 3);
    return near ? Optional.of(word) : Optional.empty();
  }

  private static String comparable(String text) {
    return text.substring(0, Math.min(text.length(), MAX_COMPARED)).toLowerCase(Locale.ROOT);
  }

  /** Optimal string alignment distance. */
  private static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        int replaced = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        d[i][j] = Math.min(replaced, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
