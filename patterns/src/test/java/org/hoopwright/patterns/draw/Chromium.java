package org.hoopwright.patterns.draw;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A browser without a window, where the machine has one. */
final class Chromium {

  private static final List<String> NAMES =
      List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable");

  private final Path program;
  private final Path folder;

  private Chromium(Path program, Path folder) {
    this.program = program;
    this.folder = folder;
  }

  /** What a run of the browser gave. */
  record Result(String out, String log) {}

  static Optional<Chromium> find(Path folder) {
    String path = System.getenv().getOrDefault("PATH", "");
    return Stream.of(path.split(java.io.File.pathSeparator, -1))
        .filter(d -> !d.isEmpty())
        .flatMap(d -> NAMES.stream().map(n -> Path.of(d, n)))
        .filter(Files::isExecutable)
        .findFirst()
        .map(p -> new Chromium(p, folder));
  }

  /** Loads a page, lets its scripts run and returns it as it then is. */
  Result page(String html) throws IOException, InterruptedException {
    return run(html, List.of("--dump-dom", "--virtual-time-budget=20000"));
  }

  /** Prints a page and returns the number of sheets of paper. */
  int printedPages(String html) throws IOException, InterruptedException {
    Path pdf = folder.resolve("print.pdf");
    run(html, List.of("--no-pdf-header-footer", "--print-to-pdf=" + pdf));
    String text = Files.readString(pdf, StandardCharsets.ISO_8859_1);
    return text.split("/Type\\s*/Page\\b(?!s)", -1).length - 1;
  }

  private Result run(String html, List<String> what) throws IOException, InterruptedException {
    Path page = folder.resolve("page.html");
    Files.writeString(page, html);
    List<String> command = new ArrayList<>();
    command.add(program.toString());
    command.addAll(
        List.of(
            "--headless=new",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-dev-shm-usage",
            "--no-first-run",
            "--window-size=1280,1000",
            "--enable-logging=stderr",
            "--user-data-dir=" + folder.resolve("profile")));
    command.addAll(what);
    command.add(page.toUri().toString());
    Path out = folder.resolve("out.txt");
    Path log = folder.resolve("log.txt");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(log.toFile())
            .start();
    if (!process.waitFor(150, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError("The browser did not end: " + Files.readString(log));
    }
    return new Result(Files.readString(out), Files.readString(log, StandardCharsets.ISO_8859_1));
  }
}
