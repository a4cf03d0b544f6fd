package org.hoopwright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.hoopwright.bench.ClampRating.Verdict;
import org.hoopwright.material.Gauge;
import org.hoopwright.material.Material;
import org.hoopwright.material.StringSpec;
import org.hoopwright.units.Force;
import org.hoopwright.units.ForceUnit;
import org.junit.jupiter.api.Test;

class ClampRatingTest {

  private static final StringSpec THIN = new StringSpec(Gauge.G18, Material.NYLON);
  private static final StringSpec THICK = new StringSpec(Gauge.G16, Material.NYLON);

  private static Force lbf(double pounds) {
    return Force.of(pounds, ForceUnit.POUND_FORCE);
  }

  private static BenchTest held(StringSpec string, double pounds) {
    return new BenchTest.Pull(string, lbf(pounds), JawDepth.DEEP, true);
  }

  private static BenchTest slipped(StringSpec string, double pounds) {
    return new BenchTest.Pull(string, lbf(pounds), JawDepth.DEEP, false);
  }

  private static ClampRating rating(BenchTest... tests) {
    return ClampRating.of(List.of(tests), THIN, JawDepth.DEEP);
  }

  private static Verdict verdict(ClampRating rating, double pounds) {
    return rating.verdict(lbf(pounds).newtons(), lbf(pounds).newtons());
  }

  // A clamp that holds 40 lbf of an 18 gauge string and lets go at 50 holds a shared pull of 60
  // lbf, of which each tail carries half, and not a full pull of 50 lbf (common practice, no
  // source).
  @Test
  void holdsASharedPullAndNotAFullOne() {
    ClampRating rating = rating(held(THIN, 40), slipped(THIN, 50));

    assertThat(verdict(rating, 60.0 / 2)).isEqualTo(Verdict.HOLDS);
    assertThat(verdict(rating, 50)).isEqualTo(Verdict.SLIPS);
    assertThat(verdict(rating, 45)).isEqualTo(Verdict.UNTESTED);
    assertThat(rating.verdict(lbf(45).newtons(), lbf(55).newtons())).isEqualTo(Verdict.MAY_SLIP);
  }

  @Test
  void eachStringHasItsOwnRating() {
    List<BenchTest> tests = List.of(held(THICK, 60), slipped(THIN, 30));

    assertThat(ClampRating.of(tests, THICK, JawDepth.DEEP).heldUpTo()).contains(lbf(60));
    assertThat(ClampRating.of(tests, THICK, JawDepth.DEEP).slippedFrom()).isEmpty();
    assertThat(ClampRating.of(tests, THIN, JawDepth.DEEP).heldUpTo()).isEmpty();
    assertThat(ClampRating.unknown().verdict(1, 2)).isEqualTo(Verdict.UNTESTED);
    assertThat(ClampRating.of(List.of(), THIN, JawDepth.TIP)).isEqualTo(ClampRating.unknown());
  }

  @Test
  void deeperHoldsAtLeastAsWell() {
    List<BenchTest> tests =
        List.of(
            new BenchTest.Pull(THIN, lbf(40), JawDepth.MIDDLE, true),
            new BenchTest.Pull(THIN, lbf(45), JawDepth.TIP, false));

    assertThat(ClampRating.of(tests, THIN, JawDepth.DEEP).heldUpTo()).contains(lbf(40));
    assertThat(ClampRating.of(tests, THIN, JawDepth.DEEP).slippedFrom()).isEmpty();
    assertThat(ClampRating.of(tests, THIN, JawDepth.TIP).heldUpTo()).isEmpty();
    assertThat(ClampRating.of(tests, THIN, JawDepth.TIP).slippedFrom()).contains(lbf(45));
  }

  @Test
  void aSlipCallsForCleaningAndANewTest() {
    BenchTest clean = new BenchTest.Cleaned();

    assertThat(rating(held(THIN, 40), slipped(THIN, 45)).mustBeCleaned()).isTrue();
    ClampRating cleaned = rating(held(THIN, 40), slipped(THIN, 45), clean);
    assertThat(cleaned.mustBeCleaned()).as("not tested since").isTrue();
    assertThat(cleaned.slippedFrom()).isEmpty();
    ClampRating proven = rating(slipped(THIN, 45), clean, held(THIN, 50));
    assertThat(proven).isEqualTo(new ClampRating(Optional.of(lbf(50)), Optional.empty(), false));
    assertThat(rating(slipped(THIN, 45), clean, held(THIN, 50), slipped(THIN, 55)).mustBeCleaned())
        .isTrue();
  }

  @Test
  void aSlipBelowWhatWasHeldCounts() {
    ClampRating rating = rating(held(THIN, 30), held(THIN, 50), slipped(THIN, 40));

    assertThat(rating.heldUpTo()).contains(lbf(30));
    assertThat(rating.slippedFrom()).contains(lbf(40));
  }

  @Test
  void aTestNeedsAPull() {
    assertThatThrownBy(() -> held(THIN, 0)).hasMessageContaining("must be more than 0 N");
  }

  @Property(tries = 300)
  void boundsAreApartAndMoreLoadIsNeverBetter(
      @ForAll @Size(max = 12) List<@IntRange(min = -80, max = 80) Integer> pulls,
      @ForAll @IntRange(min = 1, max = 90) int load) {
    List<BenchTest> tests = new ArrayList<>();
    for (int p : pulls) {
      tests.add(p == 0 ? new BenchTest.Cleaned() : p > 0 ? held(THIN, p) : slipped(THIN, -p));
    }
    ClampRating rating = ClampRating.of(tests, THIN, JawDepth.DEEP);
    if (rating.heldUpTo().isPresent() && rating.slippedFrom().isPresent()) {
      assertThat(rating.heldUpTo().get()).isLessThan(rating.slippedFrom().get());
    }
    assertThat(verdict(rating, load + 1.0)).isGreaterThanOrEqualTo(verdict(rating, load));
  }
}
