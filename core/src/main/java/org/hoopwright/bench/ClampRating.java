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
    Optional<Force> held = Optional.empty();
    boolean mustBeCleaned = false;
    for (BenchTest test : record) {
      if (test instanceof BenchTest.Pull pull && pull.string().equals(string)) {
        if (pull.held() && pull.depth().compareTo(depth) <= 0) {
          held = Optional.of(held.filter(h -> h.compareTo(pull.pull()) > 0).orElse(pull.pull()));
        } else if (!pull.held() && pull.depth().compareTo(depth) >= 0) {
          slipped =
              Optional.of(slipped.filter(s -> s.compareTo(pull.pull()) < 0).orElse(pull.pull()));
          mustBeCleaned = true;
        }
      } else if (test instanceof BenchTest.Cleaned) {
        slipped = Optional.empty();
      }
    }
    // What slips at T holds no more than T, whatever it held at another time.
    Optional<Force> below = slipped;
    boolean contradicted =
        held.isPresent() && below.isPresent() && held.get().compareTo(below.get()) >= 0;
    if (contradicted) {
      held = heldBelow(record, string, depth, below.get());
    }
    return new ClampRating(held, slipped, mustBeCleaned && !provenAgain(record, string, depth));
  }

  private static Optional<Force> heldBelow(
      List<BenchTest> record, StringSpec string, JawDepth depth, Force slip) {
    return record.stream()
        .filter(t -> t instanceof BenchTest.Pull)
        .map(t -> (BenchTest.Pull) t)
        .filter(p -> p.held() && p.string().equals(string) && p.depth().compareTo(depth) <= 0)
        .map(BenchTest.Pull::pull)
        .filter(p -> p.compareTo(slip) < 0)
        .max(Force::compareTo);
  }

  /** Whether a test that held follows a cleaning that follows the last slip. */
  private static boolean provenAgain(List<BenchTest> record, StringSpec string, JawDepth depth) {
    boolean cleaned = false;
    boolean proven = false;
    for (BenchTest test : record) {
      if (test instanceof BenchTest.Cleaned) {
        cleaned = true;
      } else if (test instanceof BenchTest.Pull p && p.string().equals(string)) {
        if (!p.held() && p.depth().compareTo(depth) >= 0) {
          cleaned = false;
          proven = false;
        } else if (p.held() && cleaned && p.depth().compareTo(depth) <= 0) {
          proven = true;
        }
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
