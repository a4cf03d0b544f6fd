package org.hoopwright.route;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs the benchmarks of the search for routes and of what it is compared with in one go, and says
 * how many times faster it is, then the times. Arguments are those of JMH, such as {@code -f 1}.
 */
public final class RouteBenchmarkReport {

  private static final String FRAME = "16x19";

  private final Map<String, Double> micros = new TreeMap<>();
  private final Map<String, Double> bytes = new TreeMap<>();

  private RouteBenchmarkReport() {}

  /** Runs and prints. */
  public static void main(String[] args) throws RunnerException, CommandLineOptionException {
    Collection<RunResult> results =
        new Runner(
                new OptionsBuilder()
                    .parent(new CommandLineOptions(args))
                    .include(RouteSearchBenchmark.class.getName() + "\\.")
                    .include(RouteBaselineBenchmark.class.getName() + "\\.")
                    .addProfiler(GCProfiler.class)
                    .build())
            .run();
    RouteBenchmarkReport report = new RouteBenchmarkReport();
    results.forEach(report::add);
    report.print();
  }

  private void add(RunResult result) {
    String benchmark = result.getParams().getBenchmark();
    String name =
        benchmark.substring(benchmark.lastIndexOf('.') + 1)
            + " "
            + result.getParams().getParam("size");
    micros.put(name, result.getPrimaryResult().getScore());
    Result<?> allocated = result.getSecondaryResults().get("gc.alloc.rate.norm");
    if (allocated != null) {
      bytes.put(name, allocated.getScore());
    }
  }

  private void print() {
    line("How many times slower than the best route by the search, %s, one piece:", FRAME);
    ratio("chocoBest", "goal 200, better 300");
    ratio("chocoOrders", "orders only, without knots and cost");
    ratio("plainAtTheEnd", "goal 50");
    ratio("plainOnTheWay", "goal 50");
    ratio("plainBounded", "goal 50");
    line("Growth of the best route from 8 x 8 to 200 x 200, 25 times the spans:");
    line("  time x %.1f", micro("best 200x200") / micro("best 8x8"));
    line("Times in microseconds (goals: best 100, all 150) and bytes allocated:");
    micros.forEach(
        (name, time) ->
            line("  %-22s %12.1f %12.0f", name, time, bytes.getOrDefault(name, Double.NaN)));
  }

  private void ratio(String name, String goal) {
    line("  %-14s %8.1f  (%s)", name, micro(name + " " + FRAME) / micro("best " + FRAME), goal);
  }

  private double micro(String name) {
    return micros.getOrDefault(name, Double.NaN);
  }

  @SuppressWarnings("SystemOut") // this is a program
  private static void line(String format, Object... args) {
    System.out.println(String.format(Locale.ROOT, format, args));
  }
}
