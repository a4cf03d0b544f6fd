package org.hoopwright;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hoopwright.bed.Assignment;
import org.hoopwright.bed.Bed;
import org.hoopwright.bench.BenchPlan;
import org.hoopwright.bench.HalfDone;
import org.hoopwright.bench.Job;
import org.hoopwright.bench.Planner;
import org.hoopwright.bench.Step;
import org.hoopwright.bench.WayOn;
import org.hoopwright.bench.WaysOn;
import org.hoopwright.check.CheckReport;
import org.hoopwright.check.Checker;
import org.hoopwright.compare.Difference;
import org.hoopwright.compare.Differences;
import org.hoopwright.finding.Finding;
import org.hoopwright.finding.FindingCode;
import org.hoopwright.finding.Findings;
import org.hoopwright.finding.HoopwrightFault;
import org.hoopwright.frame.Draft;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.Layout;
import org.hoopwright.frame.TensionRange;
import org.hoopwright.judgement.Judgement;
import org.hoopwright.replay.Breach;
import org.hoopwright.replay.ForceEstimate;
import org.hoopwright.replay.Replay;
import org.hoopwright.route.RankedRoute;
import org.hoopwright.route.Route;
import org.hoopwright.route.RouteMeasures;
import org.hoopwright.route.RoutePreferences;
import org.hoopwright.route.RouteRequest;
import org.hoopwright.route.RouteResult;
import org.hoopwright.route.RouteSearch;
import org.hoopwright.units.Force;

/**
 * From a layout and a job to a proven stringing plan.
 *
 * <pre>{@code
 * Outcome outcome = Hoopwright.plan(layout, Job.standard());
 * outcome.plan().ifPresent(plan -> plan.bench().steps().forEach(step -> System.out.println(step.say())));
 * }</pre>
 *
 * <p>Pure and thread-safe; the same layout and job give the same outcome on every JVM. Whatever is
 * wrong with a layout comes back as findings.
 */
public final class Hoopwright {

  private Hoopwright() {}

  /**
   * Everything found about a layout: in itself, in its bed, and whether it has a route. Where no
   * skip rules are stated the bed is read off the holes.
   *
   * @return the findings by place
   */
  public static List<Finding> check(Layout layout) {
    return check(Draft.whole(layout)).findings();
  }

  /**
   * As {@link #check(Layout)}, of a layout whose file could not be read everywhere: everything that
   * is sure whatever stood in the lost parts.
   *
   * @return the findings, and which rules could not be asked and why
   */
  public static CheckReport check(Draft draft) {
    Layout layout = draft.layout();
    return Checker.check(draft, Hoopwright::lay, bed -> looked(layout, bed));
  }

  /** Looks for the best route; only where there is none, for the reasons. */
  private static Checker.Routes looked(Layout layout, Bed bed) {
    RouteRequest request = Job.standard().routeRequest(layout);
    Optional<RouteMeasures> best = RouteSearch.best(bed, request).map(Route::measures);
    return new Checker.Routes(
        best,
        request.runLimit(),
        best.isPresent() ? List.of() : searched(layout, RouteSearch.search(bed, request)));
  }

  private static List<Finding> searched(Layout layout, RouteResult routes) {
    return switch (routes.status()) {
      case FOUND -> List.of();
      case PROVEN_ABSENT -> NoRoute.findings(layout, routes);
      case LIMIT_REACHED ->
          List.of(
              Finding.of(FindingCode.ROUTE_UNKNOWN)
                  .at("", layout.places())
                  .fix("Plan with a higher limit of nodes to find out.")
                  .build());
    };
  }

  /**
   * The bed of a layout: by its skip rules where it states them, else as read off its holes. Where
   * a blocked hole forbids one, the findings name the nearest way round it.
   *
   * @return the bed; none when a finding is an error. The findings are the errors of the layout
   *     itself, and what laying its strings found
   */
  public static Assignment assign(Layout layout) {
    return Checker.assign(layout, Hoopwright::lay);
  }

  /** The bed of a layout that has no errors of its own. */
  private static Assignment lay(Layout layout) {
    Assignment laid = FrameReading.of(layout);
    if (laid.findings().stream().noneMatch(Hoopwright::detourMayHelp)) {
      return laid;
    }
    List<Finding> findings = new ArrayList<>(laid.findings());
    findings.addAll(Detours.findings(layout));
    return new Assignment(laid.bed(), Findings.sorted(findings));
  }

  /**
   * Completes a layout that states no {@code mains.skip} from its holes.
   *
   * @param layout the layout; a stated {@code mains.skip} and measured offsets are left aside
   * @return the readings, each as a complete layout, with what there is to say about them
   */
  public static InferredLayout infer(Layout layout) {
    return InferredLayout.of(layout);
  }

  private static boolean detourMayHelp(Finding finding) {
    return finding.code() == FindingCode.MAIN_HOLE_BLOCKED
        || (finding.code() == FindingCode.CROSSES_NO_HOLE && !finding.about().isEmpty());
  }

  /**
   * The nearest way round the blocked holes of a layout that states its skip rules: which strings
   * move, which holes take two, and a route that proves it can be strung.
   *
   * @param layout the layout, with its blocked holes
   * @param job what is to be done; of it the limits and options of routes count
   */
  public static Detour detour(Layout layout, Job job) {
    return Detours.of(layout, job);
  }

  /**
   * The holes that could not be worked round if one of them failed. Every hole with a string is
   * tried by itself, so this takes as long as some dozens of plans.
   *
   * @return the holes in the order of their sides' lists; on a symmetric bed those of the left side
   *     stand for both; none when the layout has no bed
   */
  public static List<HoleId> criticalHoles(Layout layout, Job job) {
    return Detours.critical(layout, job);
  }

  /**
   * Every route of a bed for a job, ranked.
   *
   * @throws IllegalArgumentException when the job asks for one piece of two different strings
   */
  public static RouteResult routes(Bed bed, Job job) {
    return RouteSearch.search(bed, job.routeRequest(bed.layout()));
  }

  /**
   * The plan of the best route. Where the layout states no skip rules they are read off its holes,
   * with a note; where the holes can be read in more than one way nothing is planned.
   *
   * @param layout the layout
   * @param job what is to be done
   * @throws IllegalArgumentException when the job contradicts itself, see {@link #routes(Bed, Job)}
   * @throws HoopwrightFault when a plan of ours fails its own proof: please report it with the
   *     layout
   */
  public static Outcome plan(Layout layout, Job job) {
    Assignment checked = Checker.bed(layout, Hoopwright::lay);
    List<Finding> findings = new ArrayList<>(checked.findings());
    Optional<Bed> bed = checked.bed();
    if (bed.isEmpty()) {
      return new Outcome.BadLayout(Findings.sorted(findings));
    }
    RouteResult routes = routes(bed.get(), job);
    switch (routes.status()) {
      case LIMIT_REACHED -> {
        return new Outcome.GaveUp(Findings.sorted(findings), routes);
      }
      case PROVEN_ABSENT -> {
        findings.addAll(NoRoute.findings(layout, routes));
        return new Outcome.NoRoute(Findings.sorted(findings), routes);
      }
      case FOUND -> {}
    }
    for (RankedRoute ranked : routes.ranked()) {
      Optional<Plan> plan = planOf(bed.get(), ranked, routes.request(), job, findings);
      if (plan.isPresent()) {
        return new Outcome.Planned(plan.get(), routes);
      }
    }
    throw new HoopwrightFault(
        "No bench plan could be written for any of "
            + routes.ranked().size()
            + " routes of "
            + layout
            + ".");
  }

  /**
   * The proven plan of one route of a bed, for callers that list several.
   *
   * @param bed the bed
   * @param ranked a route that {@link #routes(Bed, Job)} gave for it
   * @param job the job that was asked for
   * @return the plan, without the layout's own findings; empty when a clamp that the route needs
   *     has no place with any of its knots
   * @throws HoopwrightFault when the plan fails its own proof
   */
  public static Optional<Plan> planOf(Bed bed, RankedRoute ranked, Job job) {
    return planOf(bed, ranked, job.routeRequest(bed.layout()), job, List.of());
  }

  private static Optional<Plan> planOf(
      Bed bed, RankedRoute ranked, RouteRequest request, Job job, List<Finding> known) {
    Optional<BenchPlan> bench = Planner.plan(bed, ranked.route(), job);
    if (bench.isEmpty()) {
      bench =
          RouteSearch.knotVariants(bed, request, ranked.route()).stream()
              .flatMap(r -> Planner.plan(bed, r, job).stream())
              .findFirst();
    }
    if (bench.isEmpty()) {
      return Optional.empty();
    }
    BenchPlan plan = bench.get();
    List<Breach> breaches = Replay.check(plan);
    if (!breaches.isEmpty()) {
      throw new HoopwrightFault(
          "The plan for %s by %s breaks rules of the bench: %s"
              .formatted(bed.layout(), plan.route(), breaches));
    }
    List<Finding> findings = new ArrayList<>(known);
    findings.addAll(plan.findings());
    findings.addAll(planFindings(plan));
    findings.addAll(Judgement.findings(plan));
    return Optional.of(
        new Plan(plan, ranked, ForceEstimate.of(plan), Cautions.USUAL, Findings.sorted(findings)));
  }

  /**
   * What differs between two layouts: what they state, and what follows from it: spans, places of
   * holes, and the routes that a job may take on the one and not on the other.
   *
   * @param first a layout
   * @param second another
   * @param job what is to be done; of it the limits and options of routes count
   * @return the differences by topic; none when both state the same
   * @throws IllegalArgumentException when the job contradicts itself, see {@link #routes(Bed, Job)}
   */
  public static List<Difference> compare(Layout first, Layout second, Job job) {
    if (first.equals(second)) {
      return List.of();
    }
    List<Difference> found = new ArrayList<>(Differences.ofLayouts(first, second));
    Optional<Bed> a = assign(first).bed();
    Optional<Bed> b = assign(second).bed();
    found.addAll(Differences.ofBeds(a, b));
    if (a.isPresent() && b.isPresent()) {
      found.addAll(
          Differences.ofRoutes(a.get(), routes(a.get(), job), b.get(), routes(b.get(), job)));
    }
    return List.copyOf(found);
  }

  /**
   * What differs between two plans, of one layout or of two: the route with its knots and covered
   * holes, what was asked, lengths, pulls, and what clamps and hoop are estimated to bear.
   *
   * @return the differences by topic; none when the plans are alike in all of these
   */
  public static List<Difference> compare(Plan first, Plan second) {
    return Differences.ofPlans(first.bench(), second.bench());
  }

  /**
   * The ways on from a half-done job, cheapest first.
   *
   * @param before the bed on which it was strung
   * @param state what is strung, in that bed's names
   * @param bed the bed to go on with: the same, or another one of that frame where a hole can no
   *     longer be used
   * @param job what is to be done
   * @param most how many ways are wanted, at least 1
   * @return the ways, each proven by a replay from that state; empty when the bed has no route
   * @throws IllegalArgumentException when what is pulled is not held by clamps and knots, so that
   *     it cannot be the state of a frame
   * @throws HoopwrightFault when a way on fails its own proof: please report it
   */
  public static List<WayOn> waysOn(Bed before, HalfDone state, Bed bed, Job job, int most) {
    List<Breach> wrong = Replay.check(before, state);
    if (!wrong.isEmpty()) {
      throw new IllegalArgumentException(
          "The half-done job contradicts itself: %s\nMaybe a clamp or a knot is missing."
              .formatted(String.join(" ", wrong.stream().map(Breach::message).toList())));
    }
    List<WayOn> ways = WaysOn.find(before, state, bed, job, most);
    for (WayOn way : ways) {
      List<Breach> breaches = Replay.check(way);
      if (!breaches.isEmpty()) {
        throw new HoopwrightFault(
            "A way on by %s breaks rules of the bench: %s".formatted(way.goOn().route(), breaches));
      }
    }
    return ways;
  }

  /** What is worth saying about a plan as a whole. */
  private static List<Finding> planFindings(BenchPlan plan) {
    List<Finding> findings = new ArrayList<>();
    Layout layout = plan.bed().layout();
    if (RoutePreferences.MAKER.value(plan.route(), plan.bed()) > 0) {
      findings.add(
          Finding.of(FindingCode.MAKER_DEPARTURE)
              .message(
                  "The plan does not keep to everything that the frame's maker asks (direction, pieces or side).")
              .fix(
                  "Ask the frame's maker, or allow what the maker asks: see the limits and options of the job.")
              .build());
    }
    layout.tension().ifPresent(range -> tension(plan, layout, range, findings));
    findings.addAll(StringFindings.of(plan));
    return findings;
  }

  private static void tension(
      BenchPlan plan, Layout layout, TensionRange range, List<Finding> findings) {
    double most = 0;
    double least = Double.MAX_VALUE;
    for (Step step : plan.steps()) {
      if (step instanceof Step.Pull pull && pull.tails().size() == 1) {
        Force t = pull.tension();
        most = Math.max(most, t.newtons());
        least = Math.min(least, t.newtons());
      }
    }
    if (most > range.most().newtons() + ROUNDING_N) {
      findings.add(
          Finding.of(FindingCode.TENSION_ABOVE_MAX)
              .at("/tension/max", layout.places())
              .message(
                  "A pull of %s is above the maker's limit of %s."
                      .formatted(force(most, range), force(range.most().newtons(), range)))
              .fact("pull", most, "N")
              .fact("limit", range.most().newtons(), "N")
              .fix("Pull less: too high a pull can crack the frame.")
              .build());
    }
    if (least < range.least().newtons() - ROUNDING_N) {
      findings.add(
          Finding.of(FindingCode.TENSION_BELOW_MIN)
              .at("/tension/min", layout.places())
              .message(
                  "A pull of %s is below the maker's range, which begins at %s."
                      .formatted(force(least, range), force(range.least().newtons(), range)))
              .fact("pull", least, "N")
              .fact("limit", range.least().newtons(), "N")
              .fix("Check that the unit is the one that was meant.")
              .build());
    }
  }

  /** Differences below this are rounding of units, in newtons. */
  private static final double ROUNDING_N = 1e-6;

  private static String force(double newtons, TensionRange range) {
    return String.format(
        java.util.Locale.ROOT, "%.1f %s", newtons / range.unit().newtons(), range.unit().symbol());
  }
}
