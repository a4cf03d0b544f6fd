/**
 * The bench plan: what a person does with two hands, the tensioner and the clamps, step by step.
 *
 * <p>The last value of the pipeline layout → bed → route → bench plan. {@link
 * org.hoopwright.bench.Planner} writes one from a bed, a route and a {@link
 * org.hoopwright.bench.Job}; the package {@code org.hoopwright.replay} proves it and shares no code
 * with it.
 */
@NullMarked
package org.hoopwright.bench;

import org.jspecify.annotations.NullMarked;
