package org.hoopwright.bench;

import org.hoopwright.material.StringSpec;
import org.hoopwright.units.Force;

/** What was done to a clamp on the bench to learn what it holds; a list of these is its record. */
public sealed interface BenchTest {

  /**
   * A string was clamped and pulled.
   *
   * @param string the string
   * @param pull how hard it was pulled
   * @param depth how deep it lay in the jaws
   * @param held whether the clamp held it; otherwise the string slipped
   */
  record Pull(StringSpec string, Force pull, JawDepth depth, boolean held) implements BenchTest {

    /**
     * Checks the pull.
     *
     * @throws IllegalArgumentException when the pull is zero, which tests nothing
     */
    public Pull {
      if (pull.newtons() <= 0) {
        throw new IllegalArgumentException(
            "The pull of a bench test (" + pull.newtons() + " N) must be more than 0 N.");
      }
    }
  }

  /**
   * The jaws were cleaned, with what the clamp's maker allows, such as alcohol. Slips before it no
   * longer count: they may have come from the dirt.
   */
  record Cleaned() implements BenchTest {}
}
