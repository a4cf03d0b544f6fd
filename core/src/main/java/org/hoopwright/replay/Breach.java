package org.hoopwright.replay;

/**
 * A rule of the bench that a plan breaks.
 *
 * @param invariant which rule
 * @param step number of the step, from 1; the number of steps plus one for what is wrong at the end
 * @param message what is wrong, with the values
 */
public record Breach(Invariant invariant, int step, String message) {}
