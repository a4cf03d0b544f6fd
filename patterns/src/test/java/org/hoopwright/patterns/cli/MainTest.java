package org.hoopwright.patterns.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.hoopwright.testing.Draw;
import org.junit.jupiter.api.Test;

class MainTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
  }

  @Test
  void tellsItsVersion() {
    assertThat(run("--version")).isZero();
    assertThat(out.toString()).matches("hoopwright \\d+\\.\\d+\\.\\d+\\S*\\R");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void tellsItsUse() {
    assertThat(run("--help")).isZero();
    assertThat(out.toString()).contains("Usage: hoopwright", "--version");
  }

  @Test
  void callWithoutWordsIsWrong() {
    assertThat(run()).isEqualTo(2);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).contains("Usage: hoopwright");
  }

  @Property
  void unknownWordIsAWrongCall(
      @ForAll @AlphaChars @StringLength(min = 1, max = 12) String word, @ForAll long seed) {
    String dashes = "-".repeat(Draw.from(seed).between(3, 5));

    assertThat(run(dashes + word)).isEqualTo(2);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).contains(word).doesNotContain("\tat ");
  }
}
