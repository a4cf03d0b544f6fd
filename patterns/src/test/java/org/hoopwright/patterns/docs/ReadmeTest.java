package org.hoopwright.patterns.docs;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
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
    Repository.assertExample(
        "README.md", "ReadmeTest.java", code -> code.replace("out::", "System.out::"));
  }
}
