package org.hoopwright.patterns.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class WordsTest {

  @Test
  void breaksAtSpacesAndCountsDotsAsTheEnd() {
    assertThat(Words.wrap("one two three four", 10, Words.width("one two", 10) + 1, 9))
        .containsExactly("one two", "three", "four");
    assertThat(Words.wrap("one two three four", 10, Words.width("one two ", 10) + 1, 1))
        .singleElement()
        .asString()
        .endsWith("…");
  }

  @Test
  void leavesOutWhatMayNotStandOnAPage() {
    assertThat(Words.clean(" a\u0000\u202e\uD800b \t\n c\u200b ")).isEqualTo("ab c");
  }

  @Property(tries = 300)
  void everyLineFits(
      @ForAll String text,
      @ForAll @DoubleRange(min = 60, max = 400) double width,
      @ForAll @IntRange(min = 1, max = 6) int most) {
    List<String> lines = Words.wrap(text, 12, width, most);
    assertThat(lines).hasSizeLessThanOrEqualTo(most);
    assertThat(lines).allSatisfy(l -> assertThat(Words.width(l, 12)).isLessThanOrEqualTo(width));
  }
}
