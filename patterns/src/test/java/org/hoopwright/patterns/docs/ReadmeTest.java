package org.hoopwright.patterns.docs;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import org.hoopwright.bed.Assignment;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.frame.Hoop;
import org.hoopwright.frame.Layout;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteSearch;
import org.junit.jupiter.api.Test;

/** The Java of the README is compiled and run here. */
class ReadmeTest {

  private static void example(PrintStream out) {
    // example: begin
    Layout layout =
        Layout.builder("Willowbank teaching frame")
            .hoop(new Hoop.Superellipse(120, 100, 2))
            .holes(4, 4)
            .tieOff("1H", "1T")
            .mains(4)
            .mainsSkip()
            .crosses(4)
            .build();
    Assignment assignment = StatedAssignment.assign(layout);
    assignment.findings().forEach(out::println);
    assignment
        .bed()
        .flatMap(bed -> RouteSearch.search(bed, RouteRequest.defaults()).best())
        .ifPresent(out::println);
    // example: end
  }

  @Test
  void exampleRuns() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    example(new PrintStream(bytes, true, UTF_8));
    assertThat(bytes.toString(UTF_8)).startsWith("short ").contains(" | knots ");
  }

  @Test
  void exampleIsThatOfTheReadme() {
    Path source =
        Repository.root()
            .resolve("patterns/src/test/java/org/hoopwright/patterns/docs/ReadmeTest.java");
    String code =
        Repository.region(Repository.text(source), "// example: begin", "// example: end")
            .replace("out::", "System.out::");
    String readme = Repository.text(Repository.root().resolve("README.md"));
    String shown = Repository.region(readme, "<!-- example: begin -->", "<!-- example: end -->");
    assertThat(shown)
        .as("Copy the code between the marks in ReadmeTest into README.md, or the other way round.")
        .isEqualTo("```java\n" + code + "```\n");
  }
}
