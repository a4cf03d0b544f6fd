package org.hoopwright.patterns.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hoopwright.Detour;
import org.hoopwright.Hoopwright;
import org.hoopwright.bench.Job;
import org.hoopwright.finding.Findings;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.Ring;
import org.hoopwright.patterns.LayoutWriter;
import org.hoopwright.patterns.ReadResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Works round blocked holes. */
@Command(
    name = "detour",
    description =
        "Finds the nearest pattern round blocked holes that can be strung, and prints its layout.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class DetourCommand implements Callable<Integer> {

  private final Session session;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "FILE",
      description = "A layout file; - for standard input, sample:NAME for a bundled layout.")
  private String file = "";

  @Option(
      names = "--block",
      paramLabel = "HOLE",
      split = ",",
      description = "Holes that are blocked besides those that the file names, such as L8H,7T.")
  private List<String> block = new ArrayList<>();

  @Option(
      names = "--critical",
      description =
          "List the holes that could not be worked round if one of them failed, one a line.")
  private boolean critical;

  DetourCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    List<HoleRef> more = new ArrayList<>();
    for (String name : block) {
      more.add(
          HoleRef.find(name)
              .orElseThrow(
                  () ->
                      new ParameterException(
                          spec.commandLine(),
                          "--block (" + name + ") must be hole names such as L8H,7T.")));
    }
    Planning planning = new Planning(session, "detour");
    return planning.read(file, read -> detour(planning, read, more));
  }

  private int detour(Planning planning, ReadResult read, List<HoleRef> more) {
    Optional<Layout> layout = read.layout();
    if (layout.isEmpty() || Findings.hasErrors(Hoopwright.check(unblocked(layout.get())))) {
      int code =
          planning.nothing(
              "detour", read, new FindingsReport(FindingsFormat.text), read.report().findings());
      session.console().message("Maybe mend the layout's other errors first.");
      return code;
    }
    checkHoles(layout.get(), more);
    List<HoleRef> blocked = new ArrayList<>(layout.get().blocked());
    blocked.addAll(more);
    Layout worn = layout.get().toBuilder().blocked(blocked).build();
    return critical ? critical(worn) : round(worn);
  }

  private static Layout unblocked(Layout layout) {
    return layout.toBuilder().blocked(List.of()).build();
  }

  private void checkHoles(Layout layout, List<HoleRef> more) {
    Ring ring = Ring.of(layout);
    for (HoleRef ref : more) {
      if (!ref.holes().stream().allMatch(ring::has)) {
        throw new ParameterException(
            spec.commandLine(), "--block (" + ref + ") must be a hole that the layout has.");
      }
    }
  }

  private int round(Layout worn) {
    Detour detour = Hoopwright.detour(worn, Job.standard());
    if (detour instanceof Detour.Found found) {
      session.console().message(found.toWords());
      session.console().result(LayoutWriter.write(found.bed().layout()));
      return ExitCode.DONE;
    }
    if (detour instanceof Detour.None none) {
      session.console().message("hoopwright detour: no way round was found. " + none.why());
      return none.proven() ? ExitCode.FINDINGS : ExitCode.GAVE_UP;
    }
    session
        .console()
        .message(
            detour instanceof Detour.NotNeeded
                ? "The stated pattern does not need the blocked holes."
                : "hoopwright detour: state mains.skip first; infer can read it off the holes.");
    if (detour instanceof Detour.NoPattern) {
      return ExitCode.FINDINGS;
    }
    session.console().result(LayoutWriter.write(worn));
    return ExitCode.DONE;
  }

  private int critical(Layout worn) {
    if (Hoopwright.assign(worn).bed().isEmpty()) {
      session
          .console()
          .message("hoopwright detour: the layout has no pattern as it is; see what check says.");
      return ExitCode.FINDINGS;
    }
    List<HoleId> holes = Hoopwright.criticalHoles(worn, Job.standard());
    holes.forEach(h -> session.console().result(h + "\n"));
    session
        .console()
        .message(
            holes.isEmpty()
                ? "Every hole can be worked round if it fails."
                : holes.size()
                    + (holes.size() == 1 ? " hole" : " holes")
                    + " could not be worked round; of a symmetric frame the left side is listed.");
    return ExitCode.DONE;
  }
}
