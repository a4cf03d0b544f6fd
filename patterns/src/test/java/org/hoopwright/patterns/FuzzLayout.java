package org.hoopwright.patterns;

import static org.hoopwright.patterns.FuzzChecks.require;

import java.util.List;
import java.util.Optional;
import org.hoopwright.check.CheckReport;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.Findings;
import org.hoopwright.frame.Layout;
import org.hoopwright.patterns.json.JsonTree;
import tools.jackson.databind.json.JsonMapper;

/**
 * Any bytes as a layout file: read, checked, told in every format, mended, and written back when
 * nothing is wrong. A fuzzer calls {@link #fuzzerTestOneInput}; see the profile {@code fuzz}.
 */
public final class FuzzLayout {

  /** More fixes than this are carried out one by one only, which is linear in them. */
  private static final int MOST_FIXES = 20;

  private static final int SOME = 8;

  private static final JsonMapper JSON = new JsonMapper();

  private FuzzLayout() {}

  /** The name and the signature are what the fuzzer looks for. */
  public static void fuzzerTestOneInput(byte[] bytes) {
    FuzzChecks.soon(() -> run(bytes));
  }

  private static void run(byte[] bytes) {
    ReadResult read;
    try {
      read = LayoutReader.read("frame.json", bytes);
    } catch (UnreadableFile e) {
      require(e.getMessage().lines().count() == 1, e::getMessage);
      return;
    }
    CheckReport report = read.report();
    FuzzChecks.placed(read.text(), report.findings());
    require(
        read.layout().isPresent() != Findings.hasErrors(read.findings()),
        () -> "a layout and errors, or neither");
    tell(read, report);
    mend(read, report.findings());
    if (!Findings.hasErrors(report.findings())) {
      writeBack(read.layout().orElseThrow());
    }
  }

  private static void tell(ReadResult read, CheckReport report) {
    List<CheckedFile> files =
        List.of(new CheckedFile("frame.json", read.text(), report.findings(), report.silent()));
    String text = FindingsText.of(files) + FindingsGithub.of(files);
    require(
        text.codePoints().allMatch(c -> c == '\n' || !Character.isISOControl(c)),
        () -> "a control character in " + text);
    // The other formats are slow to make and hold the same, so some of the inputs do.
    if (!report.findings().isEmpty() && read.text().length() % SOME == 0) {
      int told = JSON.readTree(FindingsJson.of(files)).at("/files/0/findings").size();
      require(told == report.findings().size(), () -> "JSON tells " + told);
      int results = JSON.readTree(FindingsSarif.of(files, 1)).at("/runs/0/results").size();
      require(results == report.findings().size(), () -> "SARIF tells " + results);
    }
  }

  private static void mend(ReadResult read, List<Finding> findings) {
    List<Finding> mechanical = findings.stream().filter(f -> !f.patch().isEmpty()).toList();
    for (Finding f : mechanical) {
      TextFix.apply(read.text(), f)
          .ifPresent(
              after -> {
                require(JsonTree.parse(after).flaw().isEmpty(), () -> f + " makes " + after);
                require(!after.equals(read.text()), () -> f + " changes nothing");
              });
    }
    if (mechanical.isEmpty() || mechanical.size() > MOST_FIXES) {
      return;
    }
    try {
      Fixes fixes = Fixes.of("frame.json", read.text(), r -> r.report().findings());
      Fixes again = Fixes.of("frame.json", fixes.after(), r -> r.report().findings());
      require(!again.changed(), () -> "mended twice: " + fixes.after());
      require(fixes.changed() == !fixes.diff("frame.json").isEmpty(), () -> "a diff of nothing");
    } catch (UnreadableFile e) {
      throw new AssertionError(e);
    }
  }

  private static void writeBack(Layout layout) {
    String written = LayoutWriter.write(layout);
    ReadResult back = Corpus.read(written);
    require(
        back.layout().equals(Optional.of(layout)),
        () -> "does not read back: " + written + back.findings());
    require(
        LayoutWriter.write(back.layout().orElseThrow()).equals(written),
        () -> "is written otherwise the second time: " + written);
  }
}
