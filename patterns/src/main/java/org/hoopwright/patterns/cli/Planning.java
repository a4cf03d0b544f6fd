package org.hoopwright.patterns.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import org.hoopwright.Hoopwright;
import org.hoopwright.Outcome;
import org.hoopwright.Plan;
import org.hoopwright.bench.Job;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.Findings;
import org.hoopwright.frame.Layout;
import org.hoopwright.patterns.ReadResult;
import org.hoopwright.patterns.UnreadableFile;
import org.hoopwright.route.RouteResult;

/** What every command does that works on one file: read it, plan it, and say why it cannot. */
final class Planning {

  private final Session session;
  private final String command;

  /** For a command of this name, which begins its messages. */
  Planning(Session session, String command) {
    this.session = session;
    this.command = "hoopwright " + command + ": ";
  }

  /**
   * A plan that was made.
   *
   * @param read the layout's file
   * @param job what was asked for
   * @param outcome the best plan and all routes
   * @param best the best plan, with the findings of the file among its own
   */
  record Made(ReadResult read, Job job, Outcome.Planned outcome, Plan best) {

    /** 1 when the plan comes with an error, else 0. */
    int exitCode() {
      return Findings.hasErrors(best.findings()) ? ExitCode.FINDINGS : ExitCode.DONE;
    }
  }

  /**
   * Reads a file and goes on with it.
   *
   * @return the exit code: that of what follows, or {@link ExitCode#FILE}
   */
  int read(String file, ToIntFunction<ReadResult> then) {
    ReadResult read;
    try {
      read = LayoutInput.read(file, session.streams());
    } catch (UnreadableFile e) {
      session.console().message(command + e.getMessage());
      return ExitCode.FILE;
    }
    return then.applyAsInt(read);
  }

  /**
   * Plans what was read and goes on with the plan.
   *
   * @param findings says what was found when there is no plan
   * @return the exit code: that of what follows, or of why there is no plan
   */
  int plan(ReadResult read, JobOptions options, FindingsReport findings, ToIntFunction<Made> then) {
    Optional<Layout> layout = read.layout();
    if (layout.isEmpty()) {
      return nothing("plan", read, findings, read.report().findings());
    }
    Job job = options.job(layout.get());
    Outcome outcome = Hoopwright.plan(layout.get(), job);
    if (outcome instanceof Outcome.Planned planned) {
      Plan best = withFindings(planned.best(), withFile(read, planned.findings()));
      return then.applyAsInt(new Made(read, job, planned, best));
    }
    if (outcome instanceof Outcome.GaveUp gaveUp) {
      return gaveUp(gaveUp);
    }
    return nothing("plan", read, findings, withFile(read, outcome.findings()));
  }

  /** Says that there is no plan, bed or drawing, and what was found instead. */
  int nothing(String what, ReadResult read, FindingsReport report, List<Finding> findings) {
    report.add(read, findings);
    session.console().result(report.text());
    session.console().message(command + "there is no " + what + " for " + read.fileName() + ".");
    return ExitCode.FINDINGS;
  }

  private int gaveUp(Outcome.GaveUp gaveUp) {
    RouteResult routes = gaveUp.routes();
    session
        .console()
        .message(
            command
                + "gave up at the limit of "
                + routes.request().maxNodes()
                + " nodes, with "
                + routes.ranked().size()
                + " of the routes found so far.\nMaybe raise it with --max-nodes.");
    return ExitCode.GAVE_UP;
  }

  /** Findings of a file's text together with others, by place. */
  static List<Finding> withFile(ReadResult read, List<Finding> findings) {
    List<Finding> together = new ArrayList<>(read.findings());
    together.addAll(findings);
    return Findings.sorted(together);
  }

  /** The same plan with these findings. */
  static Plan withFindings(Plan plan, List<Finding> findings) {
    return new Plan(plan.bench(), plan.ranked(), plan.estimates(), plan.cautions(), findings);
  }
}
