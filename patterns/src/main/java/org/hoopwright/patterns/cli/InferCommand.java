package org.hoopwright.patterns.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hoopwright.Hoopwright;
import org.hoopwright.InferredLayout;
import org.hoopwright.bed.Inference;
import org.hoopwright.bed.LabelResult;
import org.hoopwright.finding.Findings;
import org.hoopwright.frame.Layout;
import org.hoopwright.patterns.CheckedFile;
import org.hoopwright.patterns.FindingsText;
import org.hoopwright.patterns.LayoutWriter;
import org.hoopwright.patterns.ReadResult;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Completes a layout that does not say which holes the mains leave out. */
@Command(
    name = "infer",
    description =
        "Reads the missing skip rules off the holes and prints the complete layout. Where the holes"
            + " can be read in more than one way it lists the readings and prints none.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class InferCommand implements Callable<Integer> {

  private final Session session;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "FILE",
      description = "A layout file; - for standard input, sample:NAME for a bundled layout.")
  private String file = "";

  @Option(
      names = "--reading",
      paramLabel = "N",
      description = "Print the N-th of the readings listed, sure or not.")
  private @Nullable Integer reading;

  InferCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    if (reading != null && reading < 1) {
      throw new ParameterException(
          spec.commandLine(), "--reading (" + reading + ") must be 1 or more.");
    }
    Planning planning = new Planning(session, "infer");
    return planning.read(file, read -> infer(planning, read));
  }

  private int infer(Planning planning, ReadResult read) {
    Optional<Layout> layout = read.layout();
    if (layout.isEmpty()) {
      return planning.nothing(
          "pattern", read, new FindingsReport(FindingsFormat.text), read.report().findings());
    }
    if (layout.get().mainsSkip().isPresent()) {
      session
          .console()
          .message(
              "hoopwright infer: the layout states mains.skip, so there is nothing to read off the"
                  + " holes; take mains.skip out to have it read.");
      session.console().result(LayoutWriter.write(layout.get()));
      return ExitCode.DONE;
    }
    return inferred(read, Hoopwright.infer(layout.get()));
  }

  private int inferred(ReadResult read, InferredLayout inferred) {
    String text =
        FindingsText.of(
            List.of(new CheckedFile(read.fileName(), read.text(), inferred.findings())));
    boolean errors = Findings.hasErrors(inferred.findings());
    int wanted = reading == null ? (errors ? 0 : 1) : reading;
    if (wanted > inferred.layouts().size()) {
      throw new ParameterException(
          spec.commandLine(),
          "--reading (" + wanted + ") must be one of the " + inferred.layouts().size() + " found.");
    }
    if (wanted > 0) {
      session.console().message(text.strip());
      session.console().result(comment(inferred, wanted));
      session.console().result(LayoutWriter.write(inferred.layouts().get(wanted - 1)));
      return ExitCode.DONE;
    }
    session.console().result(text);
    session
        .console()
        .message(
            "hoopwright infer: the holes of "
                + read.fileName()
                + " do not settle the pattern."
                + (inferred.layouts().isEmpty()
                    ? ""
                    : " Print one of the readings with --reading N."));
    return inferred.inference().status() == Inference.Status.UNSURE
            && inferred.inference().search().status() == LabelResult.Status.LIMIT_REACHED
        ? ExitCode.GAVE_UP
        : ExitCode.FINDINGS;
  }

  /** What a reader of the file must look at on the frame. */
  private static String comment(InferredLayout inferred, int wanted) {
    var chosen = inferred.inference().readings().get(wanted - 1);
    StringBuilder text =
        new StringBuilder(
            "// The skip rules were read off the holes: compare them with the frame.\n");
    if (!chosen.tieOffCandidates().isEmpty()) {
      text.append("// holes.tieOff holds candidates: look at the bore, keep the wider holes.\n");
    }
    if (!chosen.sharedCandidates().isEmpty()) {
      text.append("// holes.shared holds candidates: look whether they can take two strings.\n");
    }
    return text.toString();
  }
}
