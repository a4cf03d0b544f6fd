package org.hoopwright.patterns;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a fuzzer starts from and what it once found, replayed without it. A long run is {@code mvn
 * -Pfuzz}; see DEVELOPERS.md.
 */
class FuzzReplayTest {

  private static final Path KEPT = Corpus.FOLDER.resolveSibling("fuzz");

  private static final Path SAMPLES = Path.of("src/main/resources/org/hoopwright/patterns/samples");

  private static List<Path> kept(Class<?> target) {
    return Corpus.in(KEPT.resolve(target.getSimpleName()));
  }

  static Stream<Path> layouts() {
    return Stream.of(kept(FuzzLayout.class), Corpus.broken(), Corpus.in(SAMPLES))
        .flatMap(List::stream);
  }

  static Stream<Path> states() {
    return kept(FuzzState.class).stream();
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void layout(Path file) {
    FuzzLayout.fuzzerTestOneInput(Corpus.bytes(file));
  }

  @ParameterizedTest
  @MethodSource("states")
  void state(Path file) {
    FuzzState.fuzzerTestOneInput(Corpus.bytes(file));
  }
}
