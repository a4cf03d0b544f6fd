/**
 * The layout: what is drilled in a frame, what its maker says about it, and what is worn or
 * blocked.
 *
 * <p>{@link org.hoopwright.frame.Layout} is the first of the four values of the pipeline layout →
 * bed → route → bench plan. It says just what a layout file says, in the file's own unit; {@link
 * org.hoopwright.frame.Ring} is what follows from it for each hole. What is wrong with one is
 * reported by the rules of {@code org.hoopwright.check}.
 *
 * <p>Whoever looks at the face has the head at the top; left and right are as seen. Holes are
 * numbered outwards from the long axis, at each end: {@code L7H} is the seventh hole left of the
 * axis at the head, {@code 7T} the seventh on both sides at the throat. A side's holes from the
 * head's middle to the throat's middle (1H … hH, tT … 1T) are its list.
 */
@NullMarked
package org.hoopwright.frame;

import org.jspecify.annotations.NullMarked;
