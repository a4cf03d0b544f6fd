package org.hoopwright.patterns.cli;

import java.util.concurrent.Callable;
import org.hoopwright.patterns.draw.BenchSheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Writes the sheet for the bench. */
@Command(
    name = "sheet",
    description = {
      "Writes the plan as one HTML file for the bench: cautions, numbers, drawing and every step.",
      "It needs no network; the arrow keys step, and it prints on two A4 pages."
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class SheetCommand implements Callable<Integer> {

  private static final String NAME = "sheet";

  private final Session session;

  @Parameters(
      paramLabel = "FILE",
      description = "A layout file; - for standard input, sample:NAME for a bundled layout.")
  private String file = "";

  @Mixin private OutputOption output = new OutputOption();

  @Mixin private JobOptions options = new JobOptions();

  SheetCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    options.check();
    output.check(file);
    Planning planning = new Planning(session, NAME);
    FindingsReport findings = new FindingsReport(FindingsFormat.text);
    return planning.read(file, read -> planning.plan(read, options, findings, this::write));
  }

  private int write(Planning.Made made) {
    return output.write(session, NAME, BenchSheet.of(made.best()).html(), made.exitCode());
  }
}
