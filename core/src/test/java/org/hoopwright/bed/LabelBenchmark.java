package org.hoopwright.bed;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The label search beside a constraint solver with a model of the same question. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class LabelBenchmark {

  /** A 16 x 19 frame; the choice of labels is open, the same on both sides. */
  @State(Scope.Benchmark)
  public static class Frame {

    /** What is drilled. */
    @Param({"each-once", "two-unused", "two-shared"})
    public String holes = "each-once";

    LabelQuestion question() {
      return FullFrames.question(
          switch (holes) {
            case "two-unused" -> FullFrames.layout(20, 19, 16, 19);
            case "two-shared" -> FullFrames.layout(16, 15, 16, 19, "7H", "8H", "7T", "8T");
            default -> FullFrames.layout(18, 17, 16, 19);
          });
    }

    private LabelQuestion made = FullFrames.question(FullFrames.layout(4, 4, 4, 4));
    private String of = "";

    LabelQuestion ready() {
      if (!of.equals(holes)) {
        of = holes;
        made = question();
      }
      return made;
    }
  }

  /** Frames that grow. */
  @State(Scope.Benchmark)
  public static class Growing {

    /** Holes a side. */
    @Param({"10", "20", "35", "50", "100", "200", "400"})
    public int holes = 35;

    private LabelQuestion made = FullFrames.question(FullFrames.layout(4, 4, 4, 4));
    private int of;

    LabelQuestion ready() {
      if (of != holes) {
        of = holes;
        made = FullFrames.question(FullFrames.grown(holes));
      }
      return made;
    }
  }

  /** All optima and the runner-up; tables included. */
  @Benchmark
  public LabelResult search(Frame frame) {
    return LabelSearch.search(frame.ready());
  }

  /** The same with a frame of each size. */
  @Benchmark
  public LabelResult growth(Growing frame) {
    return LabelSearch.search(frame.ready());
  }

  /**
   * The least cost alone, by the constraint solver; model included, and one run, for its length.
   */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 1)
  @Measurement(iterations = 1)
  public int choco(Frame frame) {
    return new ChocoLabels(frame.ready(), 300_000).least(60);
  }
}
