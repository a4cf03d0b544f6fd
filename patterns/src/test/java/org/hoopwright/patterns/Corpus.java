package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The files that tests read: broken layouts, and those that are bundled. */
final class Corpus {

  static final Path FOLDER = Path.of("src/test/resources/org/hoopwright/patterns/corpus");

  private Corpus() {}

  /** Broken layouts, by name; beside each stands what is found in it, as {@code NAME.txt}. */
  static List<Path> broken() {
    return in(FOLDER);
  }

  /** The layout files of a folder, by name. */
  static List<Path> in(Path folder) {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Reads a text that is UTF-8 and not too big. */
  static ReadResult read(String text) {
    return read("frame.json", text.getBytes(UTF_8));
  }

  /** Reads bytes that are UTF-8 and not too many. */
  static ReadResult read(String name, byte[] bytes) {
    try {
      return LayoutReader.read(name, bytes);
    } catch (UnreadableFile e) {
      throw new AssertionError(name, e);
    }
  }

  /** A file with all that is found in it. */
  static CheckedFile checked(String name, byte[] bytes) {
    ReadResult read = read(name, bytes);
    return new CheckedFile(name, read.text(), read.report().findings(), read.report().silent());
  }

  /** Every broken layout and every bundled one, with all that is found in them. */
  static List<CheckedFile> checked() {
    return Stream.concat(
            broken().stream().map(f -> checked(f.getFileName().toString(), bytes(f))),
            Samples.list().stream()
                .map(s -> checked(s.name() + ".json", Samples.text(s.name()).getBytes(UTF_8))))
        .toList();
  }
}
