package org.hoopwright.patterns;

import java.util.List;
import java.util.Optional;
import org.hoopwright.bench.Bench;
import org.hoopwright.bench.StringAtHand;
import org.hoopwright.material.StringSpec;

/**
 * What a bench file says: the bench, and the strings that are kept there.
 *
 * @param name what people call it
 * @param bench clamps with their tests, tensioner, sizes
 * @param strings the strings at hand, in the order of the file; no two have one name
 */
public record Workbench(String name, Bench bench, List<Stock> strings) {

  /** Copies the list. */
  public Workbench {
    strings = List.copyOf(strings);
  }

  /** The string of this name, compared exactly, or empty. */
  public Optional<Stock> string(String name) {
    return strings.stream().filter(s -> s.name().equals(name)).findFirst();
  }

  /**
   * A string that is kept at the bench.
   *
   * @param name what it is asked for by
   * @param mains what the mains would be of
   * @param crosses what the crosses would be of; of one string the same
   * @param length what there is of it
   */
  public record Stock(String name, StringSpec mains, StringSpec crosses, StringAtHand length) {}
}
