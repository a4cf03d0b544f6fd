package org.hoopwright.judgement;

import org.hoopwright.material.Material;

/** What a clamp's bite does to a string; by material, common practice, no source. */
public enum Sensitivity {
  /** Little shows. */
  LITTLE("little shows"),
  /** Marks show where the string is clear or coated. */
  SHOWS_MARKS("marks show where the string is clear or coated"),
  /** Soft: repeated bites at one place flatten it. */
  FLATTENS("soft: repeated bites at one place flatten it");

  private final String words;

  Sensitivity(String words) {
    this.words = words;
  }

  /** The same in words. */
  public String words() {
    return words;
  }

  /** How sensitive a material is. */
  public static Sensitivity of(Material material) {
    return switch (material) {
      case POLYESTER -> SHOWS_MARKS;
      case MULTIFILAMENT, NATURAL_GUT -> FLATTENS;
      case NYLON, ARAMID -> LITTLE;
    };
  }
}
