package org.hoopwright.patterns.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.hoopwright.patterns.Sample;
import org.hoopwright.patterns.Samples;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the bundled layouts, or prints one. */
@Command(
    name = "samples",
    description = "Lists the bundled layouts, one a line, name first; or prints one of them.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class SamplesCommand implements Callable<Integer> {

  private final Session session;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "NAME",
      arity = "0..1",
      description =
          "The layout to print, or " + Samples.BENCH + "; left out, the layouts are listed.")
  private @Nullable String name;

  SamplesCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    String wanted = name;
    if (wanted == null) {
      list();
    } else if (wanted.equals(Samples.BENCH)) {
      session.console().result(Samples.bench());
    } else if (LayoutInput.sampleNames().contains(wanted)) {
      session.console().result(Samples.text(wanted));
    } else {
      throw new ParameterException(
          spec.commandLine(),
          "there is no sample \""
              + wanted
              + "\"; there are "
              + String.join(", ", LayoutInput.sampleNames())
              + ".");
    }
    return ExitCode.DONE;
  }

  private void list() {
    List<Sample> samples = Samples.list();
    int width = samples.stream().mapToInt(s -> s.name().length()).max().orElse(0);
    for (Sample sample : samples) {
      String space = " ".repeat(width - sample.name().length() + 2);
      session.console().result(sample.name() + space + sample.reason() + "\n");
    }
  }
}
