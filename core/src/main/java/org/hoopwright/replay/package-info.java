/**
 * The proof of a bench plan: it is replayed from an empty frame, and each breach of the invariants
 * I1 to I10 is reported.
 *
 * <p>{@link org.hoopwright.replay.Replay} shares no code with the planner or the route search: it
 * reads only the values they make.
 */
@NullMarked
package org.hoopwright.replay;

import org.jspecify.annotations.NullMarked;
