package org.hoopwright.compare;

import java.util.Optional;

/**
 * One thing that differs.
 *
 * @param topic what it is about in general
 * @param about what it is about in particular: a hole, a span, an end of string, a word; where left
 *     and right differ alike, a name without side such as {@code 7H}
 * @param first the value in the first; empty when it has none
 * @param second the value in the second; empty when it has none
 * @param say one plain sentence
 */
public record Difference(
    Topic topic, String about, Optional<String> first, Optional<String> second, String say) {}
