package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hoopwright.Hoopwright;
import org.hoopwright.check.CheckReport;
import org.hoopwright.check.Silence;
import org.hoopwright.finding.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Broken files with all that is found in them, as golden files: {@code NAME.json} and {@code
 * NAME.txt}. A run with {@code -Dhoopwright.rewrite=true} writes the golden files anew and fails.
 */
class CorpusTest {

  private static final Path FOLDER = Path.of("src/test/resources/org/hoopwright/patterns/corpus");

  static Stream<Path> files() throws IOException {
    try (Stream<Path> all = Files.list(FOLDER)) {
      return all.filter(f -> f.toString().endsWith(".json")).sorted().toList().stream();
    }
  }

  @Test
  void thereAreSixtyOrMore() throws IOException {
    assertThat(files()).hasSizeGreaterThanOrEqualTo(60);
  }

  @ParameterizedTest
  @MethodSource("files")
  void allIsFoundThatWasFoundBefore(Path file) throws IOException {
    ReadResult read = LayoutReader.read(file.getFileName().toString(), Files.readAllBytes(file));
    List<Finding> all = new ArrayList<>(read.findings());
    StringBuilder silent = new StringBuilder();
    read.draft()
        .ifPresent(
            d -> {
              CheckReport report = Hoopwright.check(d);
              all.addAll(report.findings());
              for (Silence s : report.silent()) {
                silent
                    .append("silent: ")
                    .append(s.rule().code())
                    .append(" because of ")
                    .append(String.join(", ", s.because()))
                    .append('\n');
              }
            });
    String found =
        FindingsText.of(List.of(new CheckedFile(read.fileName(), read.text(), all))) + silent;
    Path golden = Path.of(file.toString().replace(".json", ".txt"));
    String expected = Files.exists(golden) ? Files.readString(golden, UTF_8) : "";
    if (!expected.equals(found) && Boolean.getBoolean("hoopwright.rewrite")) {
      Files.writeString(golden, found, UTF_8);
    }
    assertThat(found).isEqualTo(expected).isNotEmpty();
  }
}
