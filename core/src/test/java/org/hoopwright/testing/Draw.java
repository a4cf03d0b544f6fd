package org.hoopwright.testing;

import java.util.List;
import java.util.SplittableRandom;

/**
 * A source of choices for generators of test data.
 *
 * <p>The same seed gives the same choices on every machine. A draw changes with each choice, so
 * each thread needs its own.
 */
public final class Draw {
  private final SplittableRandom random;

  private Draw(long seed) {
    this.random = new SplittableRandom(seed);
  }

  /**
   * Starts a draw.
   *
   * @param seed any number; it fixes all choices that follow
   * @return a new draw
   */
  public static Draw from(long seed) {
    return new Draw(seed);
  }

  /**
   * Draws a whole number.
   *
   * @param least the least number, included
   * @param most the greatest number, included; not under {@code least}
   * @return a number from {@code least} to {@code most}
   * @throws IllegalArgumentException if {@code most} is under {@code least}
   */
  public int between(int least, int most) {
    if (most < least) {
      throw new IllegalArgumentException(
          "most is " + most + ", under least, " + least + "; swap the two");
    }
    return (int) random.nextLong(least, most + 1L);
  }

  /**
   * Draws one of the given values.
   *
   * @param values what to choose from; not empty
   * @param <T> the values' type
   * @return one of the values
   * @throws IllegalArgumentException if there is no value
   */
  public <T> T oneOf(List<T> values) {
    if (values.isEmpty()) {
      throw new IllegalArgumentException("values is empty; give at least one value");
    }
    return values.get(between(0, values.size() - 1));
  }

  /**
   * Draws yes or no.
   *
   * @param percent how often the answer is yes, 0 (never) to 100 (always)
   * @return true for yes
   */
  public boolean chance(int percent) {
    return between(1, 100) <= percent;
  }
}
