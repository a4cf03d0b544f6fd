package org.hoopwright.patterns.docs;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import org.hoopwright.Hoopwright;
import org.hoopwright.Outcome;
import org.hoopwright.bench.Job;
import org.hoopwright.frame.Layout;
import org.hoopwright.patterns.Samples;
import org.junit.jupiter.api.Test;

/** The Java of the README is compiled and run here; it prints to a stream of the test's own. */
class ReadmeTest {

  private static void example(PrintStream out) {
    // example: begin
    Layout layout = Samples.layout("willowbank-100");
    Outcome outcome = Hoopwright.plan(layout, Job.standard());
    outcome.findings().forEach(out::println);
    outcome
        .plan()
        .ifPresent(
            plan -> {
              out.println(plan.bench().route());
              plan.bench().steps().forEach(step -> out.println(step.say()));
            });
    // example: end
  }

  @Test
  void exampleRuns() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    example(new PrintStream(bytes, true, UTF_8));
    assertThat(bytes.toString(UTF_8).lines())
        .anyMatch(l -> l.startsWith("short L1-"))
        .anyMatch(l -> l.startsWith("Pull X19 "))
        .hasSizeGreaterThan(150);
  }

  @Test
  void exampleIsThatOfTheReadme() {
    Repository.assertExample(
        "README.md", "ReadmeTest.java", code -> code.replaceAll("\\bout\\b", "System.out"));
  }
}
