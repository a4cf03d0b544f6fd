package org.hoopwright.patterns;

import java.util.List;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.Severity;

/**
 * Findings as workflow commands, one a line, which a build page shows beside the line of the file:
 * {@code ::error file=frame.json,line=4,col=11,endLine=4,endColumn=18,title=wrong-value::…}.
 */
public final class FindingsGithub {

  private FindingsGithub() {}

  /** All findings of these files, in their order; empty when there are none. */
  public static String of(List<CheckedFile> files) {
    StringBuilder out = new StringBuilder();
    for (CheckedFile file : files) {
      for (Finding finding : file.findings()) {
        out.append("::").append(command(finding.severity()));
        out.append(" file=").append(property(file.name()));
        finding
            .place()
            .ifPresent(
                p ->
                    out.append(",line=")
                        .append(p.line())
                        .append(",col=")
                        .append(p.column())
                        .append(",endLine=")
                        .append(p.endLine())
                        .append(",endColumn=")
                        .append(p.endColumn()));
        out.append(",title=").append(property(finding.code().code()));
        String text =
            finding.fix().isEmpty() ? finding.message() : finding.message() + " " + finding.fix();
        out.append("::").append(data(text)).append('\n');
      }
    }
    return out.toString();
  }

  private static String command(Severity severity) {
    return severity == Severity.NOTE ? "notice" : severity.word();
  }

  private static String data(String text) {
    return text.replace("%", "%25").replace("\r", "%0D").replace("\n", "%0A");
  }

  private static String property(String text) {
    return data(text).replace(":", "%3A").replace(",", "%2C");
  }
}
