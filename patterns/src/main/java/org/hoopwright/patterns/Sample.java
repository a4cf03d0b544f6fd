package org.hoopwright.patterns;

/**
 * A bundled layout as the list of them shows it.
 *
 * @param name the name it is asked for by, such as {@code willowbank-100}
 * @param reason why it is there, in one line
 */
public record Sample(String name, String reason) {}
