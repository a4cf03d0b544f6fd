package org.hoopwright.material;

import org.jspecify.annotations.Nullable;

/**
 * A string to be strung with.
 *
 * @param gauge its gauge
 * @param material what it is made of
 */
public record StringSpec(Gauge gauge, Material material) {

  // Written out: what a record makes of itself costs a short run of the command line a tenth.
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof StringSpec s && gauge == s.gauge && material == s.material;
  }

  @Override
  public int hashCode() {
    return 31 * gauge.hashCode() + material.hashCode();
  }
}
