package org.hoopwright.patterns.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Calls of the command line in a process of their own, with little memory. */
public final class ChildJvm {

  /** The program that runs the tests. */
  public static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");

  /** What the tests themselves run with, whether as modules or not. */
  public static final String CLASSES =
      Stream.of("jdk.module.path", "java.class.path")
          .map(p -> System.getProperty(p, ""))
          .filter(p -> !p.isEmpty())
          .collect(Collectors.joining(File.pathSeparator));

  private ChildJvm() {}

  /** The words that start the command line with so much memory. */
  static List<String> command(int megabytes, String... args) {
    List<String> words = new ArrayList<>();
    words.add(JAVA.toString());
    words.addAll(List.of("-Xmx" + megabytes + "m", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    words.addAll(List.of("-cp", CLASSES, Main.class.getName()));
    words.addAll(List.of(args));
    return words;
  }

  /**
   * Runs a command to its end.
   *
   * @param folder where its output may be put
   * @param input what it reads as standard input
   * @throws AssertionError when it takes more than a minute
   */
  static Call run(Path folder, Path input, List<String> command)
      throws IOException, InterruptedException {
    Path out = folder.resolve("child-out");
    Path err = folder.resolve("child-err");
    Process process =
        new ProcessBuilder(command)
            .redirectInput(input.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    if (!process.waitFor(60, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError("Still running after a minute: " + command);
    }
    return new Call(
        process.exitValue(), Files.readString(out, UTF_8), Files.readString(err, UTF_8));
  }
}
