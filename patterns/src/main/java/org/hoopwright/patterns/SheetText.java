package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.List;
import org.hoopwright.patterns.json.Shown;

/** Lines of a sheet, none wider than {@value #WIDTH} characters. Not thread-safe. */
final class SheetText {

  /** The widest line: what fits on a page and on a screen. */
  static final int WIDTH = 100;

  private final StringBuilder out = new StringBuilder();

  /** A heading with an empty line before it. */
  SheetText heading(String text) {
    return blank().paragraph("", text);
  }

  /** An empty line, unless nothing is above it. */
  SheetText blank() {
    if (!out.isEmpty()) {
      out.append('\n');
    }
    return this;
  }

  /** A rule over the whole width. */
  SheetText rule(char c) {
    out.append(String.valueOf(c).repeat(WIDTH)).append('\n');
    return this;
  }

  /** Text that begins after a mark; further lines are indented as far as the mark is wide. */
  SheetText paragraph(String mark, String text) {
    String indent = " ".repeat(mark.length());
    String lead = mark;
    for (String line : PlainText.wrap(text, WIDTH - mark.length())) {
      out.append((lead + line).stripTrailing()).append('\n');
      lead = indent;
    }
    return this;
  }

  /**
   * Rows in columns as wide as their widest cell, two spaces apart; the last column is wrapped to
   * what is left. Numbers stand to the right, by the column's flag.
   *
   * @param indent spaces before each row
   * @param rightAligned for each column but the last whether it stands to the right
   * @param rows cells, as many in each row as there are flags and one more
   */
  SheetText table(int indent, List<Boolean> rightAligned, List<List<String>> rows) {
    List<Integer> widths = new ArrayList<>();
    for (int c = 0; c < rightAligned.size(); c++) {
      int column = c;
      widths.add(
          rows.stream().mapToInt(r -> Shown.escaped(r.get(column)).length()).max().orElse(0));
    }
    for (List<String> row : rows) {
      StringBuilder lead = new StringBuilder(" ".repeat(indent));
      for (int c = 0; c < rightAligned.size(); c++) {
        String cell = Shown.escaped(row.get(c));
        String space = " ".repeat(widths.get(c) - cell.length());
        lead.append(rightAligned.get(c) ? space + cell : cell + space).append("  ");
      }
      paragraph(lead.toString(), row.get(row.size() - 1));
    }
    return this;
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
