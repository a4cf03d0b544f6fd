package org.hoopwright.patterns;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.hoopwright.patterns.FuzzChecks.require;

import org.hoopwright.Hoopwright;
import org.hoopwright.bed.Bed;
import org.hoopwright.bench.HalfDone;
import org.hoopwright.finding.Findings;
import org.hoopwright.replay.Replay;

/**
 * Any bytes as the file of a half-done job: read, held against a frame, and written back when
 * nothing is wrong. A fuzzer calls {@link #fuzzerTestOneInput}; see the profile {@code fuzz}.
 */
public final class FuzzState {

  private static final Bed BED =
      Hoopwright.assign(Samples.layout("willowbank-100")).bed().orElseThrow();

  private FuzzState() {}

  /** The name and the signature are what the fuzzer looks for. */
  public static void fuzzerTestOneInput(byte[] bytes) {
    FuzzChecks.soon(() -> run(bytes));
  }

  private static void run(byte[] bytes) {
    StateResult read;
    try {
      read = StateReader.read("job.json", bytes);
    } catch (UnreadableFile e) {
      require(e.getMessage().lines().count() == 1, e::getMessage);
      return;
    }
    FuzzChecks.placed(read.text(), read.findings());
    require(
        read.state().isPresent() != Findings.hasErrors(read.findings()),
        () -> "a state and errors, or neither: " + read.findings());
    read.state().ifPresent(FuzzState::tried);
  }

  private static void tried(HalfDone state) {
    Replay.check(BED, state);
    String written = StateWriter.write(state);
    try {
      StateResult back = StateReader.read("job.json", written.getBytes(UTF_8));
      require(
          back.state().filter(state::equals).isPresent(),
          () -> "does not read back: " + written + back.findings());
    } catch (UnreadableFile e) {
      throw new AssertionError(written, e);
    }
  }
}
