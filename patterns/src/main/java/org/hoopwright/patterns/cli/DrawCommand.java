package org.hoopwright.patterns.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hoopwright.Hoopwright;
import org.hoopwright.bed.Bed;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.Findings;
import org.hoopwright.frame.Layout;
import org.hoopwright.patterns.ReadResult;
import org.hoopwright.patterns.draw.Drawing;
import org.hoopwright.patterns.draw.DrawingOptions;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Draws a frame at a stage of its work. */
@Command(
    name = "draw",
    description = "Draws the frame, its bed, its best route or a step of its plan, as SVG.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
final class DrawCommand implements Callable<Integer> {

  /** What is drawn. The names are the words of the command line. */
  enum Stage {
    /** The frame with its holes, also one with errors. */
    layout,
    /** Which string runs between which holes. */
    bed,
    /** In which order the string is laid. */
    route,
    /** What is there after a step. */
    plan
  }

  /** From where the frame is seen. The names are the words of the command line. */
  enum SeenFrom {
    /** The face: head at the top, left at the left. */
    front,
    /** Turned over about its long axis. */
    back
  }

  private static final String NAME = "draw";

  private final Session session;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "FILE",
      description = "A layout file; - for standard input, sample:NAME for a bundled layout.")
  private String file = "";

  @Mixin private OutputOption output = new OutputOption();

  @Option(
      names = "--stage",
      paramLabel = "STAGE",
      description =
          "What is drawn: ${COMPLETION-CANDIDATES}. Left out: route, or plan with --step.")
  private @Nullable Stage stage;

  @Option(
      names = "--step",
      paramLabel = "N",
      description =
          "Of a plan: what is there after step N, 0 for the empty frame. Left out: the last step.")
  private @Nullable Integer step;

  @Option(
      names = "--side",
      paramLabel = "SIDE",
      description = "Seen from the ${COMPLETION-CANDIDATES}; default ${DEFAULT-VALUE}.")
  private SeenFrom side = SeenFrom.front;

  @Option(
      names = "--size",
      paramLabel = "WIDTH",
      description = "Width on paper with its unit (mm, in), from 40mm to 2000mm; default 180mm.")
  private @Nullable String size;

  @Mixin private JobOptions options = new JobOptions();

  DrawCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    DrawingOptions.Builder look = checkCall();
    Planning planning = new Planning(session, NAME);
    return planning.read(
        file,
        read ->
            switch (stage()) {
              case layout -> drawLayout(planning, read, look);
              case bed -> drawBed(planning, read, look);
              case route, plan ->
                  planning.plan(read, options, report(), made -> drawPlan(made, look));
            });
  }

  private Stage stage() {
    return stage != null ? stage : step != null ? Stage.plan : Stage.route;
  }

  private DrawingOptions.Builder checkCall() {
    options.check();
    output.check(file);
    if (step != null && stage() != Stage.plan) {
      throw wrong("--step goes with --stage plan only; leave out --stage " + stage() + ".");
    }
    if (step != null && step < 0) {
      throw wrong("--step (" + step + ") must be 0 or more.");
    }
    Optional<String> given = options.firstGiven();
    if (given.isPresent() && (stage() == Stage.layout || stage() == Stage.bed)) {
      throw wrong(
          given.get()
              + " changes nothing in a drawing of the "
              + stage()
              + "; leave it out, or draw --stage route or plan.");
    }
    DrawingOptions.Builder look = DrawingOptions.builder().back(side == SeenFrom.back);
    if (size != null) {
      try {
        look.widthMm(LengthWord.mm("--size", size, LengthWord.Of.BENCH));
      } catch (IllegalArgumentException e) {
        throw wrong(String.valueOf(e.getMessage()));
      }
    }
    return look;
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }

  private static FindingsReport report() {
    return new FindingsReport(FindingsFormat.text);
  }

  private int drawLayout(Planning planning, ReadResult read, DrawingOptions.Builder look) {
    List<Finding> findings = read.report().findings();
    Optional<Layout> layout = read.checkable();
    if (layout.isEmpty()) {
      return planning.nothing("drawing", read, report(), findings);
    }
    return write(Drawing.layout(layout.get(), look.findings(findings).build()), read, findings);
  }

  private int drawBed(Planning planning, ReadResult read, DrawingOptions.Builder look) {
    List<Finding> findings = read.report().findings();
    Optional<Bed> bed = read.checkable().flatMap(l -> Hoopwright.assign(l).bed());
    if (bed.isEmpty()) {
      int code = planning.nothing("bed", read, report(), findings);
      session.console().message("Maybe draw --stage layout, where findings are marked.");
      return code;
    }
    return write(Drawing.bed(bed.get(), look.findings(findings).build()), read, findings);
  }

  private int drawPlan(Planning.Made made, DrawingOptions.Builder look) {
    BenchPlan plan = made.best().bench();
    List<Finding> findings = made.best().findings();
    DrawingOptions how = look.findings(findings).build();
    if (stage() == Stage.route) {
      return write(Drawing.route(plan.bed(), plan.route(), how), made.read(), findings);
    }
    int last = plan.steps().size();
    int after = step == null ? last : step;
    if (after > last) {
      throw wrong(
          "--step (" + after + ") must be from 0 to " + last + ", the number of the plan's steps.");
    }
    return write(Drawing.plan(plan, after, how), made.read(), findings);
  }

  /** Errors are told beside being drawn, since they give the call its exit code. */
  private int write(Drawing drawing, ReadResult read, List<Finding> findings) {
    int code = ExitCode.DONE;
    if (Findings.hasErrors(findings)) {
      FindingsReport report = report();
      report.add(read, findings);
      session.console().message(report.text());
      code = ExitCode.FINDINGS;
    }
    return output.write(session, NAME, drawing.svg(), code);
  }
}
