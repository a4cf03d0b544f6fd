package org.hoopwright.patterns;

import org.hoopwright.finding.Finding;

/** One finding as it stands in a plan. */
final class FindingJson {

  private FindingJson() {}

  static JsonText of(Finding finding) {
    JsonText.Members where = JsonText.lineObject().put("pointer", finding.pointer());
    finding
        .place()
        .ifPresent(
            p ->
                where
                    .put("line", p.line())
                    .put("column", p.column())
                    .put("endLine", p.endLine())
                    .put("endColumn", p.endColumn()));
    where.put("about", JsonText.names(finding.about()));
    JsonText.Members all =
        JsonText.object()
            .put("code", finding.code().code())
            .put("severity", finding.severity().word())
            .put("message", finding.message())
            .put("where", where.end())
            .put("fix", finding.fix());
    finding.source().ifPresent(s -> all.put("source", s));
    return all.end();
  }
}
