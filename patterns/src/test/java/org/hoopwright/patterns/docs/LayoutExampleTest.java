package org.hoopwright.patterns.docs;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import org.hoopwright.bed.Assignment;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.check.Checker;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.frame.Layout;
import org.hoopwright.patterns.LayoutReader;
import org.hoopwright.patterns.ReadResult;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteSearch;
import org.junit.jupiter.api.Test;

/** The layout that {@code docs/layout-format.md} builds up step by step. */
class LayoutExampleTest {

  private static final String DOCUMENT =
      Repository.text(Repository.root().resolve("docs/layout-format.md"));

  private static String example() {
    return Repository.region(DOCUMENT, "<!-- layout: begin -->", "<!-- layout: end -->")
        .replace("```json\n", "")
        .replace("```\n", "");
  }

  private static Layout read(String text) throws Exception {
    ReadResult read = LayoutReader.read("junior.json", text.getBytes(UTF_8));
    assertThat(read.findings()).isEmpty();
    return read.layout().orElseThrow();
  }

  @Test
  void isCleanAndHasRoutes() throws Exception {
    Layout layout = read(example());
    Assignment assignment = StatedAssignment.assign(layout);
    assertThat(Checker.layout(layout)).isEmpty();
    assertThat(assignment.findings()).isEmpty();
    assertThat(RouteSearch.search(assignment.bed().orElseThrow(), RouteRequest.defaults()).best())
        .isPresent();
  }

  @Test
  void mistakeOfTheTutorialIsFoundAsItSays() throws Exception {
    String wrong = example().replace("\"throat\": 14", "\"throat\": 15");
    assertThat(StatedAssignment.assign(read(wrong)).findings())
        .filteredOn(f -> f.code() == FindingCode.CROSSES_LAST)
        .extracting(Finding::message)
        .contains("The last cross takes hole L9T, not the stated L7T.");
  }

  @Test
  void partsOfTheTutorialMakeUpTheWhole() {
    StringBuilder parts = new StringBuilder();
    String tutorial = DOCUMENT.substring(0, DOCUMENT.indexOf("### The whole file"));
    for (String block : tutorial.split("```jsonc\n", -1)) {
      if (!block.startsWith("#")) {
        parts.append(block, 0, block.indexOf("```"));
      }
    }
    assertThat(parts.toString()).isEqualTo(example());
  }
}
