package org.hoopwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.hoopwright.bed.Assignment;
import org.hoopwright.bed.Bed;
import org.hoopwright.bed.HoleLabel;
import org.hoopwright.bed.StatedAssignment;
import org.hoopwright.frame.Layout;
import org.hoopwright.geometry.Side;
import org.hoopwright.testing.LayoutGenerator.Feature;
import org.junit.jupiter.api.Test;

class LayoutGeneratorTest {

  private static Bed bed(Layout layout) {
    Assignment assignment = StatedAssignment.assign(layout);
    return assignment.bed().orElseThrow(() -> new AssertionError(assignment.findings().toString()));
  }

  private static Layout with(long seed, Feature... features) {
    Set<Feature> set = new LinkedHashSet<>(List.of(features));
    return LayoutGenerator.layout(Draw.from(seed), 8, 19, set);
  }

  @Property
  @Domain(LayoutArbitraries.class)
  void everyLayoutHasABed(@ForAll Layout layout) {
    Bed bed = bed(layout);

    assertThat(bed.mainsPerSide()).isBetween(2, 11);
    assertThat(bed.crossCount()).isBetween(4, 22);
    assertThat(layout.tieOff()).isNotEmpty();
  }

  @Test
  void sizesReachFromTheSmallestToTheLargest() {
    for (int n = 2; n <= 11; n++) {
      for (int c : new int[] {2, 3, 22}) {
        Bed bed = bed(LayoutGenerator.layout(Draw.from(n), n, c, EnumSet.allOf(Feature.class)));
        assertThat(bed.mainsPerSide()).isEqualTo(n);
        assertThat(bed.crossCount()).isEqualTo(c);
      }
    }
    assertThatThrownBy(() -> LayoutGenerator.layout(Draw.from(1), 1, 9, Set.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("2 or more");
  }

  @Test
  void theSameSeedGivesTheSameLayout() {
    for (long seed = 0; seed < 50; seed++) {
      assertThat(LayoutGenerator.any(Draw.from(seed)))
          .isEqualTo(LayoutGenerator.any(Draw.from(seed)));
    }
  }

  @Test
  void featuresShow() {
    int skips = 0;
    int shared = 0;
    int uneven = 0;
    int wishes = 0;
    for (long seed = 0; seed < 40; seed++) {
      assertThat(bed(with(seed)).symmetric()).isTrue();
      assertThat(with(seed).mainsSkip().orElseThrow()).isEmpty();
      assertThat(with(seed, Feature.NO_RUN).noRun()).isNotEmpty();
      assertThat(bed(with(seed, Feature.NO_RUN)).symmetric()).isTrue();
      assertThat(bed(with(seed, Feature.BLOCKED)).layout().blocked()).hasSize(1);
      Bed unused = bed(with(seed, Feature.UNUSED, Feature.UNEVEN));
      for (Side side : Side.values()) {
        assertThat(unused.labels().of(side)).containsOnlyOnce(HoleLabel.NONE);
      }
      skips += with(seed, Feature.SKIPS).mainsSkip().orElseThrow().isEmpty() ? 0 : 1;
      shared += bed(with(seed, Feature.SHARED)).labels().left().contains(HoleLabel.BOTH) ? 1 : 0;
      uneven += bed(with(seed, Feature.UNEVEN, Feature.SKIPS)).symmetric() ? 0 : 1;
      wishes += with(seed, Feature.WISHES).equals(with(seed)) ? 0 : 1;
      assertThat(with(seed, Feature.DRILLED).noRun()).isEmpty();
    }
    assertThat(List.of(skips, shared, uneven, wishes)).allMatch(n -> n > 20);
  }
}
