package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.hoopwright.check.Silence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Broken files with all that is found in them, as golden files: {@code NAME.json} and {@code
 * NAME.txt}. A run with {@code -Dhoopwright.rewrite=true} writes the golden files anew and fails.
 */
class CorpusTest {

  static Stream<Path> files() {
    return Corpus.broken().stream();
  }

  @Test
  void thereAreSixtyOrMore() {
    assertThat(files()).hasSizeGreaterThanOrEqualTo(60);
  }

  @ParameterizedTest
  @MethodSource("files")
  void allIsFoundThatWasFoundBefore(Path file) throws IOException {
    CheckedFile checked = Corpus.checked(file.getFileName().toString(), Corpus.bytes(file));
    StringBuilder silent = new StringBuilder();
    for (Silence s : checked.silent()) {
      silent
          .append("silent: ")
          .append(s.rule().code())
          .append(" because of ")
          .append(String.join(", ", s.because()))
          .append('\n');
    }
    String found = FindingsText.of(List.of(checked)) + silent;
    Path golden = Path.of(file.toString().replace(".json", ".txt"));
    String expected = Files.exists(golden) ? Files.readString(golden, UTF_8) : "";
    if (!expected.equals(found) && Boolean.getBoolean("hoopwright.rewrite")) {
      Files.writeString(golden, found, UTF_8);
    }
    assertThat(found).isEqualTo(expected).isNotEmpty();
  }
}
