package org.hoopwright.patterns.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** Runs the jar that pattern authors run, in a process of its own. */
class RunnableJarIT {
  private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");
  private static final Path JAR = Path.of("target", "hoopwright.jar");

  @Test
  void standsAlone() throws Exception {
    Process process =
        new ProcessBuilder(JAVA.toString(), "-jar", JAR.toString(), "--version")
            .redirectErrorStream(true)
            .start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(output).matches("hoopwright \\d+\\.\\d+\\.\\d+\\S*\\R");
    assertThat(process.exitValue()).isZero();
  }
}
