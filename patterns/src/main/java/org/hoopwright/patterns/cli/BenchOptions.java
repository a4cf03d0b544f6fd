package org.hoopwright.patterns.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hoopwright.bench.Bench;
import org.hoopwright.bench.BenchTest;
import org.hoopwright.bench.JawDepth;
import org.hoopwright.bench.MachineClampKind;
import org.hoopwright.bench.Tensioner;
import org.hoopwright.material.Gauge;
import org.hoopwright.material.Material;
import org.hoopwright.material.StringSpec;
import org.hoopwright.patterns.BenchReader;
import org.hoopwright.patterns.BenchResult;
import org.hoopwright.patterns.CheckedFile;
import org.hoopwright.patterns.Samples;
import org.hoopwright.patterns.UnreadableFile;
import org.hoopwright.patterns.Workbench;
import org.hoopwright.units.Force;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options that say what is at hand at the bench, and what was tested there. */
final class BenchOptions {

  private static final String CLEANED = "cleaned";
  private static final String TEST_FORM =
      "must be GAUGE/MATERIAL/FORCE/held or /slipped, with /tip, /middle or /deep after it when the"
          + " string did not lie deep in the jaws, such as 18/nylon/40lbf/held; or cleaned.";

  @Option(
      names = "--bench",
      paramLabel = "FILE",
      description =
          "A bench file, or sample:willowbank-bench: clamps with their tests, tensioner, strings at"
              + " hand. Options on the line win over it.")
  private @Nullable String benchFile;

  @Option(
      names = "--string",
      paramLabel = "NAME",
      description = "A string of the bench file: its gauge, material and length at hand.")
  private @Nullable String string;

  @Option(
      names = "--start-clamps",
      paramLabel = "N",
      description = "Starting clamps at hand, 0 to 2; default 1.")
  @Nullable Integer startClamps;

  @Option(
      names = "--clamps",
      paramLabel = "KIND",
      description = "How the machine clamps are built: fixed, swivel or floating; default fixed.")
  private @Nullable String clamps;

  @Option(
      names = "--tensioner",
      paramLabel = "KIND",
      description = "constant-pull, lockout or drop-weight; default constant-pull.")
  private @Nullable String tensioner;

  @Option(
      names = "--reach",
      paramLabel = "LENGTH",
      description = "String from the frame to the gripper, with its unit; default 230mm.")
  private @Nullable String reach;

  @Option(
      names = "--clamp-test",
      paramLabel = "TEST",
      description =
          "What a machine clamp was tested to hold: GAUGE/MATERIAL/FORCE/held or /slipped, such as"
              + " 18/nylon/40lbf/held; or cleaned. Name it once for each test, in order.")
  private List<String> clampTests = new ArrayList<>();

  @Option(
      names = "--start-clamp-test",
      paramLabel = "TEST",
      description = "The same for the starting clamps.")
  private List<String> startClampTests = new ArrayList<>();

  private @Nullable Workbench read;

  /**
   * The bench.
   *
   * @throws IllegalArgumentException when a value is wrong; the message says the way out
   */
  Bench bench() {
    Bench.Builder bench = workbench().map(w -> w.bench().toBuilder()).orElseGet(Bench::builder);
    if (startClamps != null) {
      bench.startingClamps(startClamps);
    }
    if (clamps != null) {
      bench.machineClampKind(
          MachineClampKind.ofWord(clamps)
              .orElseThrow(
                  () ->
                      wrong("--clamps", clamps, words(MachineClampKind.values(), k -> k.word()))));
    }
    if (tensioner != null) {
      bench.tensioner(
          Tensioner.ofWord(tensioner)
              .orElseThrow(
                  () -> wrong("--tensioner", tensioner, words(Tensioner.values(), t -> t.word()))));
    }
    if (reach != null) {
      bench.reachMm(LengthWord.mm("--reach", reach, LengthWord.Of.BENCH));
    }
    if (!clampTests.isEmpty()) {
      bench.machineClampTests(tests("--clamp-test", clampTests));
    }
    if (!startClampTests.isEmpty()) {
      bench.startingClampTests(tests("--start-clamp-test", startClampTests));
    }
    return bench.build();
  }

  /**
   * The string of the bench file that is asked for.
   *
   * @throws IllegalArgumentException when there is none of this name
   */
  Optional<Workbench.Stock> stock() {
    String wanted = string;
    if (wanted == null) {
      return Optional.empty();
    }
    Workbench workbench =
        workbench()
            .orElseThrow(
                () -> new IllegalArgumentException("--string goes with --bench FILE only."));
    return Optional.of(
        workbench
            .string(wanted)
            .orElseThrow(
                () ->
                    wrong(
                        "--string",
                        wanted,
                        "must be a string of "
                            + benchFile
                            + ", which has: "
                            + workbench.strings().stream()
                                .map(Workbench.Stock::name)
                                .collect(Collectors.joining(", "))
                            + ".")));
  }

  /**
   * What the bench file says; read once.
   *
   * @throws FileRefused when it cannot be read or is wrong
   */
  private Optional<Workbench> workbench() {
    if (benchFile != null && read == null) {
      read = read(benchFile);
    }
    return Optional.ofNullable(read);
  }

  private static Workbench read(String file) {
    try {
      BenchResult result =
          file.equals("sample:" + Samples.BENCH)
              ? BenchReader.read(file, Samples.bench().getBytes(UTF_8))
              : BenchReader.read(Path.of(file));
      return result
          .workbench()
          .orElseThrow(
              () ->
                  FileRefused.because(
                      new CheckedFile(result.fileName(), result.text(), result.findings())));
    } catch (UnreadableFile e) {
      throw FileRefused.because(e);
    } catch (InvalidPathException e) {
      throw FileRefused.because(new UnreadableFile(file, "it is not a file name"));
    }
  }

  private static <T> String words(T[] all, java.util.function.Function<T, String> word) {
    return "must be one of " + Arrays.stream(all).map(word).collect(Collectors.joining(", ")) + ".";
  }

  private static IllegalArgumentException wrong(
      String option, @Nullable String value, String rule) {
    return new IllegalArgumentException(option + " (" + value + ") " + rule);
  }

  private static List<BenchTest> tests(String option, List<String> values) {
    List<BenchTest> tests = new ArrayList<>();
    for (String value : values) {
      tests.add(
          value.equals(CLEANED)
              ? new BenchTest.Cleaned()
              : pull(value).orElseThrow(() -> wrong(option, value, TEST_FORM)));
    }
    return tests;
  }

  private static Optional<BenchTest> pull(String value) {
    String[] parts = value.split("/", -1);
    if (parts.length < 4 || parts.length > 5) {
      return Optional.empty();
    }
    Optional<Gauge> gauge = Gauge.ofWord(parts[0]);
    Optional<Material> material = Material.ofWord(parts[1]);
    Optional<Force> force = Force.parse(parts[2]).filter(f -> f.newtons() > 0);
    boolean held = parts[3].equals("held");
    Optional<JawDepth> depth =
        parts.length == 5 ? JawDepth.ofWord(parts[4]) : Optional.of(JawDepth.DEEP);
    if (gauge.isEmpty()
        || material.isEmpty()
        || force.isEmpty()
        || depth.isEmpty()
        || !(held || parts[3].equals("slipped"))) {
      return Optional.empty();
    }
    return Optional.of(
        new BenchTest.Pull(
            new StringSpec(gauge.get(), material.get()), force.get(), depth.get(), held));
  }
}
