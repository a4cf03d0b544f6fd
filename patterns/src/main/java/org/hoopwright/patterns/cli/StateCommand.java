package org.hoopwright.patterns.cli;

import java.util.concurrent.Callable;
import org.hoopwright.bench.HalfDone;
import org.hoopwright.patterns.StateWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the state of a job in the middle of its plan. */
@Command(
    name = "state",
    description = "Prints the state after a step of the plan, to be changed to what really is.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class StateCommand implements Callable<Integer> {

  private static final String NAME = "state";

  private final Session session;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "FILE",
      description = "A layout file; - for standard input, sample:NAME for a bundled layout.")
  private String file = "";

  @Option(
      names = "--after",
      paramLabel = "N",
      required = true,
      description = "The number of the last step that was done, 0 for an empty frame.")
  private int after;

  @Mixin private JobOptions options = new JobOptions();

  StateCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    options.check();
    Planning planning = new Planning(session, NAME);
    FindingsReport findings = new FindingsReport(FindingsFormat.text);
    return planning.read(file, r -> planning.plan(r, options, findings, this::planned));
  }

  private int planned(Planning.Made made) {
    int steps = made.best().bench().steps().size();
    if (after < 0 || after > steps) {
      throw new ParameterException(
          spec.commandLine(), "--after (" + after + ") must be from 0 to " + steps + ".");
    }
    session.console().result(StateWriter.write(HalfDone.after(made.best().bench(), after)));
    return made.exitCode();
  }
}
