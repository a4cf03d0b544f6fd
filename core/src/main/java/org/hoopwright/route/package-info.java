/**
 * The route: in which order each piece of string runs through the spans, where its knots are and
 * how it starts.
 *
 * <p>The third value of the pipeline layout → bed → route → bench plan. {@link
 * org.hoopwright.route.RouteSearch} enumerates every route that the rules allow and ranks them by
 * named {@link org.hoopwright.route.RoutePreference preferences}; {@link
 * org.hoopwright.route.RouteCheck} proves a given route legal and complete and shares no code with
 * the search.
 */
@NullMarked
package org.hoopwright.route;

import org.jspecify.annotations.NullMarked;
