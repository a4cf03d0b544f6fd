package org.hoopwright.bench;

import java.util.List;
import java.util.Optional;
import org.hoopwright.material.StringSpec;

/**
 * What is at hand at the bench. Immutable; {@link #builder()} starts with the defaults: two fixed
 * machine clamps, one starting clamp, a constant pull, and nothing tested.
 *
 * <p>Machine clamps sit inside the hoop only. Sizes, distances and drawbacks are our choice, as no
 * published value was found. What a clamp holds is never assumed: it comes from {@link BenchTest}s.
 */
public final class Bench {

  private final int machineClamps;
  private final int startingClamps;
  private final double clampLengthMm;
  private final double clampDistanceMm;
  private final double reachMm;
  private final MachineClampKind machineClampKind;
  private final Tensioner tensioner;
  private final Optional<Double> statedLeastDrawbackMm;
  private final Optional<Double> statedMostDrawbackMm;
  private final List<BenchTest> machineClampTests;
  private final List<BenchTest> startingClampTests;

  private Bench(Builder b) {
    this.machineClamps = b.machineClamps;
    this.startingClamps = b.startingClamps;
    this.clampLengthMm = b.clampLengthMm;
    this.clampDistanceMm = b.clampDistanceMm;
    this.reachMm = b.reachMm;
    this.machineClampKind = b.machineClampKind;
    this.tensioner = b.tensioner;
    this.statedLeastDrawbackMm = b.leastDrawbackMm;
    this.statedMostDrawbackMm = b.mostDrawbackMm;
    this.machineClampTests = b.machineClampTests;
    this.startingClampTests = b.startingClampTests;
  }

  /** Starts with the defaults. */
  public static Builder builder() {
    return new Builder();
  }

  /** A builder that starts with what this bench has. */
  public Builder toBuilder() {
    Builder b = new Builder();
    b.machineClamps = machineClamps;
    b.startingClamps = startingClamps;
    b.clampLengthMm = clampLengthMm;
    b.clampDistanceMm = clampDistanceMm;
    b.reachMm = reachMm;
    b.machineClampKind = machineClampKind;
    b.tensioner = tensioner;
    b.leastDrawbackMm = statedLeastDrawbackMm;
    b.mostDrawbackMm = statedMostDrawbackMm;
    b.machineClampTests = machineClampTests;
    b.startingClampTests = startingClampTests;
    return b;
  }

  /** The defaults. */
  public static Bench standard() {
    return builder().build();
  }

  /** Machine clamps, inside the hoop only. */
  public int machineClamps() {
    return machineClamps;
  }

  /** Starting clamps, inside or outside. */
  public int startingClamps() {
    return startingClamps;
  }

  /** How much of the string a clamp takes, in mm. */
  public double clampLengthMm() {
    return clampLengthMm;
  }

  /** How far from a hole a clamp is set when nothing is in its way, in mm. */
  public double clampDistanceMm() {
    return clampDistanceMm;
  }

  /** String needed from the frame to the tensioner's gripper, in mm. */
  public double reachMm() {
    return reachMm;
  }

  /** How its machine clamps are built. */
  public MachineClampKind machineClampKind() {
    return machineClampKind;
  }

  /** How its tensioner works. */
  public Tensioner tensioner() {
    return tensioner;
  }

  /** The least by which string slips back when a clamp takes a load, in mm. */
  public double leastDrawbackMm() {
    return statedLeastDrawbackMm.orElseGet(machineClampKind::leastDrawbackMm);
  }

  /** The most by which string slips back when a clamp takes a load, in mm. */
  public double mostDrawbackMm() {
    return statedMostDrawbackMm.orElseGet(machineClampKind::mostDrawbackMm);
  }

  /** What its machine clamps are known to hold of a string that lies deep in their jaws. */
  public ClampRating machineClampRating(StringSpec string) {
    return ClampRating.of(machineClampTests, string, JawDepth.DEEP);
  }

  /** What its starting clamps are known to hold of a string that lies deep in their jaws. */
  public ClampRating startingClampRating(StringSpec string) {
    return ClampRating.of(startingClampTests, string, JawDepth.DEEP);
  }

  /** The tests of its machine clamps, in the order in which they were made. */
  public List<BenchTest> machineClampTests() {
    return machineClampTests;
  }

  /** The tests of its starting clamps, in the order in which they were made. */
  public List<BenchTest> startingClampTests() {
    return startingClampTests;
  }

  /** Gathers a bench. Not thread-safe. */
  public static final class Builder {
    private int machineClamps = 2;
    private int startingClamps = 1;
    private double clampLengthMm = 12;
    private double clampDistanceMm = 15;
    private double reachMm = 230;
    private MachineClampKind machineClampKind = MachineClampKind.FIXED;
    private Tensioner tensioner = Tensioner.CONSTANT_PULL;
    private Optional<Double> leastDrawbackMm = Optional.empty();
    private Optional<Double> mostDrawbackMm = Optional.empty();
    private List<BenchTest> machineClampTests = List.of();
    private List<BenchTest> startingClampTests = List.of();

    private Builder() {}

    /**
     * Machine clamps at hand; no plan needs more than two.
     *
     * @throws IllegalArgumentException when there are fewer than 2 or more than 9
     */
    public Builder machineClamps(int count) {
      if (count < 2 || count > 9) {
        throw new IllegalArgumentException(
            "The number of machine clamps (%s) must be from 2 to 9.".formatted(count));
      }
      machineClamps = count;
      return this;
    }

    /**
     * Starting clamps at hand.
     *
     * @throws IllegalArgumentException when there are fewer than 0 or more than 2
     */
    public Builder startingClamps(int count) {
      if (count < 0 || count > 2) {
        throw new IllegalArgumentException(
            "The number of starting clamps (%s) must be from 0 to 2.".formatted(count));
      }
      startingClamps = count;
      return this;
    }

    /**
     * The size of a clamp along the string, in mm.
     *
     * @throws IllegalArgumentException when it is not from 1 to 60
     */
    public Builder clampLengthMm(double mm) {
      clampLengthMm = range("clamp length", mm, 1, 60);
      return this;
    }

    /**
     * The usual distance of a clamp from a hole, in mm.
     *
     * @throws IllegalArgumentException when it is not from 0 to 100
     */
    public Builder clampDistanceMm(double mm) {
      clampDistanceMm = range("clamp distance", mm, 0, 100);
      return this;
    }

    /**
     * String needed from the frame to the gripper, in mm.
     *
     * @throws IllegalArgumentException when it is not from 0 to 2000
     */
    public Builder reachMm(double mm) {
      reachMm = range("reach", mm, 0, 2000);
      return this;
    }

    /** How the machine clamps are built. */
    public Builder machineClampKind(MachineClampKind kind) {
      machineClampKind = kind;
      return this;
    }

    /** How the tensioner works. */
    public Builder tensioner(Tensioner value) {
      tensioner = value;
      return this;
    }

    /**
     * By how much string slips back when a clamp takes a load; what is usual for the kind of clamp
     * when nothing is said.
     *
     * @throws IllegalArgumentException when they are not from 0 to 10 mm, the least first
     */
    public Builder drawbackMm(double least, double most) {
      leastDrawbackMm = Optional.of(range("least drawback", least, 0, 10));
      mostDrawbackMm = Optional.of(range("most drawback", most, least, 10));
      return this;
    }

    /** What was tested on the machine clamps, in the order in which it was done. */
    public Builder machineClampTests(List<BenchTest> tests) {
      machineClampTests = List.copyOf(tests);
      return this;
    }

    /** What was tested on the starting clamps, in the order in which it was done. */
    public Builder startingClampTests(List<BenchTest> tests) {
      startingClampTests = List.copyOf(tests);
      return this;
    }

    /** The bench. */
    public Bench build() {
      return new Bench(this);
    }

    private static double range(String what, double mm, double min, double max) {
      if (!(mm >= min && mm <= max)) {
        throw new IllegalArgumentException(
            "The " + what + " (" + mm + " mm) must be from " + min + " to " + max + " mm.");
      }
      return mm;
    }
  }
}
