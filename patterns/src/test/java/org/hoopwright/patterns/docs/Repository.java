package org.hoopwright.patterns.docs;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** The project's own files, for tests of its documents. */
final class Repository {

  private Repository() {}

  /** The folder that holds the README. */
  static Path root() {
    Path folder = Path.of("").toAbsolutePath();
    while (!Files.exists(folder.resolve("DEVELOPERS.md"))) {
      Path parent = folder.getParent();
      if (parent == null) {
        throw new IllegalStateException("The tests must run inside the project's folder.");
      }
      folder = parent;
    }
    return folder;
  }

  /** The text of a file, lines ended by a line feed. */
  static String text(Path file) {
    try {
      return Files.readString(file, UTF_8).replace("\r\n", "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Every document: Markdown files at the top and under {@code docs}, in the order of paths. */
  static List<Path> documents() {
    try (Stream<Path> top = Files.list(root());
        Stream<Path> docs = Files.walk(root().resolve("docs"))) {
      return Stream.concat(top, docs).filter(f -> f.toString().endsWith(".md")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * What stands between two marked lines, without their common indentation.
   *
   * @param begin a text of which the line before the region holds exactly one
   * @param end a text that the first line after the region holds
   */
  static String region(String text, String begin, String end) {
    List<String> lines =
        text.lines()
            .dropWhile(l -> !l.contains(begin))
            .skip(1)
            .takeWhile(l -> !l.contains(end))
            .toList();
    if (lines.isEmpty()) {
      throw new IllegalStateException("No text between '" + begin + "' and '" + end + "'.");
    }
    return String.join("\n", lines).stripIndent().strip() + "\n";
  }

  /**
   * Asks that a document shows the code that a test compiles: both stand between lines that say
   * {@code example: begin} and {@code example: end}.
   */
  static void assertExample(String document, String test, UnaryOperator<String> shownAs) {
    String folder = "patterns/src/test/java/org/hoopwright/patterns/docs/";
    String source = text(root().resolve(folder + test));
    String code = shownAs.apply(region(source, "// example: begin", "// example: end"));
    String shown = text(root().resolve(document));
    assertThat(region(shown, "<!-- example: begin -->", "<!-- example: end -->"))
        .as(
            "Copy the code between the marks in %s into %s, or the other way round.",
            test, document)
        .isEqualTo("```java\n" + code + "```\n");
  }
}
