package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.hoopwright.patterns.cli.ChildJvm;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A few seconds of the fuzzer that coverage guides, from its kept inputs; {@code mvn -Pfuzz} runs
 * it for long. The same seed each time, so that a build that passed passes again.
 */
class FuzzShortRunTest {

  /** Inputs tried, the kept ones included. */
  private static final int RUNS = 2500;

  private static final Path RESOURCES = Path.of("src/test/resources/org/hoopwright/patterns");

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(classes = {FuzzLayout.class, FuzzState.class})
  void findsNothing(Class<?> target) throws Exception {
    Path found = Files.createDirectory(folder.resolve("inputs"));
    Path log = folder.resolve("log");
    List<String> words = new ArrayList<>();
    words.add(ChildJvm.JAVA.toString());
    words.addAll(List.of("-Xmx512m", "-XX:+UseSerialGC", "-cp"));
    words.add(Path.of("target", "test-classes") + File.pathSeparator + ChildJvm.CLASSES);
    words.add("com.code_intelligence.jazzer.Jazzer");
    words.add("--target_class=" + target.getName());
    words.add("--instrumentation_includes=org.hoopwright.patterns.**:org.hoopwright.check.**");
    words.add("--reproducer_path=" + folder);
    words.add("-artifact_prefix=" + folder + File.separator);
    words.addAll(List.of("-seed=1", "-runs=" + RUNS, "-max_len=4000", "-timeout=120"));
    words.addAll(List.of("-max_total_time=20", "-rss_limit_mb=0"));
    words.add(found.toString());
    words.add(RESOURCES.resolve("fuzz").resolve(target.getSimpleName()).toString());
    Process process =
        new ProcessBuilder(words).redirectErrorStream(true).redirectOutput(log.toFile()).start();
    boolean ended = process.waitFor(180, TimeUnit.SECONDS);
    process.destroyForcibly();
    String said = Files.readString(log, UTF_8);
    // It carries native code for the usual systems only.
    assumeThat(said).doesNotContain("UnsatisfiedLinkError", "Could not find jazzer_");
    assertThat(ended).as(said).isTrue();
    assertThat(process.exitValue()).as(said).isZero();
    assertThat(said).containsPattern("Done [0-9]+ runs");
  }
}
