package org.hoopwright.patterns.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.check.Checker;
import org.hoopwright.finding.Finding;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Layout;
import org.hoopwright.patterns.Samples;
import org.junit.jupiter.api.Test;

/**
 * The drawings in the documents are those that the library draws now. To write them anew: {@code
 * mvn -pl core,patterns test -Dtest=DocumentedDrawingsTest -Ddrawings.write=true
 * -Dsurefire.failIfNoSpecifiedTests=false}; that run fails, so that nobody leaves the switch on.
 */
class DocumentedDrawingsTest {

  private static final Path FOLDER = Path.of("..", "docs", "drawings");

  private static Map<String, Drawing> drawings() {
    Map<String, Drawing> all = new LinkedHashMap<>();
    BenchPlan teaching = SamplePlans.of("willowbank-teaching");
    BenchPlan hundred = SamplePlans.of("willowbank-100");
    BenchPlan worn = SamplePlans.of("willowbank-100-worn");
    all.put("teaching-bed.svg", Drawing.bed(teaching.bed()));
    all.put("teaching-step-9.svg", Drawing.plan(teaching, 9));
    all.put("worn-bed.svg", Drawing.bed(worn.bed()));
    all.put("hundred-route.svg", Drawing.route(hundred.bed(), hundred.route()));
    Layout wrong =
        Samples.layout("willowbank-100").toBuilder()
            .blocked(List.of(HoleRef.of("L7H"), HoleRef.of("R4T")))
            .build();
    List<Finding> findings = Checker.bed(wrong, StatedAssignment::assign).findings();
    all.put(
        "findings.svg", Drawing.layout(wrong, DrawingOptions.builder().findings(findings).build()));
    return all;
  }

  @Test
  void areThoseThatAreDrawnNow() throws IOException {
    boolean write = Boolean.getBoolean("drawings.write");
    for (Map.Entry<String, Drawing> e : drawings().entrySet()) {
      Path file = FOLDER.resolve(e.getKey());
      if (write) {
        Files.createDirectories(FOLDER);
        Files.writeString(file, e.getValue().svg());
      }
      assertThat(file).content().isEqualTo(e.getValue().svg());
    }
    try (Stream<Path> files = Files.list(FOLDER)) {
      assertThat(files.map(f -> f.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(drawings().keySet());
    }
    assertThat(write).as("drawings were written; run again without the switch").isFalse();
  }

  @Test
  void areAllShownInTheDocuments() throws IOException {
    String page = Files.readString(FOLDER.resolveSibling("drawings.md"));
    assertThat(drawings().keySet()).allSatisfy(f -> assertThat(page).contains("drawings/" + f));
  }
}
