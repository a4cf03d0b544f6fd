package org.hoopwright.patterns;

import java.util.List;

/** The lines in which two texts differ. */
final class LineDiff {

  /** Beyond this many pairs of lines everything between the first and last difference is one. */
  private static final long MOST_PAIRS = 4_000_000;

  private LineDiff() {}

  /** Hunks without context. */
  static String of(String before, String after) {
    List<String> a = List.of(before.split("\n", -1));
    List<String> b = List.of(after.split("\n", -1));
    int from = 0;
    while (from < a.size() && from < b.size() && a.get(from).equals(b.get(from))) {
      from++;
    }
    int toA = a.size();
    int toB = b.size();
    while (toA > from && toB > from && a.get(toA - 1).equals(b.get(toB - 1))) {
      toA--;
      toB--;
    }
    StringBuilder out = new StringBuilder();
    long pairs = (long) (toA - from) * (toB - from);
    if (pairs > MOST_PAIRS) {
      hunk(out, a, b, from, toA, from, toB);
    } else {
      hunks(out, a, b, from, toA, toB);
    }
    return out.toString();
  }

  private static void hunks(
      StringBuilder out, List<String> a, List<String> b, int from, int toA, int toB) {
    int n = toA - from;
    int m = toB - from;
    int[][] common = new int[n + 1][m + 1];
    for (int i = n - 1; i >= 0; i--) {
      for (int j = m - 1; j >= 0; j--) {
        common[i][j] =
            a.get(from + i).equals(b.get(from + j))
                ? common[i + 1][j + 1] + 1
                : Math.max(common[i + 1][j], common[i][j + 1]);
      }
    }
    int i = 0;
    int j = 0;
    while (i < n || j < m) {
      int startA = i;
      int startB = j;
      while ((i < n || j < m) && !(i < n && j < m && a.get(from + i).equals(b.get(from + j)))) {
        if (j >= m || (i < n && common[i + 1][j] >= common[i][j + 1])) {
          i++;
        } else {
          j++;
        }
      }
      if (i > startA || j > startB) {
        hunk(out, a, b, from + startA, from + i, from + startB, from + j);
      } else {
        i++;
        j++;
      }
    }
  }

  private static void hunk(
      StringBuilder out, List<String> a, List<String> b, int a0, int a1, int b0, int b1) {
    out.append("@@ -").append(a0 + (a1 > a0 ? 1 : 0)).append(',').append(a1 - a0);
    out.append(" +").append(b0 + (b1 > b0 ? 1 : 0)).append(',').append(b1 - b0).append(" @@\n");
    a.subList(a0, a1).forEach(l -> out.append('-').append(l).append('\n'));
    b.subList(b0, b1).forEach(l -> out.append('+').append(l).append('\n'));
  }
}
