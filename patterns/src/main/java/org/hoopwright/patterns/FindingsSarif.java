package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hoopwright.check.RuleBook;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.patterns.json.JsonText;

/**
 * Findings as SARIF 2.1.0 (OASIS), which code-scanning pages and editors read. Lines and columns
 * count from 1, columns in UTF-16 units; a fingerprint rests on code and pointer, so that it
 * survives edits elsewhere in the file.
 */
public final class FindingsSarif {

  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

  private static final List<FindingCode> CODES = List.of(FindingCode.values());

  private FindingsSarif() {}

  /**
   * The report of these files, in their order, ending with a line end.
   *
   * @param files the files with their findings
   * @param exitCode the exit code of the call that made it
   */
  public static String of(List<CheckedFile> files, int exitCode) {
    List<Object> results = new ArrayList<>();
    boolean sound = true;
    for (CheckedFile file : files) {
      for (Finding finding : file.findings()) {
        results.add(result(file, finding));
        sound &= finding.code() != FindingCode.RULE_CRASHED;
      }
    }
    Map<String, Object> driver = new LinkedHashMap<>();
    driver.put("name", "hoopwright");
    driver.put("rules", rules());
    Map<String, Object> invocation = new LinkedHashMap<>();
    invocation.put("executionSuccessful", sound);
    invocation.put("exitCode", exitCode);
    Map<String, Object> run = new LinkedHashMap<>();
    run.put("tool", Map.of("driver", driver));
    run.put("columnKind", "utf16CodeUnits");
    run.put("invocations", List.of(invocation));
    run.put("results", results);
    Map<String, Object> log = new LinkedHashMap<>();
    log.put("$schema", SCHEMA);
    log.put("version", "2.1.0");
    log.put("runs", List.of(run));
    return JsonText.of(log);
  }

  private static List<Object> rules() {
    List<Object> rules = new ArrayList<>();
    for (FindingCode code : CODES) {
      Map<String, Object> rule = new LinkedHashMap<>();
      rule.put("id", code.code());
      rule.put("shortDescription", Map.of("text", code.summary()));
      rule.put("fullDescription", Map.of("text", RuleBook.of(code).explanation()));
      rule.put("defaultConfiguration", Map.of("level", code.severity().word()));
      rules.add(rule);
    }
    return rules;
  }

  private static Map<String, Object> result(CheckedFile file, Finding finding) {
    Map<String, Object> physical = new LinkedHashMap<>();
    physical.put("artifactLocation", Map.of("uri", uri(file.name())));
    finding
        .place()
        .ifPresent(
            p -> {
              Map<String, Object> region = new LinkedHashMap<>();
              region.put("startLine", p.line());
              region.put("startColumn", p.column());
              region.put("endLine", p.endLine());
              region.put("endColumn", p.endColumn());
              physical.put("region", region);
            });
    Map<String, Object> location = new LinkedHashMap<>();
    location.put("physicalLocation", physical);
    if (!finding.pointer().isEmpty()) {
      location.put("logicalLocations", List.of(Map.of("fullyQualifiedName", finding.pointer())));
    }
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("ruleId", finding.code().code());
    result.put("ruleIndex", CODES.indexOf(finding.code()));
    result.put("level", finding.severity().word());
    String text =
        finding.fix().isEmpty() ? finding.message() : finding.message() + " " + finding.fix();
    result.put("message", Map.of("text", text));
    result.put("locations", List.of(location));
    result.put(
        "partialFingerprints",
        Map.of("codeAndPointer/v1", finding.code().code() + finding.pointer()));
    return result;
  }

  /** A file's name as the reference of a URI (RFC 3986): forward slashes, escapes as UTF-8. */
  static String uri(String name) {
    StringBuilder uri = new StringBuilder();
    boolean first = true;
    for (byte b : name.replace('\\', '/').getBytes(UTF_8)) {
      char c = (char) (b & 0xFF);
      boolean plain =
          (c >= 'a' && c <= 'z')
              || (c >= 'A' && c <= 'Z')
              || (c >= '0' && c <= '9')
              || "-._~/".indexOf(c) >= 0;
      if (plain) {
        uri.append(c);
      } else {
        uri.append('%').append(HexFormat.of().withUpperCase().toHexDigits(b));
      }
      first = false;
    }
    return first ? "-" : uri.toString();
  }
}
