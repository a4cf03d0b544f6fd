package org.hoopwright.route;

import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.frame.Direction;
import org.hoopwright.frame.End;
import org.hoopwright.testing.Draw;
import org.hoopwright.testing.LayoutGenerator;
import org.hoopwright.testing.Willowbank;
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
 * How long a search takes, its model included, from a bed to the best route or to all of them, with
 * knots, covered holes and doubled runs in the ranking. {@link RouteBaselineBenchmark} asks the
 * same of others, {@link RouteBenchmarkReport} puts both side by side.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@State(Scope.Benchmark)
@Fork(3)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class RouteSearchBenchmark {

  /** What is asked: one piece, from one end, in one direction. */
  static final RouteRequest ONE_PIECE =
      RouteRequest.builder()
          .pieces(1)
          .mainsStart(End.THROAT)
          .direction(Direction.HEAD_TO_THROAT)
          .build();

  /** Mains and crosses: 16 x 19 with skips as tennis frames have, else plain frames. */
  @Param({"16x19", "8x8", "16x16", "32x32", "64x64", "128x128", "200x200"})
  private String size = "16x19";

  private Bed bed = bed("16x19");

  /** Makes the bed, which is not measured. */
  @Setup
  public void setUp() {
    bed = bed(size);
  }

  static Bed bed(String size) {
    String[] counts = size.split("x", -1);
    int mains = Integer.parseInt(counts[0]);
    int crosses = Integer.parseInt(counts[1]);
    return StatedAssignment.assign(
            size.equals("16x19")
                ? Willowbank.hundred().noRun(List.of()).build()
                : LayoutGenerator.layout(Draw.from(1), mains / 2, crosses, Set.of()))
        .bed()
        .orElseThrow();
  }

  /** The best route. */
  @Benchmark
  public Object best() {
    return RouteSearch.best(bed, ONE_PIECE);
  }

  /** Every route as a value. */
  @Benchmark
  public int all() {
    int covered = 0;
    for (RankedRoute ranked : RouteSearch.search(bed, ONE_PIECE).ranked()) {
      covered += ranked.route().measures().covered();
    }
    return covered;
  }
}
