package org.hoopwright.material;

/**
 * A string to be strung with.
 *
 * @param gauge its gauge
 * @param material what it is made of
 */
public record StringSpec(Gauge gauge, Material material) {}
