package org.hoopwright.patterns;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.Inference;
import org.hoopwright.bed.PatternInference;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.frame.HoleId;
import org.hoopwright.frame.HoleRef;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * From every bundled layout with its skip rules removed and its holes measured badly the pattern
 * comes back, or it is said to be unsure. The table in {@code docs/bed.md} is made of what this
 * test counts.
 */
class InferredSamplesTest {

  private static final int TRIES = 12;

  static List<String> samples() {
    return Samples.list().stream().map(Sample::name).toList();
  }

  /** How often the pattern came back, and how often it was taken without asking. */
  record Count(int right, int sure, int wrongAndSure) {}

  private static Bed bed(Layout layout) {
    return StatedAssignment.assign(layout).bed().orElseThrow();
  }

  /** The layout with all holes measured, each coordinate off by up to so many mm. */
  private static Layout measured(Layout layout, Bed bed, double jitter, SplittableRandom random) {
    double unit = layout.units().millimetres();
    Map<HoleRef, Point> at = new LinkedHashMap<>();
    for (Map.Entry<HoleId, Point> e : new TreeMap<>(bed.positions()).entrySet()) {
      double dx = jitter * (2 * random.nextDouble() - 1);
      double dy = jitter * (2 * random.nextDouble() - 1);
      Point p = new Point((e.getValue().x() + dx) / unit, (e.getValue().y() + dy) / unit);
      at.put(HoleRef.of(e.getKey()), p);
    }
    return layout.toBuilder()
        .mainsSkip(Optional.empty())
        .crossesSkip(List.of())
        .withoutOffsets()
        .at(at)
        .build();
  }

  static Count count(String sample, double jitter, int tries, boolean ends) {
    Layout layout = Samples.layout(sample);
    Bed bed = bed(layout);
    SplittableRandom random = new SplittableRandom(20);
    int right = 0;
    int sure = 0;
    int wrongAndSure = 0;
    for (int i = 0; i < tries; i++) {
      Layout bad = measured(layout, bed, jitter, random);
      Inference inference =
          PatternInference.infer(ends ? bad : bad.toBuilder().withoutFirstAndLast().build());
      boolean same =
          !inference.readings().isEmpty()
              && inference.readings().get(0).labelling().labels().equals(bed.labels());
      right += same ? 1 : 0;
      sure += inference.status() == Inference.Status.SURE ? 1 : 0;
      wrongAndSure += !same && inference.status() == Inference.Status.SURE ? 1 : 0;
    }
    return new Count(right, sure, wrongAndSure);
  }

  @ParameterizedTest
  @MethodSource("samples")
  void upToAMillimetreThePatternComesBack(String sample) {
    for (double jitter : new double[] {0, 0.5, 1}) {
      Count count = count(sample, jitter, TRIES, /* ends= */ true);
      assertThat(count.right()).as("off by %s mm", jitter).isEqualTo(TRIES);
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void beyondThatItIsUnsureRatherThanWrong(String sample) {
    for (double jitter : new double[] {1.5, 2, 3, 4}) {
      Count count = count(sample, jitter, TRIES, /* ends= */ true);
      assertThat(count.wrongAndSure()).as("off by %s mm", jitter).isZero();
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void withoutFirstAndLastCrossItIsUnsureRatherThanWrong(String sample) {
    for (double jitter : new double[] {0, 1, 3}) {
      Count count = count(sample, jitter, 4, /* ends= */ false);
      assertThat(count.wrongAndSure()).as("off by %s mm", jitter).isZero();
    }
  }

  @Test
  void holesThatWereOnlyCountedAreReadRightlyOrNotAtAll() {
    for (String sample : samples()) {
      Layout layout = Samples.layout(sample);
      Layout counted =
          layout.toBuilder()
              .mainsSkip(Optional.empty())
              .crossesSkip(List.of())
              .withoutOffsets()
              .at(Map.of())
              .build();
      Inference inference = PatternInference.infer(counted);
      boolean same = inference.readings().get(0).labelling().labels().equals(bed(layout).labels());
      assertThat(same || inference.status() != Inference.Status.SURE).as(sample).isTrue();
    }
  }
}
