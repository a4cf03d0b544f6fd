package org.hoopwright.bench;

import java.util.Optional;
import org.hoopwright.bed.SpanId;
import org.hoopwright.frame.HoleId;

/**
 * How the mains start.
 *
 * @param method the way
 * @param anchor the anchor main: main 1 or 2 of the short side
 * @param clampOutside the hole outside which a starting clamp sits; empty when there is none
 * @param mark the mark it may leave; empty when there is none
 */
public record Start(
    StartMethod method, SpanId anchor, Optional<HoleId> clampOutside, Optional<StartMark> mark) {}
