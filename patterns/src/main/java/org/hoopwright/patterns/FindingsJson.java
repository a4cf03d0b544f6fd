package org.hoopwright.patterns;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hoopwright.check.Silence;
import org.hoopwright.finding.Fact;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.PatchStep;
import org.hoopwright.finding.Severity;
import org.hoopwright.patterns.json.JsonText;

/**
 * Findings as JSON, format {@value #FORMAT}:
 *
 * <pre>{@code
 * {
 *   "format": "hoopwright/findings-1",
 *   "files": [
 *     {
 *       "file": "frame.json",
 *       "findings": [
 *         {
 *           "code": "hole-twice",
 *           "severity": "warning",
 *           "message": "...",
 *           "where": {
 *             "pointer": "/holes/tieOff/2", "line": 9, "column": 30,
 *             "end": { "line": 9, "column": 34 }, "about": ["L5H", "R5H"]
 *           },
 *           "fix": "...",
 *           "source": "..."
 *         }
 *       ]
 *     }
 *   ],
 *   "counts": { "error": 0, "warning": 1, "note": 0 }
 * }
 * }</pre>
 *
 * <p>Lines and columns count from 1, columns in UTF-16 units; {@code end} is just past the last
 * character. {@code line}, {@code column} and {@code end} are absent when the place is not known,
 * {@code fix} when nothing needs doing, {@code source} when the rule has none. {@code facts} are
 * the numbers that a finding rests on, {@code patch} its fix as JSON Patch (RFC 6902) where that is
 * mechanical, {@code silent} the rules that could not be asked of a file. Every file is there, also
 * without findings, and every finding is.
 */
public final class FindingsJson {

  /** The value of {@code format}. */
  public static final String FORMAT = "hoopwright/findings-1";

  private FindingsJson() {}

  /** The report of these files, in their order, ending with a line end. */
  public static String of(List<CheckedFile> files) {
    List<Object> entries = new ArrayList<>();
    Map<String, Object> counts = new LinkedHashMap<>();
    for (Severity severity : Severity.values()) {
      counts.put(severity.word(), 0);
    }
    for (CheckedFile file : files) {
      List<Object> findings = new ArrayList<>();
      for (Finding finding : file.findings()) {
        findings.add(finding(finding));
        counts.merge(finding.severity().word(), 1, (a, b) -> (Integer) a + (Integer) b);
      }
      Map<String, Object> entry = new LinkedHashMap<>();
      entry.put("file", file.name());
      entry.put("findings", findings);
      if (!file.silent().isEmpty()) {
        entry.put("silent", file.silent().stream().map(FindingsJson::silence).toList());
      }
      entries.add(entry);
    }
    Map<String, Object> report = new LinkedHashMap<>();
    report.put("format", FORMAT);
    report.put("files", entries);
    report.put("counts", counts);
    return JsonText.of(report);
  }

  private static Map<String, Object> finding(Finding finding) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("code", finding.code().code());
    members.put("severity", finding.severity().word());
    members.put("message", finding.message());
    members.put("where", where(finding));
    if (!finding.fix().isEmpty()) {
      members.put("fix", finding.fix());
    }
    finding.source().ifPresent(s -> members.put("source", s));
    if (!finding.facts().isEmpty()) {
      Map<String, Object> facts = new LinkedHashMap<>();
      finding.facts().forEach(f -> facts.put(f.name(), fact(f)));
      members.put("facts", facts);
    }
    if (!finding.patch().isEmpty()) {
      members.put("patch", finding.patch().stream().map(FindingsJson::step).toList());
    }
    return members;
  }

  private static Map<String, Object> fact(Fact fact) {
    Map<String, Object> members = new LinkedHashMap<>();
    Object value = fact.whole() ? (Object) (int) fact.value() : (Object) rounded(fact.value());
    members.put("value", value);
    if (!fact.unit().isEmpty()) {
      members.put("unit", fact.unit());
    }
    return members;
  }

  private static double rounded(double value) {
    return Math.rint(value * 1000) / 1000;
  }

  private static Map<String, Object> step(PatchStep step) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("op", step.op().word());
    if (step.op() == PatchStep.Op.MOVE) {
      members.put("from", step.from());
    }
    members.put("path", step.path());
    if (step.op() == PatchStep.Op.REPLACE) {
      String value = step.value();
      members.put(
          "value",
          value.startsWith("\"")
              ? value.substring(1, value.length() - 1)
              : (Object) Double.valueOf(value));
    }
    return members;
  }

  private static Map<String, Object> silence(Silence silence) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("code", silence.rule().code());
    members.put("because", silence.because());
    return members;
  }

  private static Map<String, Object> where(Finding finding) {
    Map<String, Object> where = new LinkedHashMap<>();
    where.put("pointer", finding.pointer());
    finding
        .place()
        .ifPresent(
            p -> {
              where.put("line", p.line());
              where.put("column", p.column());
              Map<String, Object> end = new LinkedHashMap<>();
              end.put("line", p.endLine());
              end.put("column", p.endColumn());
              where.put("end", end);
            });
    where.put("about", finding.about());
    return where;
  }
}
