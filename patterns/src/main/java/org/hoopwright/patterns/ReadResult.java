package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.Hoopwright;
import org.hoopwright.check.CheckReport;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.Findings;
import org.hoopwright.frame.Draft;
import org.hoopwright.frame.Layout;

/** What came of reading a layout file. Immutable. */
public final class ReadResult {

  private final String fileName;
  private final String text;
  private final byte[] bytes;
  private final Optional<Draft> draft;
  private final boolean sound;
  private final List<Finding> findings;

  ReadResult(
      String fileName,
      String text,
      byte[] bytes,
      Optional<Draft> draft,
      boolean sound,
      List<Finding> findings) {
    this.fileName = fileName;
    this.text = text;
    this.bytes = bytes.clone();
    this.draft = draft;
    this.sound = sound;
    this.findings = Findings.sorted(findings);
  }

  /** The file, as the caller calls it. */
  public String fileName() {
    return fileName;
  }

  /** The file's text, without byte order mark; places of findings count in it. */
  public String text() {
    return text;
  }

  /** SHA-256 of the file's bytes, in 64 small hexadecimal digits; worked out at every call. */
  public String sha256() {
    return FileText.sha256(bytes);
  }

  /**
   * The layout; empty when any finding is an error, because nothing is planned from such a file.
   */
  public Optional<Layout> layout() {
    return Findings.hasErrors(findings) ? Optional.empty() : checkable();
  }

  /**
   * The layout as far as it makes sense to show it: there also beside errors that leave the rest of
   * the file meaning what it says, such as a wrong word for the game. What is wrong is left out of
   * it, so never plan from this one; see {@link #layout()}.
   */
  public Optional<Layout> checkable() {
    return sound ? draft.map(Draft::layout) : Optional.empty();
  }

  /**
   * All that is known of the layout, however much of the file is wrong: for {@link
   * org.hoopwright.Hoopwright#check(Draft)}. Empty when nothing in the file can be judged: it holds
   * no object, or another format.
   */
  public Optional<Draft> draft() {
    return draft;
  }

  /**
   * What is wrong or suspect about the file's text and structure, by place; an unmodifiable list.
   * What the layout means is in {@link #report()}.
   */
  public List<Finding> findings() {
    return findings;
  }

  /**
   * Everything found about the file: its text, its layout, its bed and whether it has a route. It
   * is worked out at every call.
   */
  public CheckReport report() {
    List<Finding> all = new ArrayList<>(findings);
    Optional<CheckReport> checked = draft.map(Hoopwright::check);
    checked.ifPresent(report -> all.addAll(report.findings()));
    return new CheckReport(
        Findings.sorted(all), checked.map(CheckReport::silent).orElse(List.of()));
  }

  /** For example {@code frame.json: 2 findings}. */
  @Override
  public String toString() {
    return fileName + ": " + findings.size() + (findings.size() == 1 ? " finding" : " findings");
  }
}
