package org.hoopwright.bench;

import java.util.List;
import java.util.Optional;
import org.hoopwright.material.StringSpec;
import org.hoopwright.units.Force;

/**
 * What a clamp is known to hold of one string: an interval from bench tests, not a number. Between
 * the two bounds nothing is known.
 *
 * @param heldUpTo the greatest pull that it held below any slip; empty when none was tested
 * @param slippedFrom the least pull at which it slipped since its jaws were last cleaned; empty
 *     when it never did
 * @param mustBeCleaned whether it has slipped and was not cleaned and tested again since
 */
public record ClampRating(
    Optional<Force> heldUpTo, Optional<Force> slippedFrom, boolean mustBeCleaned) {

  /** What a rating says about a load. */
  public enum Verdict {
    /** Tests show that it holds all of the load's range. */
    HOLDS,
    /** No test of this string reaches as far as the load. */
    UNTESTED,
    /** The load's range reaches what it slipped at. */
    MAY_SLIP,
    /** All of the load's range is at or above what it slipped at. */
    SLIPS
  }

  /** Nothing was tested. */
  public static ClampRating unknown() {
    return new ClampRating(Optional.empty(), Optional.empty(), false);
  }

  /**
   * The rating that a record of tests gives.
   *
   * <p>Only tests of the very string count: a clamp that holds 40 lbf of one gauge may let another
   * go, and its screw is set by gauge. Holding a pull shows that it holds less and lies deeper;
   * slipping shows that it slips at more and lies shallower. Where a slip lies below what was held
   * another time, the slip counts.
   *
   * @param record the tests in the order in which they were made
   * @param string the string
   * @param depth how deep it will lie in the jaws
   */
  public static ClampRating of(List<BenchTest> record, StringSpec string, JawDepth depth) {
    Optional<Force> slipped = Optional.empty();
    boolean everSlipped = false;
    for (BenchTest test : record) {
      if (test instanceof BenchTest.Cleaned) {
        slipped = Optional.empty();
      } else if (test instanceof BenchTest.Pull pull && shows(pull, false, string, depth)) {
        slipped =
            Optional.of(slipped.filter(s -> s.compareTo(pull.pull()) < 0).orElse(pull.pull()));
        everSlipped = true;
      }
    }
    // What slips at T holds less than T, whatever it held at another time.
    Optional<Force> below = slipped;
    Optional<Force> held =
        record.stream()
            .filter(t -> t instanceof BenchTest.Pull p && shows(p, true, string, depth))
            .map(t -> ((BenchTest.Pull) t).pull())
            .filter(p -> below.isEmpty() || p.compareTo(below.get()) < 0)
            .max(Force::compareTo);
    return new ClampRating(held, slipped, everSlipped && !provenAgain(record, string, depth));
  }

  /**
   * What two clamps hold one behind the other. What slips in one is caught by the other, so
   * together they hold what each holds, and slip for certain only where both would: our reading,
   * which takes it that a clamp that slips goes on holding what it held before.
   */
  public ClampRating with(ClampRating behind) {
    Optional<Force> held =
        heldUpTo.isEmpty() && behind.heldUpTo.isEmpty()
            ? Optional.empty()
            : Optional.of(sum(heldUpTo, behind.heldUpTo));
    Optional<Force> slipped =
        slippedFrom.isEmpty() || behind.slippedFrom.isEmpty()
            ? Optional.empty()
            : Optional.of(sum(slippedFrom, behind.slippedFrom));
    return new ClampRating(held, slipped, mustBeCleaned || behind.mustBeCleaned);
  }

  private static Force sum(Optional<Force> a, Optional<Force> b) {
    double newtons = a.map(Force::newtons).orElse(0.0) + b.map(Force::newtons).orElse(0.0);
    return Force.ofNewtons(Math.min(Force.MAX_NEWTONS, newtons));
  }

  /** Whether a test shows that a string that lies so deep is held, or slips. */
  private static boolean shows(
      BenchTest.Pull test, boolean holds, StringSpec string, JawDepth depth) {
    int deeper = test.depth().compareTo(depth);
    return test.held() == holds
        && test.string().equals(string)
        && (holds ? deeper <= 0 : deeper >= 0);
  }

  /** Whether a test that held follows a cleaning that follows the last slip. */
  private static boolean provenAgain(List<BenchTest> record, StringSpec string, JawDepth depth) {
    boolean cleaned = false;
    boolean proven = false;
    for (BenchTest test : record) {
      if (test instanceof BenchTest.Cleaned) {
        cleaned = true;
      } else if (test instanceof BenchTest.Pull p && shows(p, false, string, depth)) {
        cleaned = false;
        proven = false;
      } else if (test instanceof BenchTest.Pull p && shows(p, true, string, depth)) {
        proven |= cleaned;
      }
    }
    return proven;
  }

  /**
   * What it says about a load.
   *
   * @param lowNewtons the least that the load may be, in newtons
   * @param highNewtons the most, not less
   */
  public Verdict verdict(double lowNewtons, double highNewtons) {
    double slip = slippedFrom.map(Force::newtons).orElse(Double.POSITIVE_INFINITY);
    double hold = heldUpTo.map(Force::newtons).orElse(0.0);
    if (lowNewtons >= slip) {
      return Verdict.SLIPS;
    }
    if (highNewtons >= slip) {
      return Verdict.MAY_SLIP;
    }
    return highNewtons <= hold ? Verdict.HOLDS : Verdict.UNTESTED;
  }
}
