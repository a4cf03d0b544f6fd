package org.hoopwright.patterns.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hoopwright.Hoopwright;
import org.hoopwright.Plan;
import org.hoopwright.compare.Difference;
import org.hoopwright.frame.Layout;
import org.hoopwright.patterns.Compared;
import org.hoopwright.patterns.DifferencesWriter;
import org.hoopwright.patterns.ReadResult;
import org.hoopwright.route.RankedRoute;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what differs between two layouts, their best plans, or two routes of one layout. */
@Command(
    name = "compare",
    description = {
      "Tells what differs between two layouts and what follows for bed and routes; with --plans",
      "between their best plans; with --routes between the plans of two routes of one layout."
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class CompareCommand implements Callable<Integer> {

  private final Session session;
  private final Planning planning;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      arity = "1..2",
      paramLabel = "FILE",
      description =
          "Two layout files, one with --routes; - for standard input, sample:NAME for a bundled"
              + " layout.")
  private List<String> files = List.of();

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description =
          "How differences are written: ${COMPLETION-CANDIDATES}; default ${DEFAULT-VALUE}.")
  private Format format = Format.text;

  @Option(names = "--plans", description = "Compare the best plans of the two layouts.")
  private boolean plans;

  @Option(
      names = "--routes",
      paramLabel = "N,N",
      split = ",",
      description = "Compare the plans of two routes of one layout, by their ranks in plan --all.")
  private @Nullable List<Integer> routes;

  @Mixin private JobOptions options = new JobOptions();

  CompareCommand(Session session) {
    this.session = session;
    this.planning = new Planning(session, "compare");
  }

  @Override
  public Integer call() {
    checkCall();
    List<Integer> ranks = routes;
    return planning.read(
        files.get(0),
        first ->
            ranks != null
                ? ofRoutes(first, ranks)
                : planning.read(
                    files.get(1),
                    second -> plans ? ofPlans(first, second) : ofLayouts(first, second)));
  }

  private void checkCall() {
    options.check();
    int wanted = routes == null ? 2 : 1;
    if (files.size() != wanted) {
      throw new ParameterException(
          spec.commandLine(),
          wanted == 2
              ? "two layouts are needed; name another, or two routes of this one with --routes."
              : "--routes goes with one layout; leave out the other.");
    }
    if (plans && routes != null) {
      throw new ParameterException(
          spec.commandLine(), "--plans goes with two layouts; leave it out with --routes.");
    }
    if (routes != null && (routes.size() != 2 || routes.stream().anyMatch(r -> r < 1))) {
      throw new ParameterException(
          spec.commandLine(), "--routes needs two ranks from 1, such as --routes 1,2.");
    }
    if (files.stream().filter(LayoutInput.STANDARD_INPUT::equals).count() > 1) {
      throw new ParameterException(
          spec.commandLine(), "standard input can be read once only; name a file for the other.");
    }
  }

  private int ofLayouts(ReadResult first, ReadResult second) {
    for (ReadResult read : List.of(first, second)) {
      if (read.layout().isEmpty()) {
        return planning.nothing("layout", read, findings(), read.report().findings());
      }
    }
    Layout a = first.layout().orElseThrow();
    Layout b = second.layout().orElseThrow();
    options.job(b); // an option that does not suit the second is a wrong call too
    return written(
        Compared.of(first), Compared.of(second), Hoopwright.compare(a, b, options.job(a)));
  }

  private int ofPlans(ReadResult first, ReadResult second) {
    return planning.plan(
        first,
        options,
        findings(),
        a ->
            planning.plan(
                second,
                options,
                findings(),
                b ->
                    written(
                        Compared.of(first, rank(a)),
                        Compared.of(second, rank(b)),
                        Hoopwright.compare(a.best(), b.best()))));
  }

  /** The rank of the route that the best plan follows: the first that has a plan. */
  private static int rank(Planning.Made made) {
    return made.outcome().routes().ranked().indexOf(made.best().ranked()) + 1;
  }

  private int ofRoutes(ReadResult read, List<Integer> ranks) {
    return planning.plan(read, options, findings(), made -> ofRoutes(made, ranks));
  }

  private int ofRoutes(Planning.Made made, List<Integer> ranks) {
    List<RankedRoute> all = made.outcome().routes().ranked();
    List<Plan> both = new ArrayList<>();
    for (int rank : ranks) {
      if (rank > all.size()) {
        return message(
            "there is no route " + rank + "; the last is route " + all.size() + ".",
            ExitCode.WRONG_CALL);
      }
      Optional<Plan> plan =
          Hoopwright.planOf(made.best().bench().bed(), all.get(rank - 1), made.job());
      if (plan.isEmpty()) {
        return message(
            "a clamp finds no place on route " + rank + ", so it has no plan.", ExitCode.FINDINGS);
      }
      both.add(plan.get());
    }
    return written(
        Compared.of(made.read(), ranks.get(0)),
        Compared.of(made.read(), ranks.get(1)),
        Hoopwright.compare(both.get(0), both.get(1)));
  }

  private int message(String text, int code) {
    session.console().message("hoopwright compare: " + text);
    return code;
  }

  private FindingsReport findings() {
    return new FindingsReport(format == Format.json ? FindingsFormat.json : FindingsFormat.text);
  }

  private int written(Compared first, Compared second, List<Difference> differences) {
    session
        .console()
        .result(
            format == Format.json
                ? DifferencesWriter.json(first, second, differences)
                : DifferencesWriter.text(first, second, differences));
    return ExitCode.DONE;
  }
}
