package org.hoopwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class DrawTest {
  @Property
  void staysWithinItsBounds(@ForAll long seed, @ForAll int one, @ForAll int other) {
    int least = Math.min(one, other);
    int most = Math.max(one, other);

    assertThat(Draw.from(seed).between(least, most)).isBetween(least, most);
  }

  @Property
  void repeatsItself(@ForAll long seed) {
    Draw first = Draw.from(seed);
    Draw second = Draw.from(seed);

    for (int i = 0; i < 20; i++) {
      assertThat(first.between(0, 1_000_000)).isEqualTo(second.between(0, 1_000_000));
    }
  }

  @Test
  void reachesEveryValue() {
    Draw draw = Draw.from(1);
    List<String> values = List.of("left", "right", "head", "throat");

    assertThat(Stream.generate(() -> draw.oneOf(values)).limit(200).distinct())
        .containsExactlyInAnyOrderElementsOf(values);
  }

  @Test
  void neverAndAlways() {
    Draw draw = Draw.from(2);

    for (int i = 0; i < 200; i++) {
      assertThat(draw.chance(0)).isFalse();
      assertThat(draw.chance(100)).isTrue();
    }
  }

  @Test
  void refusesSwappedBoundsAndNoValues() {
    assertThatThrownBy(() -> Draw.from(3).between(2, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("swap");
    assertThatThrownBy(() -> Draw.from(3).oneOf(List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("at least one");
  }
}
