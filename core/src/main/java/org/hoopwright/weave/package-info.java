/**
 * The weave as somebody sees it on a strung frame: misweaves, the least that must be woven again,
 * and which crosses are hard to weave.
 */
@org.jspecify.annotations.NullMarked
package org.hoopwright.weave;
