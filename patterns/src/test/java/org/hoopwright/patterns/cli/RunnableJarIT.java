package org.hoopwright.patterns.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs the jar that pattern authors run, in a process of its own. */
class RunnableJarIT {
  private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");
  private static final Path JAR = Path.of("target", "hoopwright.jar");

  @TempDir Path folder;

  /** Runs with a locale and an encoding that must not matter. */
  private Call run(String... args) throws IOException, InterruptedException {
    return run(List.of(), args);
  }

  private Call run(List<String> options, String... args) throws IOException, InterruptedException {
    List<String> words = new ArrayList<>();
    words.add(JAVA.toString());
    words.addAll(options);
    words.addAll(List.of("-Duser.language=tr", "-Dfile.encoding=ISO-8859-1"));
    words.addAll(List.of("-jar", JAR.toString()));
    words.addAll(List.of(args));
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    Process process =
        new ProcessBuilder(words)
            .redirectInput(
                Path.of("src/main/resources/org/hoopwright/patterns/cli/starter.json").toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
    return new Call(
        process.exitValue(), Files.readString(out, UTF_8), Files.readString(err, UTF_8));
  }

  @Test
  void standsAlone() throws Exception {
    Call call = run("--version");

    assertThat(call.out()).matches("hoopwright \\d+\\.\\d+\\.\\d+\\S*\\R");
    assertThat(call.code()).isZero();
  }

  @Test
  void plansWhatComesInAtStandardInput() throws Exception {
    Call call = run("plan", "-", "--format", "json");

    assertThat(call.code()).as(call.err()).isZero();
    assertThat(call.out()).startsWith("{\n  \"format\": \"hoopwright/plan-1\"");
    assertThat(call.err()).isEmpty();
  }

  @Test
  void drawsAndWritesTheSheet() throws Exception {
    Path svg = folder.resolve("a frame.svg");
    Path html = folder.resolve("sheet.html");

    assertThat(run("draw", "-", "--step=0", "-o", svg.toString())).isEqualTo(new Call(0, "", ""));
    assertThat(run("sheet", "-", "-o", html.toString())).isEqualTo(new Call(0, "", ""));
    assertThat(Files.readString(svg, UTF_8)).startsWith("<?xml").endsWith("</svg>\n");
    assertThat(Files.readString(html, UTF_8)).startsWith("<!DOCTYPE html>").contains("<svg");
    assertThat(run("sheet", "-", "-o", folder.toString()).code()).isEqualTo(ExitCode.FILE);
  }

  @Test
  void exitsWithTheCodeOfTheCall() throws Exception {
    assertThat(run("check", "sample:willowbank-100").code()).isZero();
    assertThat(run("plan", "-", "--run-limit", "1").code()).isEqualTo(ExitCode.FINDINGS);
    assertThat(run("plan", "-", "--tension", "24.5").code()).isEqualTo(ExitCode.WRONG_CALL);
    assertThat(run("check", "no-such-file.json").code()).isEqualTo(ExitCode.FILE);
    assertThat(run("plan", "-", "--max-nodes", "5").code()).isEqualTo(ExitCode.GAVE_UP);
  }

  /** What the documents advise for a quick start says the same, on a JVM that can do it. */
  @Test
  void aClassDataArchiveChangesNothingButTime() throws Exception {
    String archive = folder.resolve("hoopwright.jsa").toString();
    List<String> made = List.of("-XX:+IgnoreUnrecognizedVMOptions", "-Xlog:disable");
    List<String> making = new ArrayList<>(made);
    making.add("-XX:ArchiveClassesAtExit=" + archive);
    assertThat(run(making, "check", "sample:willowbank-100").code()).isZero();
    List<String> using = new ArrayList<>(made);
    using.addAll(List.of("-XX:SharedArchiveFile=" + archive, "-XX:TieredStopAtLevel=1"));
    assertThat(run(using, "check", "-")).isEqualTo(run("check", "-"));
  }
}
