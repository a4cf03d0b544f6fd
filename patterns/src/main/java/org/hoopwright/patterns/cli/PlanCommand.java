package org.hoopwright.patterns.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hoopwright.Hoopwright;
import org.hoopwright.Outcome;
import org.hoopwright.Plan;
import org.hoopwright.bed.Bed;
import org.hoopwright.bench.Job;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Findings;
import org.hoopwright.patterns.ForceTable;
import org.hoopwright.patterns.PlanSheet;
import org.hoopwright.patterns.PlanWriter;
import org.hoopwright.patterns.ReadResult;
import org.hoopwright.patterns.RouteTable;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.RouteResult;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans how a frame is strung. */
@Command(
    name = "plan",
    description = "Plans how a frame is strung: the best route, or every route.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class PlanCommand implements Callable<Integer> {

  private final Session session;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "FILE",
      description = "A layout file; - for standard input, sample:NAME for a bundled layout.")
  private String file = "";

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "How the plan is written: ${COMPLETION-CANDIDATES}; default ${DEFAULT-VALUE}.")
  private Format format = Format.text;

  @Mixin private JobOptions options = new JobOptions();

  @Option(names = "--all", description = "List every route, best first, one a class.")
  private boolean all;

  @Option(
      names = "--limit",
      paramLabel = "N",
      description = "With --all: list the first N routes only.")
  private @Nullable Integer limit;

  @Option(
      names = "--steps",
      description = "With --all: give every route's steps too. One plan always has its steps.")
  private boolean steps;

  @Option(
      names = "--forces",
      description = "Add what strings, clamps, knots and hoop are estimated to bear at each step.")
  private boolean forces;

  PlanCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    checkCall();
    Planning planning = new Planning(session, "plan");
    FindingsReport findings =
        new FindingsReport(format == Format.json ? FindingsFormat.json : FindingsFormat.text);
    return planning.read(file, r -> planning.plan(r, options, findings, this::planned));
  }

  private void checkCall() {
    options.check();
    if (!all && (limit != null || steps)) {
      throw new ParameterException(
          spec.commandLine(),
          (limit != null ? "--limit" : "--steps") + " goes with --all only; add --all.");
    }
    if (all && forces) {
      throw new ParameterException(
          spec.commandLine(), "--forces goes with one plan only; leave out --all.");
    }
    if (limit != null && limit < 1) {
      throw new ParameterException(
          spec.commandLine(), "--limit (" + limit + ") must be 1 or more.");
    }
  }

  private int planned(Planning.Made made) {
    Optional<String> sha256 = Optional.of(made.read().sha256());
    if (all) {
      everyRoute(made.read(), made.outcome(), made.job(), sha256);
    } else {
      Plan best = made.best();
      session
          .console()
          .result(
              format == Format.json
                  ? PlanWriter.write(best, sha256, forces)
                  : PlanSheet.of(best) + (forces ? "\n" + ForceTable.of(best) : ""));
    }
    return made.exitCode();
  }

  private void everyRoute(
      ReadResult read, Outcome.Planned planned, Job job, Optional<String> sha256) {
    Bed bed = planned.best().bench().bed();
    RouteResult routes = planned.routes();
    int most = limit == null ? Integer.MAX_VALUE : limit;
    if (format == Format.text) {
      session.console().result(RouteTable.of(bed, routes, most));
      if (!steps) {
        return;
      }
    }
    List<Plan> plans = plans(read, bed, routes.ranked().stream().limit(most).toList(), job);
    if (format == Format.json) {
      session.console().result(PlanWriter.writeAll(plans, sha256, steps));
    } else {
      plans.forEach(p -> session.console().result("\n\n" + PlanSheet.of(p)));
    }
  }

  /** The plan of each route that has one; of the others a message says so. */
  private List<Plan> plans(ReadResult read, Bed bed, List<RankedRoute> ranked, Job job) {
    List<Finding> ofLayout =
        Planning.withFile(read, Hoopwright.check(read.layout().orElse(bed.layout()))).stream()
            .filter(f -> f.code() != FindingCode.NO_ROUTE) // this job's limits let one through
            .toList();
    List<Plan> plans = new ArrayList<>();
    for (RankedRoute route : ranked) {
      Optional<Plan> plan = Hoopwright.planOf(bed, route, job);
      if (plan.isPresent()) {
        List<Finding> findings = new ArrayList<>(ofLayout);
        findings.addAll(plan.get().findings());
        plans.add(Planning.withFindings(plan.get(), Findings.sorted(findings)));
      } else {
        session
            .console()
            .message(
                "hoopwright plan: a clamp finds no place on this route, so it has no plan: "
                    + route.route());
      }
    }
    return plans;
  }
}
