/**
 * JSON with places: a tree whose every value knows where it stands in its text, the words for a
 * text that is not JSON, and a writer with one canonical form. Internal.
 *
 * <p>{@link org.hoopwright.patterns.json.JsonTree} reads. Nothing here knows what a layout is.
 */
@NullMarked
package org.hoopwright.patterns.json;

import org.jspecify.annotations.NullMarked;
