package org.hoopwright.route;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.hoopwright.bed.Bed;
import org.hoopwright.testing.BruteForceRoutes.Found;
import org.hoopwright.testing.ChocoRoutes;
import org.hoopwright.testing.PlainBacktracking;
import org.hoopwright.testing.PlainBacktracking.Measuring;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long others take for what {@link RouteSearchBenchmark} measures, their models included: a
 * constraint solver and plain backtracking on objects, under the same rules and the same cost.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@State(Scope.Benchmark)
@Fork(3)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class RouteBaselineBenchmark {

  /** The frame; larger ones are for patient people. */
  @Param({"16x19"})
  private String size = "16x19";

  private Bed bed = RouteSearchBenchmark.bed("16x19");

  /** Makes the bed, which is not measured. */
  @Setup
  public void setUp() {
    bed = RouteSearchBenchmark.bed(size);
  }

  /** Orders of passes by a constraint solver, without knots and cost. */
  @Benchmark
  public List<Found> chocoOrders() {
    return ChocoRoutes.orders(bed, RouteSearchBenchmark.ONE_PIECE);
  }

  /** The least cost by a constraint solver, with knots. */
  @Benchmark
  public Optional<List<Long>> chocoBest() {
    return ChocoRoutes.leastCost(bed, RouteSearchBenchmark.ONE_PIECE);
  }

  /** Plain backtracking that measures a route when it is complete. */
  @Benchmark
  public Optional<Found> plainAtTheEnd() {
    return PlainBacktracking.best(bed, RouteSearchBenchmark.ONE_PIECE, Measuring.AT_THE_END);
  }

  /** Plain backtracking that measures on the way. */
  @Benchmark
  public Optional<Found> plainOnTheWay() {
    return PlainBacktracking.best(bed, RouteSearchBenchmark.ONE_PIECE, Measuring.ON_THE_WAY);
  }

  /** Plain backtracking that measures on the way and leaves what is behind the best. */
  @Benchmark
  public Optional<Found> plainBounded() {
    return PlainBacktracking.best(bed, RouteSearchBenchmark.ONE_PIECE, Measuring.BOUNDED);
  }
}
