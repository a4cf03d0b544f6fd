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
import org.hoopwright.patterns.FindingsJson;
import org.hoopwright.patterns.FindingsText;
import org.hoopwright.patterns.ReadResult;
import org.hoopwright.patterns.StateReader;
import org.hoopwright.patterns.StateResult;
import org.hoopwright.patterns.UnreadableFile;
import org.hoopwright.patterns.WaysSheet;
import org.hoopwright.patterns.WaysWriter;
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

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description =
          "How the ways on are written: ${COMPLETION-CANDIDATES}; default ${DEFAULT-VALUE}.")
  private Format format = Format.text;

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
      Optional<ReadResult> next =
          on == null ? Optional.empty() : Optional.of(LayoutInput.read(on, session.streams()));
      Optional<Bed> before = bed(read);
      Optional<Bed> bed = next.isEmpty() ? before : bed(next.get());
      StateResult state = StateReader.read(Path.of(stateFile));
      if (before.isEmpty() || bed.isEmpty()) {
        return ExitCode.FINDINGS;
      }
      if (state.state().isEmpty()) {
        List<CheckedFile> file =
            List.of(new CheckedFile(state.fileName(), state.text(), state.findings()));
        session
            .console()
            .result(format == Format.json ? FindingsJson.of(file) : FindingsText.of(file));
        return ExitCode.FINDINGS;
      }
      return resume(before.get(), state.state().get(), bed.get())
          .map(ways -> written(read, next, ways))
          .orElse(ExitCode.FINDINGS);
    } catch (UnreadableFile e) {
      return file(e.getMessage());
    } catch (InvalidPathException e) {
      return file(stateFile + " is not a file name.");
    }
  }

  private int file(@Nullable String text) {
    message(text);
    return ExitCode.FILE;
  }

  private void message(@Nullable String text) {
    session.console().message("hoopwright resume: " + text);
  }

  private Optional<Bed> bed(ReadResult read) {
    Optional<Layout> layout = read.layout();
    Optional<Bed> bed = layout.flatMap(l -> Hoopwright.assign(l).bed());
    if (bed.isEmpty() || Findings.hasErrors(read.report().findings())) {
      FindingsReport report =
          new FindingsReport(format == Format.json ? FindingsFormat.json : FindingsFormat.text);
      report.add(read, read.report().findings());
      session.console().result(report.text());
      return Optional.empty();
    }
    return bed;
  }

  /** The ways on; empty when there is none, and then a message has said why. */
  private Optional<List<WayOn>> resume(Bed before, HalfDone state, Bed bed) {
    List<Breach> wrong = Replay.check(before, state);
    if (!wrong.isEmpty()) {
      wrong.forEach(b -> session.console().message(stateFile + ": " + b.message()));
      message("this cannot be the state of that frame; mend " + stateFile + ".");
      return Optional.empty();
    }
    List<WayOn> ways = Hoopwright.waysOn(before, state, bed, options.job(bed.layout()), most);
    if (ways.isEmpty()) {
      message("there is no way on: the layout has no route.");
      return Optional.empty();
    }
    return Optional.of(ways);
  }

  private int written(ReadResult read, Optional<ReadResult> next, List<WayOn> ways) {
    session
        .console()
        .result(format == Format.json ? WaysWriter.write(read, next, ways) : WaysSheet.of(ways));
    return ExitCode.DONE;
  }
}
