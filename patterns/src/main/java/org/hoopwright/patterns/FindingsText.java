package org.hoopwright.patterns;

import java.util.List;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.Place;
import org.hoopwright.patterns.json.Shown;
import org.hoopwright.patterns.json.TextLines;

/**
 * Findings as text, as compilers print them:
 *
 * <pre>{@code
 * frame.json:4:11: error: game cannot be "tenis"; the nearest word is "tennis". [wrong-value]
 *   "game": "tenis",
 *           ^
 *   fix: Write one of "tennis", "badminton", "squash", "racquetball", "other".
 * }</pre>
 *
 * <p>The first line has file, line, column, severity, message and code. Then comes the source line
 * with a caret under the place, tabs shown as one blank; of a long line only the stretch round the
 * place, with an ellipsis where something is left out. Lines that begin with two blanks and {@code
 * fix:} or {@code source:} say what to do and where a rule is published, when there is something to
 * say. A finding without place has the file alone before its severity, and no source line.
 *
 * <p>Whatever a file holds, what is printed holds no control character but {@code \n}, and nothing
 * that changes the order in which the rest shows: such characters are written as escapes. Nothing
 * is left out, however many findings there are.
 */
public final class FindingsText {

  /** The most characters of a source line that are shown. */
  private static final int MAX_EXCERPT = 120;

  private static final String ELLIPSIS = "\u2026";

  private FindingsText() {}

  /** All findings of these files, in their order; empty when there are none. */
  public static String of(List<CheckedFile> files) {
    StringBuilder out = new StringBuilder();
    for (CheckedFile file : files) {
      TextLines lines = new TextLines(file.text());
      for (Finding finding : file.findings()) {
        finding(out, Shown.escaped(file.name()), file.text(), lines, finding);
      }
    }
    return out.toString();
  }

  private static void finding(
      StringBuilder out, String name, String text, TextLines lines, Finding finding) {
    out.append(name).append(':');
    finding.place().ifPresent(p -> out.append(p.line()).append(':').append(p.column()).append(':'));
    out.append(' ').append(finding.severity().word()).append(": ");
    out.append(Shown.escaped(finding.message()));
    out.append(" [").append(finding.code().code()).append("]\n");
    finding.place().ifPresent(p -> excerpt(out, text, lines, p));
    if (!finding.fix().isEmpty()) {
      out.append("  fix: ").append(Shown.escaped(finding.fix())).append('\n');
    }
    finding.source().ifPresent(s -> out.append("  source: ").append(Shown.escaped(s)).append('\n'));
  }

  /** Looks at the stretch that is shown and at no more: a file may be one line of 4 MB. */
  private static void excerpt(StringBuilder out, String text, TextLines lines, Place place) {
    if (place.line() > lines.count()) {
      return;
    }
    int start = lines.start(place.line());
    int end = lines.end(place.line());
    int at = Math.min(start + place.column() - 1, end);
    boolean all = end - start <= MAX_EXCERPT;
    int from = all ? start : whole(text, Math.max(start, at - MAX_EXCERPT / 2));
    int to = whole(text, Math.min(end, from + MAX_EXCERPT));
    if (text.substring(from, to).isBlank()) {
      return;
    }
    String before = (from > start ? ELLIPSIS : "") + shown(text, from, at);
    String after = shown(text, at, to) + (to < end ? ELLIPSIS : "");
    out.append(before).append(after).append('\n');
    out.append(" ".repeat(before.codePointCount(0, before.length()))).append("^\n");
  }

  private static String shown(String text, int from, int to) {
    return Shown.escaped(text.substring(from, to).replace('\t', ' '));
  }

  /** The offset, or one less where it would part a surrogate pair. */
  private static int whole(String text, int offset) {
    return offset > 0
            && offset < text.length()
            && Character.isLowSurrogate(text.charAt(offset))
            && Character.isHighSurrogate(text.charAt(offset - 1))
        ? offset - 1
        : offset;
  }
}
