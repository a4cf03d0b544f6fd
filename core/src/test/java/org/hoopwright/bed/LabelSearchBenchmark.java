package org.hoopwright.bed;

import java.util.concurrent.TimeUnit;
import org.hoopwright.frame.Layout;
import org.hoopwright.testing.Draw;
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
 * The assignment engine beside a constraint solver's model of the same question: labels that both
 * sides have alike, from the question to the proven optimum, building included. Only the ratios of
 * one run mean anything.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class LabelSearchBenchmark {

  /** The 16 x 19 frame. */
  @State(Scope.Benchmark)
  public static class Usual {
    /** How many holes a quadrant may be shared, and as many unused. */
    @Param({"0", "1", "2"})
    int open;

    /** Which holes may be for a main or a cross: seven a quadrant, or every one. */
    @Param({"seven", "every"})
    String free = "seven";

    private LabelQuestion question;

    /** Makes the question. */
    @Setup
    public void make() {
      question =
          LabelQuestions.usual(
              Willowbank.hundred().build(), Draw.from(1), open, free.equals("every"));
    }
  }

  /** Frames of all sizes, each hole once. */
  @State(Scope.Benchmark)
  public static class Growing {
    /** Holes a side. */
    @Param({"10", "20", "40", "100", "200", "400"})
    int holes;

    private LabelQuestion question;

    /** Makes the question. */
    @Setup
    public void make() {
      int n = holes * 8 / 35;
      Layout layout =
          Willowbank.hundred()
              .holes((holes + 1) / 2, holes / 2)
              .mains(2 * n)
              .crosses(holes - 2 * n)
              .build();
      question = LabelQuestions.usual(layout, Draw.from(1), 0);
    }
  }

  /** Our engine. */
  @Benchmark
  public LabelResult engine(Usual usual) {
    return LabelSearch.search(usual.question);
  }

  /** The constraint solver. */
  @Benchmark
  public long solver(Usual usual) {
    return ChocoLabels.least(usual.question);
  }

  /** Our engine as frames grow. */
  @Benchmark
  public LabelResult growth(Growing growing) {
    return LabelSearch.search(growing.question);
  }
}
