package org.hoopwright.patterns.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hoopwright.Hoopwright;
import org.hoopwright.bed.Bed;
import org.hoopwright.bench.HalfDone;
import org.hoopwright.bench.WayOn;
import org.hoopwright.finding.Findings;
import org.hoopwright.frame.Layout;
import org.hoopwright.patterns.CheckedFile;
import org.hoopwright.patterns.FindingsText;
import org.hoopwright.patterns.ReadResult;
import org.hoopwright.patterns.StateReader;
import org.hoopwright.patterns.StateResult;
import org.hoopwright.patterns.UnreadableFile;
import org.hoopwright.patterns.WaysSheet;
import org.hoopwright.replay.Breach;
import org.hoopwright.replay.Replay;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells how a half-done job goes on. */
@Command(
    name = "resume",
    description = "Tells how a half-done job goes on: what to undo, if anything, and what then.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class ResumeCommand implements Callable<Integer> {

  private final Session session;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      index = "0",
      paramLabel = "FILE",
      description = "A layout file; - for standard input, sample:NAME for a bundled layout.")
  private String file = "";

  @Parameters(index = "1", paramLabel = "STATE", description = "The file of the half-done job.")
  private String stateFile = "";

  @Option(
      names = "--on",
      paramLabel = "FILE",
      description =
          "The layout to go on with, when a hole can no longer be used; detour writes one.")
  private @Nullable String on;

  @Option(
      names = "--most",
      paramLabel = "N",
      description = "How many ways on are listed; default ${DEFAULT-VALUE}.")
  private int most = 3;

  @Mixin private JobOptions options = new JobOptions();

  ResumeCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    options.check();
    if (most < 1) {
      throw new ParameterException(spec.commandLine(), "--most (" + most + ") must be 1 or more.");
    }
    try {
      ReadResult read = LayoutInput.read(file, session.streams());
      ReadResult next = on == null ? read : LayoutInput.read(on, session.streams());
      Optional<Bed> before = bed(read);
      Optional<Bed> bed = on == null ? before : bed(next);
      StateResult state = StateReader.read(Path.of(stateFile));
      if (before.isEmpty() || bed.isEmpty()) {
        return ExitCode.FINDINGS;
      }
      if (state.state().isEmpty()) {
        session
            .console()
            .result(
                FindingsText.of(
                    List.of(new CheckedFile(state.fileName(), state.text(), state.findings()))));
        return ExitCode.FINDINGS;
      }
      return resume(before.get(), state.state().get(), bed.get());
    } catch (UnreadableFile e) {
      return message(e.getMessage(), ExitCode.FILE);
    } catch (InvalidPathException e) {
      return message(stateFile + " is not a file name.", ExitCode.FILE);
    }
  }

  private int message(@Nullable String text, int code) {
    session.console().message("hoopwright resume: " + text);
    return code;
  }

  private Optional<Bed> bed(ReadResult read) {
    Optional<Layout> layout = read.layout();
    Optional<Bed> bed = layout.flatMap(l -> Hoopwright.assign(l).bed());
    if (bed.isEmpty() || Findings.hasErrors(read.report().findings())) {
      FindingsReport report = new FindingsReport(FindingsFormat.text);
      report.add(read, read.report().findings());
      session.console().result(report.text());
      return Optional.empty();
    }
    return bed;
  }

  private int resume(Bed before, HalfDone state, Bed bed) {
    List<Breach> wrong = Replay.check(before, state);
    if (!wrong.isEmpty()) {
      wrong.forEach(b -> session.console().message(stateFile + ": " + b.message()));
      return message(
          "this cannot be the state of that frame; mend " + stateFile + ".", ExitCode.FINDINGS);
    }
    List<WayOn> ways = Hoopwright.waysOn(before, state, bed, options.job(bed.layout()), most);
    if (ways.isEmpty()) {
      return message("there is no way on: the layout has no route.", ExitCode.FINDINGS);
    }
    session.console().result(WaysSheet.of(ways));
    return ExitCode.DONE;
  }
}
