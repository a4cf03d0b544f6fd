package org.hoopwright.bench;

/**
 * What is at hand at the bench. Immutable; {@link #builder()} starts with the defaults: two machine
 * clamps, one starting clamp.
 *
 * <p>Machine clamps sit inside the hoop only. A clamp takes 12 mm of the string it bites; both
 * numbers below are our choice, as no published value was found.
 */
public final class Bench {

  private final int machineClamps;
  private final int startingClamps;
  private final double clampLengthMm;
  private final double clampDistanceMm;
  private final double reachMm;

  private Bench(Builder b) {
    this.machineClamps = b.machineClamps;
    this.startingClamps = b.startingClamps;
    this.clampLengthMm = b.clampLengthMm;
    this.clampDistanceMm = b.clampDistanceMm;
    this.reachMm = b.reachMm;
  }

  /** Starts with the defaults. */
  public static Builder builder() {
    return new Builder();
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

  /** Gathers a bench. Not thread-safe. */
  public static final class Builder {
    private int machineClamps = 2;
    private int startingClamps = 1;
    private double clampLengthMm = 12;
    private double clampDistanceMm = 15;
    private double reachMm = 230;

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
