package org.hoopwright.patterns;

import org.hoopwright.finding.Finding;

/** One finding as it stands in a plan: just as in a report of findings. */
final class FindingJson {

  private FindingJson() {}

  static JsonLines of(Finding finding) {
    JsonLines.Members where = JsonLines.lineObject().put("pointer", finding.pointer());
    finding
        .place()
        .ifPresent(
            p ->
                where
                    .put("line", p.line())
                    .put("column", p.column())
                    .put(
                        "end",
                        JsonLines.lineObject()
                            .put("line", p.endLine())
                            .put("column", p.endColumn())
                            .end()));
    where.put("about", JsonLines.names(finding.about()));
    JsonLines.Members all =
        JsonLines.object()
            .put("code", finding.code().code())
            .put("severity", finding.severity().word())
            .put("message", finding.message())
            .put("where", where.end());
    if (!finding.fix().isEmpty()) {
      all.put("fix", finding.fix());
    }
    finding.source().ifPresent(s -> all.put("source", s));
    return all.end();
  }
}
